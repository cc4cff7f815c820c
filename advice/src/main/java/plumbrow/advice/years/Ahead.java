package plumbrow.advice.years;

import static plumbrow.science.figure.Numbers.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.EqualRule;
import plumbrow.advice.weighing.ProgramYears;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.years.RotationAhead.InsectAhead;
import plumbrow.advice.years.RotationAhead.Share;
import plumbrow.advice.years.RotationAhead.WeedAhead;
import plumbrow.advice.years.RotationAhead.YearMargin;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.figure.Step;
import plumbrow.science.figure.Working;
import plumbrow.science.years.PresentValue;

/**
 * Looks ahead over several seasons of a field, all rotations on the same draws.
 *
 * <p>Same season, options and rotations give the same answer to the bit.
 */
public final class Ahead {
    private final Season season;
    private final Field field;
    private final YearsOptions options;
    private final List<Rotation> rotations;
    private final Map<Rotation.Step, ProgramYears> ready = new HashMap<>();
    private final List<ProgramYears> programs = new ArrayList<>();
    private final YearDraws draws;
    private final FieldLook look;

    private Ahead(Season season, Field field, List<Rotation> rotations, YearsOptions options) {
        this.season = season;
        this.field = field;
        this.options = options;
        this.rotations = rotations;
        DrawSource source = new DrawSource(options.draws(), options.seed());
        Set<Rotation.Step> steps = new LinkedHashSet<>();
        rotations.forEach(rotation -> steps.addAll(rotation.steps()));
        for (Rotation.Step step : steps) {
            Season seen = StandIn.season(season, field, step);
            ProgramYears program = ProgramYears.of(
                    seen, seen.field(field.name()).orElseThrow(), step.program(), options.weighing(), source);
            ready.put(step, program);
            programs.add(program);
        }
        draws = new YearDraws(source, options.seed(), options.seasons());
        look = new FieldLook(season, field, programs, options, draws);
    }

    /** Every program of the field repeated, each a rotation of its own. */
    public static List<Rotation> repeated(Season season, Field field) {
        return season.programs(field.name()).stream().map(Rotation::repeated).toList();
    }

    /**
     * The answer for a field.
     *
     * @throws SeasonGapException where the season lacks what it needs
     */
    public static YearsAhead of(Season season, Field field, List<Rotation> rotations, YearsOptions options) {
        if (rotations.isEmpty()) {
            throw new SeasonGapException(
                    field.name() + " can't be looked at ahead: it has no program; enter at least one.");
        }
        return new Ahead(season, field, rotations, options).answer();
    }

    private YearsAhead answer() {
        List<FieldLook.Run> runs =
                rotations.stream().map(rotation -> look.run(years(rotation))).toList();
        List<double[]> values =
                runs.stream().map(run -> presentValue(run.margins())).toList();
        double[] most = chancesMost(values);
        List<RotationAhead> all = new ArrayList<>();
        List<NowAndLater.Looked> looked = new ArrayList<>();
        for (int i = 0; i < rotations.size(); i++) {
            RotationAhead one = told(rotations.get(i), runs.get(i), values.get(i), most[i]);
            all.add(one);
            looked.add(new NowAndLater.Looked(
                    one.name(),
                    one.standing().advisable(),
                    rotations.get(i).repeats(field),
                    one.presentValueUsdPerAcre(),
                    one.perYearUsdPerAcre(),
                    runs.get(i)));
        }
        Deciding deciding = Deciding.of(draws.taken(), difference(looked, values));
        all.sort(Comparator.comparingDouble((RotationAhead one) -> -one.presentValueUsdPerAcre()));
        @Nullable
        String best = all.stream()
                .filter(one -> one.standing().advisable())
                .map(RotationAhead::name)
                .findFirst()
                .orElse(null);
        AheadWords words = new AheadWords(season, field, options, look, rotations);
        return new YearsAhead(
                field,
                season.farm(field.farm()).map(Farm::grower).orElse(""),
                season.year(),
                options,
                all,
                best,
                words.sentence(all, best, aboutEqual(looked, values, best)),
                NowAndLater.says(looked, options.seasons(), season.year()),
                deciding.says(),
                deciding.assumptions(),
                words.cautions(programs));
    }

    /** Rotations that may be advised and are about equal to the best, a year [$/ac]; all that differ by nothing are among them. */
    private List<String> aboutEqual(List<NowAndLater.Looked> looked, List<double[]> values, @Nullable String best) {
        List<String> equals = new ArrayList<>();
        for (int i = 0; i < looked.size(); i++) {
            if (looked.get(i).name().equals(best)) {
                for (int j = 0; j < looked.size(); j++) {
                    double gain = looked.get(i).perYear() - looked.get(j).perYear();
                    if (j != i
                            && looked.get(j).advisable()
                            && !EqualRule.DEFAULT.ahead(
                                    gain, EqualRule.DEFAULT.leads(values.get(i), values.get(j), dollarAYear()))) {
                        equals.add(looked.get(j).name());
                    }
                }
            }
        }
        return equals;
    }

    /** What a dollar a year comes to over all seasons in today's money [$]. */
    private double dollarAYear() {
        return 1 / PresentValue.perYear(1, options.discountPct() / 100, options.seasons());
    }

    /** What the best earns over the next, those that may be advised first; what the only one earns. */
    private static double[] difference(List<NowAndLater.Looked> looked, List<double[]> values) {
        List<Integer> order = Stream.iterate(0, i -> i + 1)
                .limit(looked.size())
                .sorted(Comparator.comparing((Integer i) -> !looked.get(i).advisable())
                        .thenComparing(i -> -looked.get(i).presentValue()))
                .toList();
        double[] difference = values.get(order.get(0)).clone();
        for (int k = 0; k < difference.length && order.size() > 1; k++) {
            difference[k] -= values.get(order.get(1))[k];
        }
        return difference;
    }

