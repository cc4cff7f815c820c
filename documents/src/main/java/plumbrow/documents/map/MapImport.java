package plumbrow.documents.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Feature.Area;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Nearness;
import plumbrow.advice.season.Season;
import plumbrow.advice.text.TextRule;
import plumbrow.documents.workbook.ground.FeatureShape;
import plumbrow.documents.workbook.ground.GeoJsonFile;
import plumbrow.documents.workbook.ground.NoBoundary;
import plumbrow.science.figure.Numbers;

/**
 * Puts the shapes of a map file into a season: outlines of fields, and features around them.
 *
 * <p>A shape whose attribute kind or type is a kind of feature is one. It belongs to the field its attribute field names;
 * without one to every outlined field within a quarter mile of it, a bee yard within two miles. Any other area is the
 * outline of the field that field, field_name or name names. Whatever fits nothing is told and left alone. Whether somebody
 * has looked over all of a field's surroundings, no file can tell: that stays as it was.
 */
public final class MapImport {
    private static final double NEARBY_FT = 1320;
    private static final double FT_PER_MILE = 5280;
    private static final double BEES_FLY_FT = 2 * FT_PER_MILE;
    /** Whatever is said to lie around a field and is farther off was put down wrong; no label reaches so far. */
    private static final double FARTHEST_FT = 25 * FT_PER_MILE;

    private static final List<String> OWNERS = List.of("field", "field_name", "fieldname");
    private static final List<String> NAMES = List.of("name", "label", "title");
    private static final List<String> KINDS = List.of("kind", "type", "feature");

    private final Map<String, Field> fields = new LinkedHashMap<>();
    private final List<Feature> features;
    private final List<Row> rows = new ArrayList<>();
    private final Set<String> outlined = new HashSet<>();
    private final String source;
    private final Season season;

    private MapImport(Season season, String source) {
        this.season = season;
        this.source = source;
        season.fields().forEach(field -> fields.put(plain(field.name()), field));
        features = new ArrayList<>(season.ground().features());
    }

    /**
     * What became of one shape of the file.
     *
     * @param number its number in the file, from 1
     * @param field the field it went to; null where it fits none
     * @param says in words
     * @param wrong whether it keeps the whole file from being taken in
     */
    public record Row(int number, String name, @Nullable String field, String says, boolean wrong) {}

    /** The season with the shapes in it, and what became of each; where a row is wrong, the season is as it was. */
    public record Result(Season season, List<Row> rows) {
        public boolean wrong() {
            return rows.stream().anyMatch(Row::wrong);
        }

        public long taken() {
            return rows.stream().filter(row -> row.field() != null).count();
        }

        /** Whether nothing was taken in, since a shape is wrong or none fits. */
        public boolean refused() {
            return wrong() || taken() == 0;
        }
    }

    /**
     * Takes shapes into the season of a book, whole or not at all. They are matched to the season that is being changed, so
     * that of two files that come in at the same moment neither is lost.
     *
     * @param book changes its latest season while nobody else can
     */
    public static Result through(
            Consumer<UnaryOperator<Season>> book, String fileName, List<GeoJsonFile.Feature> shapes) {
        AtomicReference<@Nullable Result> became = new AtomicReference<>();
        book.accept(written -> {
            Result result = into(written, fileName, shapes);
            became.set(result);
            return result.refused() ? written : result.season();
        });
        return Objects.requireNonNull(became.get());
    }

    public static Result into(Season season, String fileName, List<GeoJsonFile.Feature> shapes) {
        Placing.demand("The file's name, which is noted as the source,", TextRule.PROSE, fileName);
        MapImport task = new MapImport(season, fileName);
        // Outlines first: features are matched to them.
        Map<Boolean, List<Integer>> order = new LinkedHashMap<>();
        for (int i = 0; i < shapes.size(); i++) {
            order.computeIfAbsent(kind(shapes.get(i)).isPresent(), feature -> new ArrayList<>())
                    .add(i);
        }
        order.getOrDefault(false, List.of()).forEach(i -> task.outline(i + 1, shapes.get(i)));
        order.getOrDefault(true, List.of()).forEach(i -> task.feature(i + 1, shapes.get(i)));
        List<Row> rows =
                task.rows.stream().sorted(Comparator.comparingInt(Row::number)).toList();
        Result result = new Result(season, rows);
        return result.wrong() ? result : new Result(task.changed(), rows);
    }

