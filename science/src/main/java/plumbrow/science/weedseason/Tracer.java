package plumbrow.science.weedseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import plumbrow.science.weeds.HyperbolicLoss;

/** Walks one draw of a season day by day, plant by plant as it were, where the kernel takes whole cohorts at once. */
final class Tracer {
    private final WeedSeason season;
    private final double[][] columns;
    private final int draw;
    private final Days days;
    private final int[] made;
    private final List<Integer> byDay;
    private final List<SeasonTrace.ControlLeft> controls = new ArrayList<>();
    private final List<Residual> residuals = new ArrayList<>();
    private final List<ResidualFate> fates = new ArrayList<>();

    Tracer(WeedSeason season, double[][] columns, int draw) {
        this.season = season;
        this.columns = columns;
        this.draw = draw;
        this.days = season.days();
        this.made = season.passes().stream()
                .mapToInt(pass -> pass.day() - days.first() + pass.daysLate().wholeDays(columns, draw))
                .toArray();
        this.byDay = IntStream.range(0, made.length)
                .boxed()
                .filter(p -> made[p] < days.count())
                .sorted(Comparator.comparingInt(p -> made[p]))
                .toList();
    }

    SeasonTrace trace() {
        for (int p = 0; p < made.length; p++) {
            if (season.passes().get(p) instanceof Residual residual && made[p] < days.count()) {
                lay(residual, made[p]);
            }
        }
        List<SeasonTrace.OfSpecies> species = new ArrayList<>();
        double load = 0;
        for (int j = 0; j < season.species().size(); j++) {
            SeasonTrace.OfSpecies one = follow(j);
            species.add(one);
            load += one.loadPct();
        }
        return new SeasonTrace(
                days.first(),
                List.copyOf(species),
                List.copyOf(controls),
                IntStream.of(made).mapToObj(index -> days.first() + index).toList(),
                HyperbolicLoss.ofLoad(load, season.highestLossPct()));
    }

    private void lay(Residual residual, int index) {
        double[] mixed = new double[days.count()];
        for (int p : byDay) {
            if (season.passes().get(p) instanceof Tillage tillage) {
                mixed[made[p]] =
                        Math.max(mixed[made[p]], ResidualFate.mixedCm(tillage, tillage.depthSteps(columns, draw)));
            }
        }
        int rain = residual.rainAfterDays()
                .map(after -> after.wholeDays(columns, draw))
                .orElse(-1);
        ResidualFate fate = ResidualFate.of(new Weathering(days, residual), index, rain, mixed);
        residuals.add(residual);
        fates.add(fate);
        double[][] control = new double[season.species().size()][days.count()];
        for (int j = 0; j < control.length; j++) {
            for (int i = 0; i < days.count(); i++) {
                control[j][i] = 100 * control(residual, fate, j, i);
            }
        }
        controls.add(new SeasonTrace.ControlLeft(residual.name(), fate.dose.clone(), control));
    }

    /** Share of a day's susceptible emergers that a residual kills. */
    private double control(Residual residual, ResidualFate fate, int species, int index) {
        SoilResponse response = residual.responses().get(species);
        Depth depth = season.species().get(species).depth();
        double escapes = depth.belowShare(fate.escapeBelowCm[index]) - depth.belowShare(ResidualFate.LAYER_CM);
        double odds = response.odds(residual.rate() * fate.dose[index])
                * Math.max(0, response.oddsTimes().in(columns, draw));
        return (1 - escapes) * killedAt(odds);
    }

    private static double killedAt(double odds) {
        return odds == Double.POSITIVE_INFINITY ? 1 : odds / (1 + odds);
    }

    private SeasonTrace.OfSpecies follow(int j) {
        Species weed = season.species().get(j);
        double density = Math.max(0, weed.densityM2().in(columns, draw));
        int count = days.count();
        SeasonTrace.OfSpecies walk = new SeasonTrace.OfSpecies(
                weed.name(),
                new double[count],
                new double[count],
                new double[count],
                new double[count],
                new double[count],
                new double[count],
                new double[count],
                0,
                0);
        double load = 0;
        double seeds = 0;
        double plants = 0;
        for (Biotype biotype : weed.biotypes()) {
            Stand stand = new Stand(season, weed, density * biotype.share().in(columns, draw));
            for (int i = 0; i < count; i++) {
                double sprouted = stand.sprouted(i, shift(weed), byDay, made);
                double passed = sprouted;
                for (int r = 0; r < residuals.size(); r++) {
                    if (!biotype.resists().contains(residuals.get(r).group())) {
                        passed *= 1 - control(residuals.get(r), fates.get(r), j, i);
                    }
                }
                double living = passed * weed.shade().live(season.crop(), days.first() + i);
                stand.add(i, living);
                walk.brokenDormancy()[i] += sprouted;
                walk.emerged()[i] += passed;
                walk.stoppedByResidual()[i] += sprouted - passed;
                walk.died()[i] += passed - living;
                for (int p : byDay) {
                    if (made[p] == i) {
                        walk.killed()[i] += strike(season.passes().get(p), j, biotype, stand, i);
                    }
                }
                walk.standing()[i] += stand.plants();
            }
            for (int i = 0; i < count; i++) {
                walk.left()[i] += stand.left(i);
            }
            load += stand.loadPct();
            plants += stand.plants();
            seeds += stand.seeds();
        }
        for (int i = 1; i < count; i++) {
            walk.brokenDormancy()[i] += walk.brokenDormancy()[i - 1];
        }
        return new SeasonTrace.OfSpecies(
                walk.name(),
                walk.emerged(),
                walk.stoppedByResidual(),
                walk.died(),
                walk.killed(),
                walk.standing(),
                walk.brokenDormancy(),
                walk.left(),
                load * weed.competition().timesIn(columns, draw),
                seeds / (1 + weed.seedSet().crowdingM2() * plants));
    }

    private double shift(Species weed) {
        return weed.shiftDays().in(columns, draw);
    }

    private double strike(Pass pass, int j, Biotype biotype, Stand stand, int index) {
        if (pass instanceof Tillage tillage) {
            return stand.strike(index, tillage::killed);
        }
        if (pass instanceof Post post && !biotype.resists().contains(post.group())) {
            LeafResponse response = post.responses().get(j);
            double times = Math.max(0, response.oddsTimes().in(columns, draw));
            return stand.strike(
                    index,
                    heightCm -> (1 - post.missedShare()) * killedAt(times * response.odds(post.rate(), heightCm)));
        }
        return 0;
    }
}