    private List<@Nullable ProgramYears> years(Rotation rotation) {
        List<@Nullable ProgramYears> years = new ArrayList<>();
        for (int y = 0; y < options.seasons(); y++) {
            years.add(ready.get(rotation.step(y)));
        }
        return years;
    }

    private double[] presentValue(double[][] margins) {
        double[] value = new double[margins[0].length];
        for (int y = 0; y < margins.length; y++) {
            double factor = PresentValue.factor(options.discountPct() / 100, y);
            for (int k = 0; k < value.length; k++) {
                value[k] += factor * margins[y][k];
            }
        }
        return value;
    }

    private static double[] chancesMost(List<double[]> values) {
        double[] chances = new double[values.size()];
        int draws = values.get(0).length;
        for (int k = 0; k < draws; k++) {
            int draw = k;
            double most =
                    values.stream().mapToDouble(value -> value[draw]).max().orElseThrow();
            long holders = values.stream().filter(value -> value[draw] == most).count();
            for (int i = 0; i < chances.length; i++) {
                chances[i] += values.get(i)[k] == most ? 1.0 / holders : 0;
            }
        }
        return Arrays.stream(chances).map(sum -> Math.min(1, sum / draws)).toArray();
    }

    private RotationAhead told(Rotation rotation, FieldLook.Run run, double[] value, double chanceMost) {
        int[] first = new int[options.draws()];
        Arrays.fill(first, options.seasons());
        List<WeedAhead> weeds = new ArrayList<>();
        for (int j = 0; j < run.weeds().size(); j++) {
            WeedRun weed = run.weeds().get(j);
            int[] failed = Failures.ofWeed(weed);
            first = Failures.earlier(first, failed);
            weeds.add(new WeedAhead(
                    weed.weed(),
                    weed.followed(),
                    bands(weed.seedsM2()),
                    shares(weed.groups(), weed.resistant()),
                    failure("Control of " + weed.weed(), failed),
                    AheadWords.seedSource(look.weeds().get(j))));
        }
        List<InsectAhead> insects = new ArrayList<>();
        for (InsectRun insect : run.insects()) {
            int[] failed = Failures.ofTrait(insect);
            first = Failures.earlier(first, failed);
            insects.add(new InsectAhead(
                    insect.insect(),
                    uses(insect),
                    shares(insect.groups(), insect.frequency()),
                    uses(insect)
                            ? failure("The trait against " + insect.insect(), failed)
                            : Failures.none("No trait against " + insect.insect() + " is used.", options.seasons())));
        }
        List<YearMargin> years = margins(rotation, run.margins());
        Checked checked = Checked.of(season, field, rotation);
        double mean = SortedDraws.mean(value);
        return new RotationAhead(
                rotation.words(field),
                checked.standing(),
                checked.findings(),
                mean,
                band(value),
                PresentValue.perYear(mean, options.discountPct() / 100, options.seasons()),
                chanceMost,
                years,
                weeds,
                insects,
                weeds.isEmpty() && insects.stream().noneMatch(InsectAhead::used)
                        ? Failures.none("No weed and no trait is looked at.", options.seasons())
                        : failure("Control of a weed or by a trait", first),
                working(years, mean));
    }

    private static boolean uses(InsectRun run) {
        for (boolean aimed : run.aimed()) {
            if (aimed) {
                return true;
            }
        }
        return false;
    }

    private Failure failure(String what, int[] first) {
        return Failures.told(what, first, options.seasons(), season.year());
    }

    private List<YearMargin> margins(Rotation rotation, double[][] margins) {
        List<YearMargin> years = new ArrayList<>();
        for (int y = 0; y < margins.length; y++) {
            Rotation.Step step = rotation.step(y);
            years.add(new YearMargin(
                    season.year() + y,
                    Objects.requireNonNull(ready.get(step)).field().crop().word(),
                    step.program(),
                    SortedDraws.mean(margins[y]),
                    band(margins[y])));
        }
        return years;
    }

    private List<Step> working(List<YearMargin> years, double mean) {
        Working working = new Working();
        List<String> terms = new ArrayList<>();
        for (int y = 0; y < years.size(); y++) {
            YearMargin year = years.get(y);
            double now = working.step(
                    year.year() + ", " + year.crop() + ", " + year.program(),
                    "mean margin " + plain(year.meanMarginUsdPerAcre()) + " $/ac ÷ (1 + " + plain(options.discountPct())
                            + " %)^" + y,
                    year.meanMarginUsdPerAcre() * PresentValue.factor(options.discountPct() / 100, y),
                    "$/ac of " + season.year());
            terms.add(plain(now));
        }
        working.step("present value", String.join(" + ", terms), mean, "$/ac");
        working.step(
                "the same each year",
                plain(mean) + " ÷ (1 + … + 1 ÷ (1 + " + plain(options.discountPct()) + " %)^" + (years.size() - 1)
                        + ")",
                PresentValue.perYear(mean, options.discountPct() / 100, years.size()),
                "$/ac");
        return working.steps();
    }

    private static List<Share> shares(List<String> groups, double[][][] values) {
        return Stream.iterate(0, l -> l + 1)
                .limit(groups.size())
                .map(l -> new Share(groups.get(l), bands(values[l])))
                .toList();
    }

    private static List<Band> bands(double[][] byYear) {
        return Arrays.stream(byYear).map(Ahead::band).toList();
    }

    private static Band band(double[] draws) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        return new Band(
                SortedDraws.quantile(sorted, .1), SortedDraws.quantile(sorted, .5), SortedDraws.quantile(sorted, .9));
    }
}
