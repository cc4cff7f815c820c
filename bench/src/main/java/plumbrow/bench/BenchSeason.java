package plumbrow.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * An invented season of as many corn fields as asked for, each with two insects, two weeds, a doubted trait, a planned
 * scouting sample and four, five or six programs (five on the average). The same every time.
 */
public final class BenchSeason {
    static final String ROOTWORM = "corn rootworm";
    static final String BORER = "European corn borer";
    static final String WATERHEMP = "waterhemp";
    static final String FOXTAIL = "giant foxtail";
    private static final String SOURCE = "invented for the benchmark";
    private static final int FEWEST_PROGRAMS = 4;

    private final SplittableRandom random = new SplittableRandom(20_260_401);
    private final List<Field> fields = new ArrayList<>();
    private final List<InsectPressure> insects = new ArrayList<>();
    private final List<TraitDoubt> doubts = new ArrayList<>();
    private final List<WeedPressure> weeds = new ArrayList<>();
    private final List<Program> programs = new ArrayList<>();
    private final List<AssumptionLine> assumptions = new ArrayList<>();

    private BenchSeason() {}

    /** A season of {@code fields} fields; the first field of every season has six programs. */
    public static Season of(int fields) {
        return new BenchSeason().build(fields);
    }

    /** A season of {@code fields} fields, each with one program of ten passes: for gates, not for weighing. */
    static Season large(int fields) {
        Season weighed = of(fields);
        List<Program> tenPasses = weighed.fields().stream()
                .map(field -> BenchPrograms.ofTenPasses(field.name()))
                .toList();
        return new Season(
                weighed.year(),
                weighed.asOf(),
                weighed.adviser(),
                weighed.farms(),
                weighed.fields(),
                weighed.history(),
                weighed.shelf(),
                weighed.pests(),
                tenPasses,
                weighed.assumptions(),
                weighed.ground(),
                BenchLabels.work(tenPasses));
    }

    private Season build(int count) {
        forCorn(AssumptionQuantity.PRICE, new Distribution.Lognormal(4.4, 0.25, 0.6));
        forCorn(AssumptionQuantity.HANDLING, new Distribution.Pert(0.15, 0.25, 0.4));
        forCorn(AssumptionQuantity.GENETIC_LAG, new Distribution.Pert(0.5, 1.2, 2));
        forCorn(AssumptionQuantity.DELAY_LOSS, new Distribution.Pert(0.2, 0.6, 1.2));
        forCorn(AssumptionQuantity.PRICE_YIELD_TIE, new Distribution.Fixed(-0.3));
        for (int i = 0; i < count; i++) {
            int most = BenchPrograms.MOST;
            field("Field " + (i + 1), most - i % (most - FEWEST_PROGRAMS + 1));
        }
        return new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "A. Adviser",
                List.of(new Farm("Home", "A grower", 0.9, 0.95)),
                fields,
                List.of(),
                BenchShelf.shelf(),
                new Pests(insects, doubts, weeds),
                programs,
                assumptions,
                BenchLabels.around(fields),
                BenchLabels.work(programs));
    }

    private void forCorn(AssumptionQuantity quantity, Distribution distribution) {
        assumptions.add(new AssumptionLine(Crop.CORN, null, quantity, distribution, SOURCE));
    }

    private void field(String name, int programCount) {
        fields.add(new Field(
                name, "Home", 60 + random.nextInt(100), null, "IA", "Adams", Crop.CORN, Texture.LOAM, 3.0, 6.5, 2.0));
        assumptions.add(new AssumptionLine(
                null,
                name,
                AssumptionQuantity.YIELD,
                new Distribution.Weibull(170 + 40 * random.nextDouble(), 0.18),
                SOURCE));
        insect(
                name,
                ROOTWORM,
                InsectPressure.Measure.NODE_INJURY,
                pert(0.1, 2.6),
                new Distribution.Pert(10, 15, 18),
                0.1);
        insect(name, BORER, InsectPressure.Measure.LARVAE_PER_PLANT, pert(0, 2), new Distribution.Pert(2, 4, 6), 0);
        doubts.add(new TraitDoubt(name, "Cry3", ROOTWORM, 0.1 + 0.4 * random.nextDouble(), 0.2, SOURCE));
        weeds.add(new WeedPressure(name, WATERHEMP, pert(1, 40), 3, 60, SOURCE));
        weeds.add(new WeedPressure(name, FOXTAIL, pert(1, 60), 1, 40, SOURCE));
        programs.addAll(BenchPrograms.of(name).subList(0, programCount));
    }

    private void insect(
            String field,
            String insect,
            InsectPressure.Measure measure,
            Distribution pressure,
            Distribution loss,
            double neighbours) {
        ScoutingSample sample = insect.equals(ROOTWORM) ? new ScoutingSample(10, 0.6, 90) : null;
        insects.add(new InsectPressure(field, insect, measure, pressure, loss, neighbours, sample, null, SOURCE));
    }

    private Distribution pert(double low, double high) {
        return new Distribution.Pert(low, low + (high - low) * random.nextDouble() / 2, high);
    }
}
