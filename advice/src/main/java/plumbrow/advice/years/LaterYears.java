package plumbrow.advice.years;

import static plumbrow.science.figure.Numbers.plain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.LaterCost;
import plumbrow.advice.weighing.ProgramYears;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.science.years.PresentValue;

/**
 * What one season of a program costs in the years after it.
 *
 *   later[c,k] = Σ over years after this one of (margin if the field stood as it was found − margin as the program leaves it)
 *                · 1/(1 + i)^year
 *
 * <p>In both, the baseline follows in every later year: what differs is the seed in the soil and the resistance that the one
 * season of the program leaves. A program that leaves the field better than it was found has a cost below 0.
 *
 * @param seasons this one and those after it that count, 2 to 20
 * @param discountPct by which a dollar loses worth in a year [%]
 */
public record LaterYears(int seasons, double discountPct) implements LaterCost {

    /** Checks both as {@link YearsOptions} does. */
    public LaterYears {
        YearsOptions.DEFAULT.withSeasons(seasons).withDiscountPct(discountPct);
        if (seasons < 2) {
            throw new IllegalArgumentException("the number of seasons is " + seasons + "; expected 2 to 20");
        }
    }

    @Override
    public String says() {
        return "Margins count what a program leaves for the " + (seasons - 1)
                + (seasons == 2 ? " season" : " seasons") + " after this one: seed in the soil and resistance, with the"
                + " baseline following and money discounted at " + plain(discountPct)
                + " % a year. What turns the order is"
                + " calculated with that cost held as it is.";
    }

    @Override
    public double[][] of(Season season, Field field, WeighingOptions weighing) {
        DrawSource source = new DrawSource(weighing.draws(), weighing.seed());
        List<ProgramYears> programs = new ArrayList<>();
        @Nullable ProgramYears baseline = null;
        for (Program program : season.programs(field.name())) {
            ProgramYears one = ProgramYears.of(season, field, program.name(), weighing, source);
            programs.add(one);
            baseline = program.baseline() ? one : baseline;
        }
        if (baseline == null) {
            throw new SeasonGapException(field.name() + " can't be looked at ahead: it has no baseline.");
        }
        YearsOptions options = YearsOptions.DEFAULT.withSeasons(seasons).withDiscountPct(discountPct);
        FieldLook look =
                new FieldLook(season, field, programs, options, new YearDraws(source, weighing.seed(), seasons));
        double[] found = later(look.run(years(null, baseline)).margins());
        double[][] cost = new double[programs.size()][];
        for (int c = 0; c < cost.length; c++) {
            double[] left = later(look.run(years(programs.get(c), baseline)).margins());
            cost[c] = new double[found.length];
            for (int k = 0; k < found.length; k++) {
                cost[c][k] = found[k] - left[k];
            }
        }
        return cost;
    }

    private List<@Nullable ProgramYears> years(@Nullable ProgramYears first, ProgramYears after) {
        List<@Nullable ProgramYears> years = new ArrayList<>(Collections.nCopies(seasons, after));
        years.set(0, first);
        return years;
    }

    private double[] later(double[][] margins) {
        double[] sum = new double[margins[0].length];
        for (int y = 1; y < margins.length; y++) {
            double factor = PresentValue.factor(discountPct / 100, y);
            for (int k = 0; k < sum.length; k++) {
                sum[k] += factor * margins[y][k];
            }
        }
        return sum;
    }
}
