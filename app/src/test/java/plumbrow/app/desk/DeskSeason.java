package plumbrow.app.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Shelf;
import plumbrow.app.SmallSeason;

/**
 * The small season with more to show: a field with an outline and a history, one with a name that is awkward in an
 * address, one for which nothing may be advised; a program that is barred and one that waits for an answer.
 */
final class DeskSeason {
    static final String HOME = "North 80";
    static final String AWKWARD = "Creek/Bottom; 40 % <west>";
    static final String STUCK = "Leased strip";
    static final String BARRED = "double the label";
    static final String UNKNOWN = "full rate, day not planned";
    static final String SOURCE = "invented for this test";

    private DeskSeason() {}

    static Season of(int year) {
        Season small = SmallSeason.of(year);
        List<Field> fields = List.of(
                new Field(
                        HOME,
                        "Alder Home",
                        80,
                        outline(),
                        "IA",
                        "Adams",
                        Crop.CORN,
                        Texture.SILTY_CLAY_LOAM,
                        3.4,
                        null,
                        2.5),
                new Field(AWKWARD, "Birch Rent", 38.5, null, "IA", "Adams", Crop.CORN, null, null, null, null),
                new Field(STUCK, "Birch Rent", 12, null, "MO", "Holt", Crop.CORN, null, 2.1, 6.4, null));
        LocalDate planting = LocalDate.of(year, 5, 4);
        List<Program> programs = new ArrayList<>();
        for (String field : List.of(HOME, AWKWARD)) {
            programs.add(program(field, "seed alone", true, "", seed()));
            programs.add(program(
                    field, "half rate", false, "Half the high rate, in furrow.", seed(), granules(3, planting)));
            programs.add(program(field, "full rate", false, "", seed(), granules(6, planting)));
        }
        Pass harvest = new Pass(
                3, PassKind.HARVEST, LocalDate.of(year, 10, 12), null, null, 100, 0, new Distribution.Fixed(0), 0);
        programs.replaceAll(program -> program(
                program.field(),
                program.name(),
                program.baseline(),
                program.note(),
                Stream.concat(program.passes().stream(), Stream.of(harvest)).toArray(Pass[]::new)));
        programs.add(program(HOME, BARRED, false, "", seed(), granules(12, planting)));
        programs.add(program(HOME, UNKNOWN, false, "", seed(), granules(6, null)));
        programs.add(program(STUCK, "granules where nobody registered them", true, "", seed(), granules(6, planting)));
        return new Season(
                year,
                small.asOf(),
                small.adviser(),
                List.of(small.farms().get(0), new Farm("Birch Rent", "Q. Birch", 0.5, 0.5)),
                fields,
                List.of(new CropYear(HOME, year - 1, "corn", 188.0), new CropYear(HOME, year - 2, "soybean", null)),
                readInFull(small.shelf(), year),
                new Pests(List.of(rootworm(HOME), rootworm(AWKWARD), rootworm(STUCK)), List.of(), List.of()),
                programs,
                small.assumptions(),
                LabelRead.ground(fields, year),
                LabelRead.work(programs));
    }

    private static InsectPressure rootworm(String field) {
        return new InsectPressure(
                field,
                "corn rootworm",
                InsectPressure.Measure.NODE_INJURY,
                new Distribution.Pert(0.05, 0.5, 2.4),
                new Distribution.Pert(10, 15, 20),
                0,
                new ScoutingSample(20, 0.5, 60),
                null,
                SOURCE);
    }

    private static Shelf readInFull(Shelf shelf, int year) {
        return new Shelf(
                shelf.products(),
                shelf.seeds(),
                shelf.traits(),
                shelf.actives(),
                shelf.labelUses(),
                List.of(new ActiveLimit(
                        "Stonefly 3G", Crop.CORN, "tefluthrin", 0.2, ActiveLimit.Basis.ACTIVE_INGREDIENT, SOURCE)),
                shelf.controls(),
                LabelRead.of("Stonefly 3G", year, SOURCE));
    }

    private static Program program(String field, String name, boolean baseline, String note, Pass... passes) {
        return new Program(field, name, baseline, new RefugePlan(null, null), note, List.of(passes));
    }

    private static Pass seed() {
        Amount rate = new Amount(34_000, FarmUnit.SEEDS);
        return new Pass(1, PassKind.SEED, null, "Hollowbrook 108", rate, 100, 0, new Distribution.Fixed(0), 0);
    }

    private static Pass granules(double pounds, @Nullable LocalDate day) {
        Amount rate = new Amount(pounds, FarmUnit.LB);
        return new Pass(2, PassKind.GRANULE, day, "Stonefly 3G", rate, 100, 1.5, new Distribution.Fixed(0), 0);
    }

    private static Boundary outline() {
        List<Point> shell = List.of(
                new Point(-94.700, 41.030),
                new Point(-94.6953, 41.030),
                new Point(-94.6953, 41.0372),
                new Point(-94.6985, 41.0372),
                new Point(-94.700, 41.0355),
                new Point(-94.700, 41.030));
        return new Boundary(List.of(new Boundary.Polygon(shell, List.of())));
    }
}
