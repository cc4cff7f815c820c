package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import plumbrow.science.weedseason.Pass;
import plumbrow.science.weedseason.Post;
import plumbrow.science.weedseason.Residual;
import plumbrow.science.weedseason.SeasonTrace;
import plumbrow.science.weedseason.Tillage;
import plumbrow.science.weedseason.WeedSeason;

/**
 * One draw of a season told weed by weed: what came up, what each pass took, what got past it and why, what stood, what seed
 * fell.
 *
 * @param lossPct yield lost to all weeds together [%]
 * @param weeds one for each weed
 */
public record SeasonStory(double lossPct, List<OfWeed> weeds) {
    public SeasonStory {
        weeds = List.copyOf(weeds);
    }

    /**
     * A weed. All counts are plants/m².
     *
     * @param seedlings all that came up or would have
     * @param stopped by residuals as they came up
     * @param died on their own or under the crop
     * @param standing at the end
     * @param loadPct competitive load [%]
     * @param seedsM2 seed shed [1/m²]
     * @param passes what each pass that meets standing weeds did
     * @param residuals what each residual did
     */
    public record OfWeed(
            String name,
            double seedlings,
            double stopped,
            double died,
            double standing,
            double loadPct,
            double seedsM2,
            List<Strike> passes,
            List<Laid> residuals) {
        public OfWeed {
            passes = List.copyOf(passes);
            residuals = List.copyOf(residuals);
        }

        /** Plants that came up after the last pass that meets standing weeds, and lived. */
        public double afterLast() {
            return passes.isEmpty() ? 0 : passes.get(passes.size() - 1).after();
        }
    }

    /**
     * A pass on standing weeds.
     *
     * @param name of the pass
     * @param day of the year on which it was made
     * @param met plants that stood
     * @param killed of them
     * @param after plants that came up later and lived to stand
     * @param tallestCm height of the first that could have come up [cm]
     */
    public record Strike(String name, int day, double met, double killed, double after, double tallestCm) {}

    /**
     * A residual.
     *
     * @param day on which it was laid
     * @param startsAfterDays days until any of it was at work; all days that were left where it never was
     * @param before plants that had come up before it was at work
     * @param weakFrom day of the year from which on it stops less than half of a day's susceptible seedlings; 0 where never
     * @param monthLater its control four weeks after it was laid [%]
     * @param doseMonthLater share of its rate then at work
     */
    public record Laid(
            String name,
            int day,
            int startsAfterDays,
            double before,
            int weakFrom,
            double monthLater,
            double doseMonthLater) {}

    private static final int MONTH_DAYS = 28;
    private static final double WEAK_PCT = 50;

    static SeasonStory of(WeedSeason season, SeasonTrace trace) {
        List<OfWeed> weeds = new ArrayList<>();
        for (int j = 0; j < trace.species().size(); j++) {
            weeds.add(weed(season, trace, j));
        }
        return new SeasonStory(trace.lossPct(), weeds);
    }

    private static OfWeed weed(WeedSeason season, SeasonTrace trace, int weed) {
        SeasonTrace.OfSpecies walk = trace.species().get(weed);
        List<Strike> strikes = new ArrayList<>();
        List<Laid> laid = new ArrayList<>();
        int residual = 0;
        for (int p = 0; p < season.passes().size(); p++) {
            Pass pass = season.passes().get(p);
            int index = trace.made().get(p) - trace.firstDay();
            if (index >= season.days().count()) {
                continue;
            }
            if (pass instanceof Residual soil) {
                double[] control = trace.controls().get(residual).controlPct()[weed];
                double[] dose = trace.controls().get(residual).dose();
                residual++;
                if (soil.responses().get(weed).ed50() < Double.POSITIVE_INFINITY) {
                    laid.add(laid(walk, pass, index, control, dose, trace.firstDay()));
                }
            } else if (pass instanceof Tillage
                    || (pass instanceof Post post && post.responses().get(weed).ed50() < Double.POSITIVE_INFINITY)) {
                strikes.add(strike(season, walk, weed, pass, index, trace.firstDay()));
            }
        }
        strikes.sort(Comparator.comparingInt(Strike::day));
        int last = walk.standing().length - 1;
        return new OfWeed(
                walk.name(),
                walk.brokenDormancy()[last],
                sum(walk.stoppedByResidual(), 0),
                sum(walk.died(), 0),
                walk.standing()[last],
                walk.loadPct(),
                walk.seedsM2(),
                strikes,
                laid);
    }

    private static Strike strike(
            WeedSeason season, SeasonTrace.OfSpecies walk, int weed, Pass pass, int index, int firstDay) {
        double killed = walk.killed()[index];
        double first = 0;
        int up = 0;
        while (up < index && first < .01 * walk.brokenDormancy()[walk.brokenDormancy().length - 1]) {
            first = walk.brokenDormancy()[up];
            up++;
        }
        return new Strike(
                pass.name(),
                firstDay + index,
                walk.standing()[index] + killed,
                killed,
                sum(walk.emerged(), index + 1) - sum(walk.died(), index + 1),
                season.species()
                        .get(weed)
                        .growth()
                        .heightCm(season.days()
                                .airHeatBetween(
                                        up,
                                        index,
                                        season.species().get(weed).growth().baseC())));
    }

    private static Laid laid(
            SeasonTrace.OfSpecies walk, Pass pass, int index, double[] control, double[] dose, int firstDay) {
        int starts = index;
        while (starts < dose.length && dose[starts] == 0) {
            starts++;
        }
        int later = Math.min(dose.length - 1, index + MONTH_DAYS);
        double before = IntStream.range(0, Math.min(starts, walk.emerged().length))
                .mapToDouble(i -> walk.emerged()[i])
                .sum();
        int weak = control.length;
        while (weak > index && control[weak - 1] < WEAK_PCT) {
            weak--;
        }
        return new Laid(
                pass.name(),
                firstDay + index,
                starts - index,
                before,
                weak == control.length ? 0 : firstDay + weak,
                control[later],
                dose[later]);
    }

    private static double sum(double[] values, int from) {
        double sum = 0;
        for (int i = from; i < values.length; i++) {
            sum += values[i];
        }
        return sum;
    }
}
