package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.science.fate.Dissipation;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Property;

/**
 * How much of a herbicide may still be in the soil when the next crop is planted.
 *
 * <p>Protects the next crop. A screen: it never bars, and a label's plant-back interval rules whatever it says. Share left is
 * 2^(−days ÷ half-life in the field). More than a quarter left is conditional (common practice, no source: how little harms
 * a crop depends on both). A half-life that the reference data lack counts as the worst. A day that is missing is unknown.
 * What the soil binds, Koc over 5,000 mL/g, is clear.
 * Clear means not flagged by this screen.
 *
 * <p>Source: first-order loss, FOCUS kinetics guidance; immobile over Koc 5,000 by McCall et al. 1981 (from memory). Needs: days of the passes and of planting.
 */
final class CarryOver extends Question {
    private static final double MOST_PCT = 25;

    /** From here on a substance is immobile in soil (McCall et al. 1981, class limits from memory). */
    private static final double BOUND_KOC = 5000;

    private static final String CARE =
            "Grow a few plants of the next crop in soil from this field before planting it, and "
                    + "keep to the label; a dry or cold season leaves more.";

    CarryOver() {
        super("carry-over", Protects.NEXT_CROP, "May herbicide be left when the next crop is planted?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.all().stream()
                .filter(application -> at.index()
                        .product(application.product())
                        .map(Product::kind)
                        .filter(kind -> kind == ProductKind.HERBICIDE)
                        .isPresent())
                .flatMap(application -> Dose.of(at, application))
                .flatMap(dose -> at.nextCrops().stream().flatMap(next -> judge(dose, next)))
                .map(finding -> finding.standingIn("FOCUS kinetics guidance; half-life of the reference data"))
                .toList();
    }

    private Stream<Finding> judge(Dose dose, NextCrop next) {
        LocalDate applied = dose.application().date();
        LocalDate planted = next.planted();
        String subject = dose.subject() + ", " + next.use().word() + " " + next.crop();
        if (applied == null || planted == null) {
            return Stream.of(unknown(
                    subject,
                    "How long it has to fade is not known: " + (applied == null ? "the pass" : "the planting")
                            + " has no planned day.",
                    "Plan a day for both."));
        }
        long days = ChronoUnit.DAYS.between(applied, planted);
        if (days < 0) {
            return Stream.of();
        }
        Double halfLife = dose.ingredient().number(Property.FIELD_HALF_LIFE);
        if (halfLife == null) {
            return Stream.of(conditional(
                            subject,
                            "The reference data lack the half-life of "
                                    + dose.ingredient().name()
                                    + " in the field: unknown, and counted as one that stays.",
                            CARE)
                    .lacking(dose.ingredient().name(), "half-life in the field"));
        }
        Double koc = dose.ingredient().number(Property.KOC);
        if (koc != null && koc > BOUND_KOC) {
            return Stream.of(clear(
                            subject,
                            "It is bound by the soil (Koc " + Numbers.read(koc)
                                    + " mL/g), so what is left of it does not " + "reach the roots.")
                    .against(koc, BOUND_KOC, "mL/g"));
        }
        double left = 100 * Dissipation.leftShare((double) days, halfLife, 1);
        String says = "After " + days + " days about " + Numbers.fixed(left, 1) + " % is left, by a half-life of "
                + Numbers.read(halfLife) + " days.";
        Finding finding = left > MOST_PCT ? conditional(subject, says, CARE) : clear(subject, says);
        return Stream.of(finding.against(left, MOST_PCT, "% left"));
    }
}
