package plumbrow.advice.gates;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.SeedRights;

/** Single edits of a scene: forgetting one value, or tightening one limit. Each is done, looked at and undone. */
final class LabelEdits {
    private static final List<String> QUESTIONS =
            List.of("contractForbids", "patentInForce", "varietyProtected", "ownHarvest", "hybrid");

    private static final List<String> CARE_QUESTIONS =
            List.of("restrictedUse", "bulletin", "groundwater", "bees", "saturatedSoil");

    private LabelEdits() {}

    /** No becomes yes; what was not asked stays so. */
    private static Object yes(Object answer) {
        return answer == Ask.NO ? Ask.YES : answer;
    }

    /** What is done while an edit holds. */
    @FunctionalInterface
    interface Look {
        void at(String edit);
    }

    /** Runs the look once for every value that can be forgotten. */
    static void forgetting(Scene scene, Look look) {
        LabelValues.ROWS.keySet().forEach(kind -> {
            List<Record> rows = LabelValues.rows(scene, kind);
            for (RecordComponent value : LabelValues.of(kind)) {
                Object unread = LabelValues.unread(value);
                each(rows, LabelValues.name(value), row -> with(row, value.getName(), unread), look);
            }
            if (!LabelValues.READ_WHOLE.contains(kind)) {
                each(rows, kind.getSimpleName(), row -> null, look);
            }
        });
        forget(scene.passes, look, "date", "rate");
        forget(
                scene.plans,
                look,
                "carrierGalPerAcre",
                "droplets",
                "boomIn",
                "driftReductionPct",
                "cropStage",
                "cropHeightIn",
                "weedHeightIn",
                "applicator");
        each(scene.plans, "bloom", row -> with(row, "bloom", Ask.UNKNOWN), look);
        each(scene.plans, "plan row", row -> null, look);
        forget(scene.features, look, "nearestFt");
        forget(scene.lands, look, "residuePct", "groundWaterFt");
        each(scene.lands, "erodible", row -> with(row, "erodible", Ask.UNKNOWN), look);
        each(scene.lands, "land row", row -> null, look);
        for (String name : List.of("licence", "state", "validUntil", "kind", "covers")) {
            person(scene, name, null, look);
        }
        person(scene, "forHire", Ask.UNKNOWN, look);
        forget(scene.nextCrops, look, "planted");
        each(scene.nextCrops, "next crop row", row -> null, look);
        for (String name : List.of("requiredPct", "farthestFt", "fewestRows")) {
            each(scene.seeds, name, seed -> with(seed, "rule", with(seed.rule(), name, null)), look);
        }
        RefugeRule.Form unread = RefugeRule.Form.UNKNOWN;
        each(scene.seeds, "form", seed -> with(seed, "rule", with(seed.rule(), "form", unread)), look);
        for (String name : List.of("herbicideTraits", "treatments", "refugeCheckedBy")) {
            each(scene.seeds, name, seed -> with(seed, "tag", with(seed.tag(), name, null)), look);
        }
        for (String question : QUESTIONS) {
            each(scene.seeds, question, seed -> with(seed, "rights", with(seed.rights(), question, Ask.UNKNOWN)), look);
        }
    }

