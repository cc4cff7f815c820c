package plumbrow.advice.gates;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.SoilRate;

/**
 * Whether each rate is within what the label allows on this field's soil.
 *
 * <p>Protects the law and the crop. Every row of the label's table that fits the field's texture, organic matter and pH is
 * held to; where it has rows and none fits, the use is barred. Unknown where a value of the soil that a row asks for is
 * missing, or the row's rate was not read. Silent where the label has no such table.
 *
 * <p>Source: the label. Needs: the rows of soil rates, and texture, organic matter and pH of the field.
 */
final class SoilRates extends Question {
    SoilRates() {
        super("soil-rate", Protects.LAW, "Is the rate within what the label allows on this soil?");
    }

    private enum Fits {
        YES,
        NO,
        MAYBE
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .flatMap(application -> judge(at, application))
                .toList();
    }

    private Stream<Finding> judge(Case at, Application application) {
        List<SoilRate> rows =
                at.index().soilRates(application.product(), at.field().crop());
        List<SoilRate> fitting =
                rows.stream().filter(row -> fits(row, at.field()) == Fits.YES).toList();
        List<SoilRate> perhaps =
                rows.stream().filter(row -> fits(row, at.field()) == Fits.MAYBE).toList();
        Stream<Finding> found = fitting.stream().map(row -> held(at, application, row));
        if (!perhaps.isEmpty()) {
            return Stream.concat(Stream.of(soilUnknown(application, at.field(), perhaps)), found);
        }
        return rows.isEmpty() || !fitting.isEmpty() ? found : Stream.of(noneFits(application, rows.get(0)));
    }

    private Finding held(Case at, Application application, SoilRate row) {
        if (row.forbidden()) {
            return barred(
                            application.subject(),
                            "The label forbids it on this soil.",
                            "Choose a product that the label allows on this soil.")
                    .standingIn(row.source());
        }
        Ask less = at.use(application.product()).map(LabelUse::lessForbidden).orElse(Ask.UNKNOWN);
        String on = at.field().crop().word() + " on this soil";
        return new RateRange(this, application, row.lowRate(), row.highRate(), less, on, row.source()).judge();
    }

    private Finding soilUnknown(Application application, Field field, List<SoilRate> rows) {
        return unknown(
                        application.subject(),
                        "The label's rate goes by soil, and the " + missing(field) + " of this field is not known.",
                        "Test the soil, or look it up on the soil map: " + missing(field) + ".")
                .standingIn(rows.get(0).source());
    }

    private Finding noneFits(Application application, SoilRate row) {
        return barred(
                        application.subject(),
                        "The label gives rates by soil, and none for a soil like this field's.",
                        "Choose a product whose label has a rate for this soil.")
                .standingIn(row.source());
    }

    private static String missing(Field field) {
        return String.join(
                " and ",
                Stream.of(
                                field.texture() == null ? "texture" : "",
                                field.organicMatterPct() == null ? "organic matter" : "",
                                field.ph() == null ? "pH" : "")
                        .filter(Predicate.not(String::isEmpty))
                        .toList());
    }

    private static Fits fits(SoilRate row, Field field) {
        Set<Fits> all = Set.copyOf(List.of(
                texture(row.textures(), field.texture()),
                within(field.organicMatterPct(), row.organicMatterLowPct(), row.organicMatterHighPct()),
                within(field.ph(), row.phLow(), row.phHigh())));
        if (all.contains(Fits.NO)) {
            return Fits.NO;
        }
        return all.contains(Fits.MAYBE) ? Fits.MAYBE : Fits.YES;
    }

    private static Fits texture(Set<Texture> asked, @Nullable Texture texture) {
        if (asked.isEmpty()) {
            return Fits.YES;
        }
        if (texture == null) {
            return Fits.MAYBE;
        }
        return asked.contains(texture) ? Fits.YES : Fits.NO;
    }

    private static Fits within(@Nullable Double value, @Nullable Double from, @Nullable Double below) {
        if (from == null && below == null) {
            return Fits.YES;
        }
        if (value == null) {
            return Fits.MAYBE;
        }
        return (from == null || value >= from) && (below == null || value < below) ? Fits.YES : Fits.NO;
    }
}