    private Season changed() {
        return Placing.with(season, List.copyOf(fields.values()), features);
    }

    private void outline(int number, GeoJsonFile.Feature shape) {
        String name = attribute(shape, OWNERS).or(() -> attribute(shape, NAMES)).orElse("");
        Field field = fields.get(plain(name));
        if (field == null) {
            left(number, name, name.isEmpty() ? "it bears no field's name" : "there is no field of this name");
            return;
        }
        try {
            if (!(FeatureShape.read(shape.geometry()) instanceof Area area)) {
                left(number, name, "a point or line is no outline, and it has no kind of feature");
            } else if (!outlined.add(field.name())) {
                wrong(number, name, "expected each field's outline once");
            } else {
                Optional<String> fault = Placing.fault(field, area.outline());
                if (fault.isPresent()) {
                    wrong(number, name, fault.get());
                } else {
                    fields.put(plain(name), Placing.outlined(field, area.outline()));
                    rows.add(new Row(number, name, field.name(), Placing.said(area.outline()), false));
                }
            }
        } catch (NoBoundary broken) {
            wrong(number, name, "expected " + broken.expected());
        }
    }

    private void feature(int number, GeoJsonFile.Feature shape) {
        FeatureKind kind = kind(shape).orElseThrow();
        String name = attribute(shape, NAMES).orElse(kind.word());
        try {
            List<Shape> shapes = FeatureShape.all(shape.geometry());
            for (int i = 0; i < shapes.size(); i++) {
                String each = shapes.size() == 1 ? name : name + " " + (i + 1);
                place(
                        number,
                        kind,
                        each,
                        shapes.get(i),
                        attribute(shape, OWNERS).orElse(""));
            }
        } catch (NoBoundary broken) {
            wrong(number, name, "expected " + broken.expected());
        }
    }

    private void place(int number, FeatureKind kind, String name, Shape shape, String owner) {
        List<Field> owners = owner.isEmpty()
                ? fields.values().stream()
                        .filter(field -> near(field, kind, name, shape))
                        .toList()
                : Optional.ofNullable(fields.get(plain(owner))).stream().toList();
        if (owners.isEmpty()) {
            left(
                    number,
                    name,
                    owner.isEmpty() ? "no outlined field lies near it" : "there is no field called " + owner);
        }
        Optional<String> unfit = TextRule.NAME.objection(name);
        if (unfit.isPresent() && !owners.isEmpty()) {
            wrong(number, name, "expected a name that is " + unfit.get());
            return;
        }
        for (Field field : owners) {
            Feature placed = Placing.placed(features, new Feature(field.name(), kind, name, shape, null, source));
            Double feet = Nearness.of(field.boundary(), placed).feet();
            if (feet != null && feet > FARTHEST_FT) {
                wrong(
                        number,
                        name,
                        "expected within 25 miles of " + field.name() + ", longitude first; it lies "
                                + String.format(Locale.ROOT, "%,.0f", feet / FT_PER_MILE) + " miles away");
                continue;
            }
            rows.add(new Row(
                    number,
                    name,
                    field.name(),
                    kind.word()
                            + (feet == null
                                    ? ", distance unknown: the field has no outline"
                                    : ", " + Numbers.plain(feet) + " ft away"),
                    false));
        }
    }

    private static boolean near(Field field, FeatureKind kind, String name, Shape shape) {
        Double feet = Nearness.of(field.boundary(), new Feature(field.name(), kind, name, shape, null, ""))
                .measuredFt();
        return feet != null && feet <= (kind == FeatureKind.BEE_YARD ? BEES_FLY_FT : NEARBY_FT);
    }

    private void left(int number, String name, String why) {
        rows.add(new Row(number, name, null, "left alone: " + why, false));
    }

    private void wrong(int number, String name, String expected) {
        rows.add(new Row(number, name, null, expected, true));
    }

    private static Optional<FeatureKind> kind(GeoJsonFile.Feature shape) {
        return attribute(shape, KINDS).flatMap(word -> FeatureKind.called(word.replace('_', ' ')));
    }

    private static Optional<String> attribute(GeoJsonFile.Feature shape, List<String> names) {
        return names.stream()
                .flatMap(name -> shape.properties().keySet().stream().filter(key -> key.equalsIgnoreCase(name)))
                .map(shape::property)
                .filter(value -> !value.isEmpty())
                .findFirst();
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
