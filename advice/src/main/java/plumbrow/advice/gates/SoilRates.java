package plumbrow.advice.gates;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.field.Texture;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.SoilRate;

/**
 * Whether each rate is within what the label allows on this field's soil.
 *
 * <p>Protects the law and the crop. Every row of the label's table that fits the field's texture, organic matter, pH, residue,
 * standing as highly erodible land, and the crop's stage on the day is held to; where it has rows and none fits, the use is
 * barred. Unknown where a value that a row asks for is missing, or the row's rate was not read. Silent where the label has no such table.
 *
 * <p>Source: the label. Needs: the rows of soil rates, texture, organic matter and pH of the field,
 * and where a row asks for them its residue, its standing as erodible land and the stage of the crop.
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
        List<SoilRate> fitting = rows.stream()
                .filter(row -> fits(at, application, row) == Fits.YES)
                .toList();
        List<SoilRate> perhaps = rows.stream()
                .filter(row -> fits(at, application, row) == Fits.MAYBE)
                .toList();
        Stream<Finding> found = fitting.stream().map(row -> held(at, application, row));
        if (!perhaps.isEmpty()) {
            return Stream.concat(Stream.of(soilUnknown(at, application, perhaps)), found);
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

    private Finding soilUnknown(Case at, Application application, List<SoilRate> rows) {
        List<String> missing = missing(at, application, rows);
        String what = String.join(" and ", missing);
        boolean soilOnly = missing.stream().noneMatch(one -> one.equals("growth stage on the day"));
        return unknown(
                        application.subject(),
                        "The label's rate goes by soil, land or stage, and the " + what
                                + " of this field is not known.",
                        soilOnly
                                ? "Test the soil, or look it up on the soil map: " + what + "."
                                : "Plan or look up: " + what + ".")
                .standingIn(rows.get(0).source());
    }

    private Finding noneFits(Application application, SoilRate row) {
        return barred(
                        application.subject(),
                        "The label gives rates by soil, land or stage, and none for a soil or land like this field's at this stage.",
                        "Choose a product whose label has a rate for this soil.")
                .standingIn(row.source());
    }

    private static List<String> missing(Case at, Application application, List<SoilRate> rows) {
        Field field = at.field();
        FieldLand land = at.index().land(field.name()).orElse(null);
        boolean byErodible = rows.stream().anyMatch(row -> row.erodible() != Ask.UNKNOWN);
        boolean byResidue = rows.stream().anyMatch(row -> row.residueLowPct() != null || row.residueHighPct() != null);
        boolean byStage = rows.stream().anyMatch(row -> row.earliestStage() != null || row.latestStage() != null);
        return Stream.of(
                        field.texture() == null ? "texture" : "",
                        field.organicMatterPct() == null ? "organic matter" : "",
                        field.ph() == null ? "pH" : "",
                        byErodible && (land == null || land.erodible() == Ask.UNKNOWN)
                                ? "standing as highly erodible land or other"
                                : "",
                        byResidue && (land == null || land.residuePct() == null) ? "ground under crop residue" : "",
                        byStage && stage(application) == null ? "growth stage on the day" : "")
                .filter(Predicate.not(String::isEmpty))
                .toList();
    }

    private static @Nullable String stage(Application application) {
        SprayPlan plan = application.plan();
        return plan == null ? null : plan.cropStage();
    }

    private static Fits fits(Case at, Application application, SoilRate row) {
        Field field = at.field();
        Optional<FieldLand> land = at.index().land(field.name());
        Set<Fits> all = EnumSet.copyOf(List.of(
                texture(row.textures(), field.texture()),
                within(field.organicMatterPct(), row.organicMatterLowPct(), row.organicMatterHighPct()),
                within(field.ph(), row.phLow(), row.phHigh()),
                within(land.map(FieldLand::residuePct).orElse(null), row.residueLowPct(), row.residueHighPct()),
                erodible(row.erodible(), land.map(FieldLand::erodible).orElse(Ask.UNKNOWN)),
                stage(field.crop(), row.earliestStage(), stage(application)),
                stage(field.crop(), stage(application), row.latestStage(), row.latestStage() == null)));
        if (all.contains(Fits.NO)) {
            return Fits.NO;
        }
        return all.contains(Fits.MAYBE) ? Fits.MAYBE : Fits.YES;
    }

    private static Fits erodible(Ask asked, Ask is) {
        if (asked == Ask.UNKNOWN) {
            return Fits.YES;
        }
        return is == Ask.UNKNOWN ? Fits.MAYBE : is == asked ? Fits.YES : Fits.NO;
    }

    /** Whether the crop is at a stage or past it; a row that names none holds at any. */
    private static Fits stage(Crop crop, @Nullable String from, @Nullable String on) {
        return stage(crop, from, on, from == null);
    }

    /** Whether one stage comes no later than another. */
    private static Fits stage(Crop crop, @Nullable String early, @Nullable String late, boolean any) {
        if (any) {
            return Fits.YES;
        }
        OptionalInt first = early == null ? OptionalInt.empty() : GrowthStage.place(crop, early);
        OptionalInt second = late == null ? OptionalInt.empty() : GrowthStage.place(crop, late);
        if (first.isEmpty() || second.isEmpty()) {
            return Fits.MAYBE;
        }
        return first.getAsInt() <= second.getAsInt() ? Fits.YES : Fits.NO;
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
