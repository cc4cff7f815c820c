package plumbrow.advice.gates;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.crew.Licence;
import plumbrow.advice.crew.LicenceKind;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Looked;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.Trait;

/**
 * Changes to a scene written as in a decision table: {@code terms.boomHighestIn=24; plan.boomIn=?}. A question mark is
 * unknown, a minus before a part drops its rows, a part that the scene lacks comes with plain values first.
 */
final class Edits {
    private Edits() {}

    static Scene apply(Scene scene, @Nullable String edits) {
        if (edits != null) {
            Arrays.stream(edits.split(";")).map(String::strip).forEach(edit -> one(scene, edit));
        }
        return scene;
    }

    private static void one(Scene scene, String edit) {
        if (edit.startsWith("-")) {
            rows(scene, edit.substring(1)).clear();
            return;
        }
        if (edit.startsWith("+")) {
            added(scene, edit.substring(1));
            return;
        }
        String[] sides = edit.split("=", 2);
        String[] path = sides[0].split("\\.");
        String text = sides[1].strip();
        switch (path[0]) {
            case "field" -> scene.field = set(scene.field, path[1], text);
            case "crew" -> scene.crew = set(scene.crew, path[1], text);
            case "licence" ->
                scene.crew = LabelEdits.with(
                        scene.crew,
                        "licences",
                        List.of(set(scene.crew.licences().get(0), path[1], text)));
            case "person" ->
                scene.crew = LabelEdits.with(
                        scene.crew, "people", List.of(set(scene.crew.people().get(0), path[1], text)));
            case "refuge" -> scene.refuge = set(scene.refuge, path[1], text);
            case "rule" -> bag(scene, "rule", seed -> set(seed.rule(), path[1], text));
            case "tag" -> bag(scene, "tag", seed -> set(seed.tag(), path[1], text));
            case "rights" -> bag(scene, "rights", seed -> set(seed.rights(), path[1], text));
            default -> inList(scene, path, text);
        }
    }

    private static void bag(Scene scene, String part, Function<Seed, Record> changed) {
        Seed seed = scene.seeds.get(0);
        scene.seeds.set(0, LabelEdits.with(seed, part, changed.apply(seed)));
    }

    @SuppressWarnings("unchecked")
    private static void inList(Scene scene, String[] path, String text) {
        String digits = path[0].replaceAll("\\D", "");
        int row = digits.isEmpty() ? 0 : Integer.parseInt(digits) - 1;
        String part = path[0].replaceAll("\\d", "");
        List<Record> rows = (List<Record>) rows(scene, part);
        if (rows.isEmpty()) {
            added(scene, part);
        }
        rows.set(row, set(rows.get(row), path[1], text));
    }

    private static List<? extends Record> rows(Scene scene, String part) {
        return switch (part) {
            case "product" -> scene.products;
            case "use" -> scene.uses;
            case "active" -> scene.actives;
            case "limit" -> scene.limits;
            case "terms" -> scene.terms;
            case "care" -> scene.cares;
            case "plan" -> scene.plans;
            case "pass" -> scene.passes;
            case "feature" -> scene.features;
            case "looked" -> scene.looked;
            case "next" -> scene.nextCrops;
            case "setback" -> scene.setbacks;
            case "plantback" -> scene.plantBacks;
            case "soil" -> scene.soilRates;
            case "special" -> scene.specialLabels;
            case "mix" -> scene.mixRules;
            case "also" -> scene.alsoIn;
            case "log" -> scene.log;
            case "weed" -> scene.weeds;
            case "insect" -> scene.insects;
            case "resistance" -> scene.resistance;
            case "control" -> scene.controls;
            case "tolerance" -> scene.tolerances;
            case "labellimit" -> scene.labelLimits;
            case "history" -> scene.history;
            case "bulletin" -> scene.bulletins;
            case "land" -> scene.lands;
            default -> throw new IllegalArgumentException(part);
        };
    }