    /** Runs the look once for every limit that can be made tighter. */
    static void tightening(Scene scene, Look look) {
        tighten(scene.products, "states", states -> List.of("IL"), look);
        tighten(scene.products, "excludedCounties", counties -> List.of("IA: Marrow"), look);
        tighten(scene.uses, "lowRate", low -> times(low, 1.4), look);
        tighten(scene.uses, "highRate", high -> times(high, 0.5), look);
        tighten(scene.uses, "seasonMax", most -> times(most, 0.5), look);
        tighten(scene.uses, "mostApplications", most -> (Integer) most - 1, look);
        tighten(scene.uses, "preHarvestDays", days -> (Integer) days + 60, look);
        tighten(scene.limits, "seasonMaxPounds", most -> (Double) most / 2, look);
        tighten(scene.terms, "reentryHours", hours -> (Integer) hours + 60, look);
        tighten(scene.terms, "daysBetween", days -> (Integer) days + 30, look);
        tighten(scene.terms, "grazingDays", days -> (Integer) days + 200, look);
        tighten(scene.terms, "feedingForbidden", LabelEdits::yes, look);
        tighten(scene.terms, "earliestStage", stage -> "V7", look);
        tighten(scene.terms, "latestStage", stage -> "V2", look);
        tighten(scene.terms, "highestCropIn", height -> 8.0, look);
        tighten(scene.terms, "highestWeedIn", height -> 2.0, look);
        tighten(scene.terms, "methods", methods -> Set.of(Method.BAND), look);
        tighten(scene.terms, "carrierLowGalPerAcre", least -> (Double) least + 10, look);
        tighten(scene.terms, "finest", finest -> Droplets.VERY_COARSE, look);
        tighten(scene.terms, "coarsest", coarsest -> Droplets.FINE, look);
        tighten(scene.terms, "boomHighestIn", boom -> 12.0, look);
        tighten(scene.terms, "windHighestMph", wind -> (Double) wind / 2, look);
        tighten(scene.terms, "windLowestMph", wind -> (Double) wind + 2, look);
        tighten(scene.terms, "warmestF", warm -> 60.0, look);
        tighten(scene.terms, "rainFreeHours", hours -> (Double) hours + 12, look);
        tighten(scene.specialLabels, "until", day -> LocalDate.of(2026, 5, 2), look);
        tighten(scene.specialLabels, "from", day -> ((LocalDate) day).plusDays(60), look);
        tighten(scene.specialLabels, "counties", counties -> List.of("Elsewhere"), look);
        each(scene.specialLabels, "state", row -> with(row, "state", "ND"), look);
        tighten(scene.cares, "rainAheadHours", hours -> (Integer) hours + 24, look);
        tighten(scene.cares, "wear", wear -> Set.of("gloves", "respirator"), look);
        for (String question : CARE_QUESTIONS) {
            tighten(scene.cares, question, LabelEdits::yes, look);
        }
        tighten(scene.setbacks, "feet", feet -> (Double) feet + 100, look);
        tighten(scene.plantBacks, "days", days -> (Integer) days + 300, look);
        tighten(scene.soilRates, "highRate", high -> times(high, 0.3), look);
        each(scene.soilRates, "forbidden", row -> with(row, "forbidden", true), look);
        tightenRule(scene, "requiredPct", pct -> (Double) pct * 2, look);
        tightenRule(scene, "farthestFt", feet -> (Double) feet * 0.4, look);
        tightenRule(scene, "fewestRows", rows -> (Integer) rows + 2, look);
        for (String question : List.of("contractForbids", "patentInForce", "hybrid")) {
            each(scene.seeds, question, seed -> with(seed, "rights", barred(seed.rights(), question)), look);
        }
    }

    /** Runs the look once for every row of restriction that may be added beside one that stands there. */
    static void adding(Scene scene, Look look) {
        add(scene.setbacks, row -> with(row, "feet", row.feet() == null ? 240.0 : row.feet() + 100), look);
        add(scene.setbacks, row -> with(with(row, "feet", 240.0), "downwindOnly", true), look);
        add(scene.plantBacks, row -> with(row, "days", 900), look);
        add(scene.limits, row -> with(row, "seasonMaxPounds", 0.1), look);
        add(scene.soilRates, row -> with(row, "highRate", new Amount(1, FarmUnit.FL_OZ)), look);
        add(scene.soilRates, row -> with(row, "forbidden", true), look);
        add(scene.mixRules, row -> with(with(row, "partner", "atrazine"), "word", MixRule.Word.FORBIDDEN), look);
        add(
                scene.terms,
                scene.mixRules,
                row -> new MixRule(row.product(), "atrazine; nothing else", MixRule.Word.FORBIDDEN, "label p. 8"),
                look);
        add(
                scene.terms,
                scene.mixRules,
                row -> new MixRule(row.product(), "nobody's partner", MixRule.Word.ONLY, "label p. 8"),
                look);
        add(
                scene.terms,
                scene.mixRules,
                row -> new MixRule(row.product(), "nobody's partner; nor this", MixRule.Word.REQUIRED, "label p. 8"),
                look);
        add(
                scene.soilRates,
                row -> with(with(row, "erodible", Ask.NO), "highRate", new Amount(1, FarmUnit.FL_OZ)),
                look);
        add(scene.bulletins, row -> with(row, "says", "not within 100 ft of a stream"), look);
        for (LabelLimit.Kind kind : LabelLimit.Kind.values()) {
            if (kind.answers()) {
                continue;
            }
            String value = switch (kind.form()) {
                case DAY -> "01-02";
                case DATE, DATE_OR_NONE -> "2026-01-02";
                case NUMBER -> "300";
                case NAMES -> "IL: Elsewhere";
                case WORDS -> "some words";
            };
            add(
                    scene.terms,
                    scene.labelLimits,
                    row -> new LabelLimit(row.product(), null, kind, value, "label p. 3"),
                    look);
        }
    }

