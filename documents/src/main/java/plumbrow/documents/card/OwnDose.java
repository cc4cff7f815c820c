package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.figure.Answer;
import plumbrow.science.reference.Bound;
import plumbrow.science.safety.InhalationFourHours;
import plumbrow.science.safety.PaperUnits;

/**
 * The product's own half-lethal dose by one route, as its sheet gives it: of several, as of males and females, the lowest.
 *
 * @param bound mg/kg; mg/L over 4 h for what is inhaled
 * @param working how one hour was turned into four; null where that was not needed
 */
record OwnDose(Reading.Stated stated, Bound bound, @Nullable Answer working) {
    private static final String DUST_OR_MIST = "dust-mist";

    /** Empty where the sheet gives none of the product itself, or none that can be classed. */
    static Optional<OwnDose> of(SafetySheet sheet, Route route) {
        List<OwnDose> found = new ArrayList<>();
        for (Reading.Stated stated : stated(sheet, route)) {
            Content.Acute acute = (Content.Acute) stated.content();
            if (acute.substance().isEmpty() && !acute.measure().equals("LDLo")) {
                usable(stated, acute).ifPresent(found::add);
            }
        }
        return found.stream()
                .min(Comparator.<OwnDose>comparingInt(
                                dose -> dose.animal().equals("rat") || route != Route.SWALLOWED ? 0 : 1)
                        .thenComparingDouble(dose -> dose.bound.least()));
    }

    /** Every statement of a route, of the product and of its ingredients. */
    static List<Reading.Stated> stated(SafetySheet sheet, Route route) {
        return sheet.all(ValueKind.ACUTE_TOXICITY).stream()
                .filter(stated -> ((Content.Acute) stated.content()).route() == route)
                .toList();
    }

    private String animal() {
        return ((Content.Acute) stated.content()).species();
    }

    static Optional<OwnDose> usable(Reading.Stated stated, Content.Acute acute) {
        if (acute.route() != Route.INHALED) {
            return Bounds.of(acute.amount(), PaperUnits::mgPerKg).map(bound -> new OwnDose(stated, bound, null));
        }
        Double hours = acute.amount().conditions().hours();
        if (hours == null || (hours != 4 && hours != 1)) {
            return Optional.empty();
        }
        Optional<Bound> air = Bounds.of(acute.amount(), PaperUnits::mgPerLitreOfAir);
        if (hours == 4) {
            return air.map(bound -> new OwnDose(stated, bound, null));
        }
        return air.map(bound -> {
            Answer four = Worked.out(InhalationFourHours.FIGURE)
                    .with("lc50_1h_mg_l", bound.number())
                    .with("form", DUST_OR_MIST)
                    .answer();
            OptionalDouble worth = OptionalDouble.of(four.number("lc50_4h_mg_l") / bound.number());
            return new OwnDose(stated, bound.times(worth.getAsDouble()), four);
        });
    }
}
