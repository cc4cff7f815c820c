package plumbrow.advice.gates;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.FeatureKind;
import plumbrow.science.fate.DriftIntoWater;
import plumbrow.science.fate.FieldRate;
import plumbrow.science.fate.LevelOfConcern;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Property;

/**
 * Whether drift into open water beside the field may harm fish or what fish eat.
 *
 * <p>Protects water. A screen: it never bars. For each stream, ditch and pond, and each ingredient of a spray,
 *
 * <pre>  concentration = rate × deposit at the near bank ÷ 0.3 m of water;  quotient = concentration ÷ LC50</pre>
 *
 * against the lower of rainbow trout and water flea. A quotient of 0.05, the level for listed species, or more is
 * conditional. A toxicity that the reference data lack counts as the worst. Beyond 100 m, to which the
 * curve was measured, the deposit is not known and counts as that at 100 m, the most it can be. No curve tells what drifts
 * from a sprinkler: it counts as the worst. Unknown where a distance, rate or content is missing. Clear means not flagged by this screen.
 *
 * <p>Source: Rautmann et al. 2001 (curve), FOCUS Surface Water 5.4.5, levels of the federal agency (0.5, 0.1, 0.05 from
 * memory); 0.3 m is the depth FOCUS takes for a ditch. Needs: streams, ditches and ponds with distance; drift class.
 */
final class DriftToWater extends Question {
    static final double LISTED_SPECIES = 0.05;
    private static final double DEPTH_M = 0.3;
    private static final double UG_PER_MG = 1000;
    private static final Set<FeatureKind> OPEN = Set.of(FeatureKind.STREAM, FeatureKind.DITCH, FeatureKind.POND);
    private static final String SOURCE =
            "Rautmann et al. 2001; FOCUS Surface Water 5.4.5; EPA levels of concern for fish and invertebrates";

    DriftToWater() {
        super("drift-to-water", Protects.WATER, "May drift into water harm fish or what they eat?");
    }

    @Override
    public List<Finding> check(Case at) {
        List<Lying> waters = at.features().stream()
                .filter(feature -> OPEN.contains(feature.kind()))
                .toList();
        return Dose.outdoors(at).stream()
                .filter(dose -> dose.application().throughAir())
                .flatMap(dose -> waters.stream().map(water -> judge(dose, water).standingIn(SOURCE)))
                .toList();
    }

    private Finding judge(Dose dose, Lying water) {
        String subject = dose.subject() + ", " + water.kind().word() + " " + water.name();
        Double feet = water.nearestFt();
        if (feet == null) {
            return unknown(
                    subject,
                    "How far the water lies from the field is not measured.",
                    "Measure the distance from the field's edge.");
        }
        Double pounds = dose.poundsPerAcre();
        if (pounds == null) {
            return unknown(
                    subject,
                    "How much goes on an acre is not known.",
                    "Write the rate in the unit of the product's content.");
        }
        if (dose.application().chemigated()) {
            return conditional(
                    subject,
                    "No curve tells what drifts from a sprinkler: unknown, and counted as the worst." + water.whence(),
                    "Irrigate when the wind blows away from it, with the end gun off and the pressure low.");
        }
        Finding finding = held(subject, dose, pounds, feet);
        return finding.saying(finding.says() + water.whence());
    }

    private Finding held(String subject, Dose dose, double pounds, double feet) {
        Double lethal = lower(dose.ingredient());
        Drift drift = Drift.of(dose.application().plan());
        double concentration = DriftIntoWater.ugPerLitre(pounds * FieldRate.UG_PER_M2, drift.depositPct(feet), DEPTH_M);
        String care =
                "Spray when the wind blows away from it, with coarser droplets or a higher drift class, and leave "
                        + "the side towards it for such a day.";
        if (lethal == null) {
            return conditional(
                            subject,
                            "Drift may bring " + Numbers.fixed(concentration, 3)
                                    + " µg/L; the reference data lack the toxicity "
                                    + "to fish or water fleas: unknown, and counted as the worst.",
                            care)
                    .lacking(dose.ingredient().name(), "toxicity to fish or water fleas");
        }
        double quotient = concentration / (lethal * UG_PER_MG);
        List<String> reached = LevelOfConcern.reached(quotient, "fish", "acute");
        String beyond = feet > Drift.FARTHEST_FT
                ? "The water lies beyond the 328 ft to which drift was measured, so this is the most it can be. "
                : "";
        String says = beyond + "Drift may bring " + Numbers.fixed(concentration, 3) + " µg/L, " + Numbers.read(quotient)
                + " of what kills half; " + (reached.isEmpty() ? "no level is" : "levels")
                + " reached" + (reached.isEmpty() ? "." : ": " + levels(reached) + ".");
        Finding finding = reached.isEmpty() ? clear(subject, says) : conditional(subject, says, care);
        return finding.against(quotient, LISTED_SPECIES, "of the LC50");
    }

    /** The levels in words: that of restricted use is a level of concern and says nothing of a product's registration. */
    static String levels(List<String> reached) {
        return String.join(", ", reached).replace("restricted-use", "the middle level (0.1 for fish, 0.2 for birds)");
    }

    /** The lower half-lethal concentration of trout and water flea [mg/L]; null where either is not known. */
    private static @Nullable Double lower(Ingredient ingredient) {
        Double trout = ingredient.number(Property.TROUT);
        Double flea = ingredient.number(Property.DAPHNIA);
        return trout == null || flea == null ? null : Double.valueOf(Math.min(trout, flea));
    }
}