    private static <T> void add(List<T> rows, UnaryOperator<T> more, Look look) {
        add(List.copyOf(rows), rows, more, look);
    }

    private static <S, T> void add(List<S> like, List<T> rows, Function<S, T> more, Look look) {
        for (S one : like) {
            T row = more.apply(one);
            rows.add(row);
            look.at(row.toString());
            rows.remove(rows.size() - 1);
            rows.add(0, row);
            look.at(row.toString());
            rows.remove(0);
        }
    }

    /** The look with one value of the first person changed, and the crew as it was after it. */
    private static void person(Scene scene, String name, @Nullable Object value, Look look) {
        Crew before = scene.crew;
        scene.crew = with(before, "people", List.of(with(before.people().get(0), name, value)));
        look.at("the person's " + name);
        scene.crew = before;
    }

    private static SeedRights barred(SeedRights rights, String question) {
        return with(rights, question, Ask.YES);
    }

    private static <T extends Record> void forget(List<T> rows, Look look, String... names) {
        for (String name : names) {
            each(rows, name, row -> with(row, name, null), look);
        }
    }

    private static <T extends Record> void tighten(List<T> rows, String name, UnaryOperator<Object> change, Look look) {
        each(rows, name, row -> changed(row, name, change), look);
    }

    private static void tightenRule(Scene scene, String name, UnaryOperator<Object> change, Look look) {
        each(scene.seeds, name, seed -> with(seed, "rule", changed(seed.rule(), name, change)), look);
    }

    private static <T extends Record> T changed(T row, String name, UnaryOperator<Object> change) {
        Object value = value(row, name);
        return value == null ? row : with(row, name, change.apply(value));
    }

    /** Each row changed in turn; a change to null drops the row. */
    private static <T> void each(List<T> rows, String name, UnaryOperator<@Nullable T> change, Look look) {
        List<T> before = new ArrayList<>(rows);
        for (int i = 0; i < before.size(); i++) {
            T changed = change.apply(before.get(i));
            if (changed == null) {
                rows.remove(i);
            } else {
                rows.set(i, changed);
            }
            look.at(name + " of row " + i);
            rows.clear();
            rows.addAll(before);
        }
    }

    private static Amount times(Object amount, double factor) {
        return new Amount(((Amount) amount).value() * factor, ((Amount) amount).unit());
    }

    private static @Nullable Object value(Record row, String name) {
        return Arrays.stream(row.getClass().getRecordComponents())
                .filter(component -> component.getName().equals(name))
                .findFirst()
                .map(component -> read(row, component))
                .orElse(null);
    }

    /** The row with one value changed. */
    @SuppressWarnings("unchecked")
    static <T extends Record> T with(T row, String name, @Nullable Object value) {
        RecordComponent[] components = row.getClass().getRecordComponents();
        if (Arrays.stream(components).noneMatch(component -> component.getName().equals(name))) {
            throw new IllegalArgumentException(row.getClass() + " has no " + name);
        }
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Object[] values = Arrays.stream(components)
                .map(component -> component.getName().equals(name) ? value : read(row, component))
                .toArray();
        try {
            return (T) row.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static @Nullable Object read(Record row, RecordComponent component) {
        try {
            return component.getAccessor().invoke(row);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component.getName(), e);
        }
    }
}