    private static void added(Scene scene, String part) {
        Amount quart = new Amount(1, FarmUnit.QT);
        Distribution sure = new Distribution.Fixed(0.9);
        switch (part) {
            case "soil" ->
                scene.soilRates.add(new SoilRate(
                        "Tackline",
                        Crop.CORN,
                        Set.of(),
                        null,
                        null,
                        null,
                        null,
                        false,
                        new Amount(0.5, FarmUnit.QT),
                        quart,
                        "label p. 6"));
            case "special" ->
                scene.specialLabels.add(new SpecialLabel(
                        "Tackline",
                        Crop.CORN,
                        "IA",
                        null,
                        LocalDate.of(2026, 5, 1),
                        LocalDate.of(2026, 6, 30),
                        "IA-260001"));
            case "mix" -> scene.mixRules.add(new MixRule("Tackline", "adjuvant", MixRule.Word.REQUIRED, "label p. 8"));
            case "looked" -> scene.looked.add(new Looked("Home", FeatureKind.STREAM));
            case "also" -> scene.alsoIn.add(new AlsoIn("Home", "IA", "Sorrel"));
            case "log" ->
                scene.log.add(new Done("Home", LocalDate.of(2026, 4, 20), "Tackline", quart, 100, null, "log"));
            case "weed" ->
                scene.weeds.add(new WeedPressure("Home", "waterhemp", new Distribution.Fixed(20), 3, 60, "scouted"));
            case "insect" ->
                scene.insects.add(new InsectPressure(
                        "Home",
                        "corn borer",
                        InsectPressure.Measure.LARVAE_PER_PLANT,
                        new Distribution.Fixed(1),
                        new Distribution.Fixed(5),
                        0,
                        null,
                        null,
                        "scouted"));
            case "resistance" -> scene.resistance.add(new KnownResistance("Home", "waterhemp", "9", "trial"));
            case "control" -> scene.controls.add(new Control("Tackline", "waterhemp", quart, sure, "guide"));
            case "block" -> {
                scene.traits.add(new Trait("P1", "group 1", "corn borer", sure, "guide"));
                scene.traitSeed("Trait", 0, Scene.rule(RefugeRule.Form.BLOCK, 20.0, 2640.0, 4));
                scene.plainSeed("Plain").plant("Trait", 80).plant("Plain", 20);
                scene.refuge = new RefugePlan(2640.0, 4);
            }
            case "saved" ->
                scene.savedSeed("Bin", new SeedRights(Ask.NO, Ask.NO, Ask.YES, Ask.YES, Ask.NO))
                        .plant("Bin", 100);
            case "downwind" ->
                scene.setbacks.add(new Setback("Tackline", FeatureKind.STREAM, 240.0, true, "label p. 4"));
            case "seed" -> scene.plainSeed("Plain").plant("Plain", 100);
            case "tolerance" ->
                scene.tolerances.add(new ToleranceRule("Tackline", Crop.CORN, "glyphosate", "VE", "V8", "label p. 5"));
            case "labellimit" ->
                scene.labelLimits.add(
                        new LabelLimit("Tackline", Crop.CORN, LabelLimit.Kind.NOT_AFTER, "05-20", "label p. 3"));
            case "bulletin" ->
                scene.bulletins.add(new BulletinLook(
                        "Tackline", "IA", "Marrow", YearMonth.of(2026, 5), LocalDate.of(2026, 4, 20), "Pat", ""));
            case "land" -> scene.lands.add(new FieldLand("Home", Ask.NO, 40.0, 12.0, "soil map"));
            case "licence" ->
                scene.crew = LabelEdits.with(
                        scene.crew,
                        "licences",
                        List.of(new Licence(
                                "Pat",
                                "P-200",
                                "IL",
                                LocalDate.of(2026, 12, 31),
                                LicenceKind.COMMERCIAL,
                                Set.of(Licence.Cover.FIELD_CROPS))));
            case "hand" -> scene.pass(PassKind.HAND_WORK, WholeLabel.SPRAYED.plusDays(1), null, null, 100);
            case "history" -> scene.history.add(new CropYear("Home", 2025, "corn", 200.0, List.of("glyphosate")));
            case "treatment" -> {
                scene.product("Seedcoat", ProductKind.SEED_TREATMENT)
                        .active("Seedcoat", "thiamethoxam", 5, FarmUnit.GAL, null);
                scene.plantBacks.add(new PlantBack("Seedcoat", PlantBack.ANY_OTHER, 0, null, null, "", "tag"));
                one(scene, "tag.treatments=Seedcoat");
            }
            case "scout", "till", "again" -> pass(scene, part);
            case "partner" -> {
                scene.product("Partner", ProductKind.HERBICIDE).active("Partner", "mesotrione", 4, FarmUnit.GAL, null);
                scene.spray("Partner", "3 fl oz", WholeLabel.SPRAYED);
                scene.plans.add(LabelEdits.with(WholeLabel.plan(scene.passes.size()), "tank", "A"));
                scene.plans.set(0, LabelEdits.with(scene.plans.get(0), "tank", "A"));
            }
            case "adjuvant" -> {
                scene.product("Spreader", ProductKind.ADJUVANT).spray("Spreader", "1 pt", WholeLabel.SPRAYED);
                scene.plans.add(LabelEdits.with(WholeLabel.plan(scene.passes.size()), "tank", "A"));
                scene.plans.set(0, LabelEdits.with(scene.plans.get(0), "tank", "A"));
            }
            default -> throw new IllegalArgumentException(part);
        }
    }

