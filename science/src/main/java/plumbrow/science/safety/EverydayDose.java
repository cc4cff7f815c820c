package plumbrow.science.safety;

import java.util.List;
import plumbrow.science.figure.Status;

/**
 * The half-lethal dose by mouth of something everybody knows, to set a product beside.
 *
 * Printed tables of these differ by a factor of two to five, so each stands here with one figure and with what its source
 * prints. Rats, one dose swallowed: nothing else can be compared with them.
 *
 * @param ld50MgPerKg half-lethal dose, rat, by mouth [mg/kg], one figure
 * @param printed what the source prints, and what others do
 */
public record EverydayDose(String name, double ld50MgPerKg, String printed, String source, Status status) {
    private static final String FIRST =
            "National Farmers Union, Glyphosate and toxicity: the facts (nfuonline.com), quoting a Cornell teaching text";
    private static final String SECOND = "toxicology and exposure guidelines p. 8 (kompy.info)";

    /** From the mildest to the most poisonous. */
    public static final List<EverydayDose> ALL = List.of(
            new EverydayDose("sugar", 30_000, "29,700", SECOND, Status.VERIFIED),
            new EverydayDose("alcohol", 7_000, "7,000; another table 14,000", FIRST, Status.VERIFIED),
            new EverydayDose("table salt", 3_000, "3,000 in two tables", FIRST, Status.VERIFIED),
            new EverydayDose("aspirin", 1_000, "1,000; another table 200", FIRST, Status.VERIFIED),
            new EverydayDose("caffeine", 200, "192; another table 140 for the dog", FIRST, Status.VERIFIED),
            new EverydayDose("nicotine", 50, "50", FIRST, Status.VERIFIED));
}
