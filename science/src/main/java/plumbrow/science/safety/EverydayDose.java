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
 */
public record EverydayDose(String name, double ld50MgPerKg, String printed, String source, Status status) {
    /** From the mildest to the most poisonous. */
    public static final List<EverydayDose> ALL = List.of(
            new EverydayDose(
                    "sugar",
                    30_000,
                    "35,400 for males, 29,700 for females",
                    "Boyd, Godi and Abel 1965, Toxicol. Appl. Pharmacol. 7:609-618, abstract",
                    Status.VERIFIED),
            new EverydayDose(
                    "alcohol",
                    7_000,
                    "7,060 for old rats, 10,600 for young ones",
                    "Wiberg, Trenholm and Coldwell 1970, Toxicol. Appl. Pharmacol. 16:718-727, from memory",
                    Status.MEMORY),
            new EverydayDose(
                    "table salt",
                    4_000,
                    "2,690 a day for 100 days, which is 72 % of the single dose: 3,700",
                    "Boyd, Abel and Knight 1966, Can. J. Physiol. Pharmacol. 44:157-172, abstract",
                    Status.VERIFIED),
            new EverydayDose(
                    "aspirin",
                    1_000,
                    "920 to 1,500; tables of others 200",
                    "Boyd 1959, Toxicol. Appl. Pharmacol. 1:229-239, from memory",
                    Status.MEMORY),
            new EverydayDose(
                    "caffeine",
                    400,
                    "367 as the mean of sound studies; older ones 192 to 383",
                    "Adamson 2016, Regul. Toxicol. Pharmacol. 80:274-276, abstract",
                    Status.VERIFIED),
            new EverydayDose(
                    "nicotine",
                    50,
                    "more than 50",
                    "Mayer 2014, Arch. Toxicol. 88:5-7, quoting Hayes 1982",
                    Status.VERIFIED));
}
