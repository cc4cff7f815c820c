package plumbrow.advice.gates;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.UseTerms;

/** Every value of a label that may not have been read, found in the records themselves: none can be added unseen. */
final class LabelValues {
    /** Rows of each kind in a scene. */
    static final Map<Class<? extends Record>, Function<Scene, List<? extends Record>>> ROWS = Map.ofEntries(
            Map.entry(Product.class, scene -> scene.products),
            Map.entry(LabelUse.class, scene -> scene.uses),
            Map.entry(ActiveContent.class, scene -> scene.actives),
            Map.entry(ActiveLimit.class, scene -> scene.limits),
            Map.entry(UseTerms.class, scene -> scene.terms),
            Map.entry(ProductCare.class, scene -> scene.cares),
            Map.entry(SoilRate.class, scene -> scene.soilRates),
            Map.entry(Setback.class, scene -> scene.setbacks),
            Map.entry(PlantBack.class, scene -> scene.plantBacks),
            Map.entry(MixRule.class, scene -> scene.mixRules),
            Map.entry(SpecialLabel.class, scene -> scene.specialLabels),
            Map.entry(ToleranceRule.class, scene -> scene.tolerances),
            Map.entry(LabelLimit.class, scene -> scene.labelLimits),
            Map.entry(BulletinLook.class, scene -> scene.bulletins));

    /** Where a blank says something else than "not read". */
    static final Map<String, String> SAYS_SOMETHING = Map.ofEntries(
            Map.entry("Product.onHand", "what is in the shed"),
            Map.entry("Product.registration", "a name, no limit"),
            Map.entry("Product.labelDate", "the age of the paper; care.confirmed is the limit"),
            Map.entry("SoilRate.organicMatterLowPct", "a row for any organic matter"),
            Map.entry("SoilRate.organicMatterHighPct", "a row for any organic matter"),
            Map.entry("SoilRate.phLow", "a row for any pH"),
            Map.entry("SoilRate.phHigh", "a row for any pH"),
            Map.entry("PlantBack.forPhFrom", "a row for any pH"),
            Map.entry("PlantBack.forPhBelow", "a row for any pH"),
            Map.entry("SpecialLabel.counties", "the whole state"),
            Map.entry("ToleranceRule.trait", "a label that asks for no tolerance at these stages"),
            Map.entry("ToleranceRule.earliestStage", "from the first stage on"),
            Map.entry("ToleranceRule.latestStage", "up to the last stage"),
            Map.entry("LabelLimit.crop", "every crop"),
            Map.entry("SoilRate.erodible", "a row for any land"),
            Map.entry("SoilRate.residueLowPct", "a row for any residue"),
            Map.entry("SoilRate.residueHighPct", "a row for any residue"),
            Map.entry("SoilRate.earliestStage", "from the first stage on"),
            Map.entry("SoilRate.latestStage", "up to the last stage"));

    /** Rows that nobody can miss by looking at the book: a label that was read whole has no others. */
    static final List<Class<? extends Record>> READ_WHOLE =
            List.of(SoilRate.class, PlantBack.class, MixRule.class, SpecialLabel.class, LabelLimit.class);

    private LabelValues() {}

    /** The rows of a kind in a scene, to be changed. */
    @SuppressWarnings("unchecked")
    static List<Record> rows(Scene scene, Class<? extends Record> kind) {
        return (List<Record>) Objects.requireNonNull(ROWS.get(kind)).apply(scene);
    }

    /** The values of a kind of row that may not have been read. */
    static List<RecordComponent> of(Class<? extends Record> kind) {
        return Arrays.stream(kind.getRecordComponents())
                .filter(LabelValues::mayBeUnread)
                .filter(value -> !SAYS_SOMETHING.containsKey(name(value)))
                .toList();
    }

    static String name(RecordComponent value) {
        return value.getDeclaringRecord().getSimpleName() + "." + value.getName();
    }

    /** What stands where it was not read. */
    static @Nullable Object unread(RecordComponent value) {
        return value.getType() == Ask.class ? Ask.UNKNOWN : null;
    }

    static boolean mayBeUnread(RecordComponent value) {
        return value.getType() == Ask.class || value.getAnnotatedType().isAnnotationPresent(Nullable.class);
    }
}