    /** A scouting or tillage pass the day after, or the same product a week after. */
    private static void pass(Scene scene, String part) {
        if (part.equals("again")) {
            scene.spray("Tackline", "1 qt", WholeLabel.SPRAYED.plusDays(7));
            scene.plans.add(WholeLabel.plan(scene.passes.size()));
        } else {
            scene.pass(
                    part.equals("scout") ? PassKind.SCOUTING : PassKind.TILLAGE,
                    WholeLabel.SPRAYED.plusDays(1),
                    null,
                    null,
                    100);
        }
    }

    /** The values that the first row of a part has; none where the scene lacks it. */
    static List<RecordComponent> values(Scene scene, String part) {
        Record row = switch (part) {
            case "field" -> scene.field;
            case "crew" -> scene.crew;
            case "person" -> scene.crew.people().get(0);
            case "licence" ->
                scene.crew.licences().isEmpty() ? null : scene.crew.licences().get(0);
            case "refuge" -> scene.refuge;
            case "rule" -> scene.seeds.isEmpty() ? null : scene.seeds.get(0).rule();
            case "tag" -> scene.seeds.isEmpty() ? null : scene.seeds.get(0).tag();
            case "rights" -> scene.seeds.isEmpty() ? null : scene.seeds.get(0).rights();
            default -> rows(scene, part).stream().findFirst().orElse(null);
        };
        return row == null ? List.of() : List.of(row.getClass().getRecordComponents());
    }

    private static <T extends Record> T set(T row, String name, String text) {
        RecordComponent component = Arrays.stream(row.getClass().getRecordComponents())
                .filter(one -> one.getName().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(row.getClass() + " has no " + name));
        return LabelEdits.with(
                row, name, text.equals("?") ? LabelValues.unread(component) : value(component.getGenericType(), text));
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Object value(Type type, String text) {
        if (type instanceof ParameterizedType list) {
            List<Object> items = text.isEmpty()
                    ? List.of()
                    : Arrays.stream(text.split(","))
                            .map(String::strip)
                            .map(item -> value(list.getActualTypeArguments()[0], item))
                            .toList();
            return list.getRawType() == Set.class ? new HashSet<>(items) : items;
        }
        Class<?> plain = (Class<?>) type;
        if (plain.isEnum()) {
            return Enum.valueOf((Class) plain, text);
        }
        return switch (plain.getSimpleName()) {
            case "Double", "double" -> Double.valueOf(text);
            case "Integer", "int" -> Integer.valueOf(text);
            case "Boolean", "boolean" -> Boolean.valueOf(text);
            case "LocalDate" -> LocalDate.parse(text);
            case "Amount" -> Objects.requireNonNull(Scene.amount(text));
            case "Distribution" -> new Distribution.Fixed(Double.parseDouble(text));
            // A semicolon parts edits, so that lists within a text are written with " + ".
            case "YearMonth" -> YearMonth.parse(text);
            case "String" -> text.equals("''") ? "" : text.replace(" + ", "; ");
            default -> throw new IllegalArgumentException(plain.getName());
        };
    }
}
