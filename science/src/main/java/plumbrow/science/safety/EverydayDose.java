package plumbrow.science.safety;

import java.util.List;
import plumbrow.science.figure.Status;

/**
 * The half-lethal dose by mouth of something everybody knows, to set a product beside.
 *
 * Printed values of these differ by a factor of two to five, so each stands here with one figure and with what its source
 * prints. The sources are papers that measured or gathered them. Rats, one dose swallowed: nothing else can be compared with them.
 *
 * @param ld50MgPerKg half-lethal dose, rat, by mouth [mg/kg], one figure
 * @param printed what the source prints, and what others do
 * @param cited the source by its key in brackets
 */
public record EverydayDose(String name, double ld50MgPerKg, String printed, String cited, Status status) {
    /** From the mildest to the most poisonous. */
    public static final List<EverydayDose> ALL = List.of(
            new EverydayDose(
                    "sugar", 30_000, "35,400 for males, 29,700 for females", "[boyd-1965], abstract", Status.VERIFIED),
            new EverydayDose(
                    "alcohol",
                    7_000,
                    "7,060 for old rats, 10,600 for young ones",
                    "[wiberg-1970], from memory",
                    Status.MEMORY),
            new EverydayDose(
                    "table salt",
                    4_000,
                    "2,690 a day for 100 days, which is 72 % of the single dose: 3,700",
                    "[boyd-1966], abstract",
                    Status.VERIFIED),
            new EverydayDose(
                    "aspirin", 1_000, "920 to 1,500; tables of others 200", "[boyd-1959], from memory", Status.MEMORY),
            new EverydayDose(
                    "caffeine",
                    400,
                    "367 as the mean of sound studies; older ones 192 to 383",
                    "[adamson-2016], abstract",
                    Status.VERIFIED),
            new EverydayDose("nicotine", 50, "more than 50", "[mayer-2014], quoting Hayes 1982", Status.VERIFIED));
}
