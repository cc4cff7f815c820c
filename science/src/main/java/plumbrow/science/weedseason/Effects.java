package plumbrow.science.weedseason;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Works out the {@link Effect} of passes by the day on which they are really made. */
final class Effects {
    private final WeedSeason season;
    private final Cohorts cohorts;
    private final double[][] airHeat;
    private final double[] nothing;
    private final Map<Residual, Weathering> weathering = new HashMap<>();

    Effects(WeedSeason season, Cohorts cohorts) {
        this.season = season;
        this.cohorts = cohorts;
        this.airHeat = season.species().stream()
                .map(one -> season.days().airHeat(one.growth().baseC()))
                .toArray(double[][]::new);
        this.nothing = new double[cohorts.count()];
    }

    /** Of a residual, for each species. */
    Effect[] of(Residual residual, int applied, int rainAfter, double[] mixedCm) {
        Weathering weather = weathering.computeIfAbsent(residual, laid -> new Weathering(season.days(), laid));
        ResidualFate fate = ResidualFate.of(weather, applied, rainAfter, mixedCm);
        List<Species> species = season.species();
        Effect[] effects = new Effect[species.size()];
        for (int j = 0; j < effects.length; j++) {
            Depth depth = species.get(j).depth();
            SoilResponse response = residual.responses().get(j);
            double[] odds = new double[cohorts.count()];
            for (int g = cohorts.of(applied); g < odds.length; g++) {
                odds[g] = finite(response.odds(residual.rate() * fate.dose[cohorts.middle(g)]));
            }
            effects[j] = new Effect(odds, escaping(fate, depth), nothing, nothing);
        }
        return effects;
    }

    private double[] escaping(ResidualFate fate, Depth depth) {
        if (!fate.lets()) {
            return nothing;
        }
        double reached = depth.belowShare(ResidualFate.LAYER_CM);
        double[] escaping = new double[cohorts.count()];
        for (int g = 0; g < escaping.length; g++) {
            escaping[g] = depth.belowShare(fate.escapeBelowCm[cohorts.middle(g)]) - reached;
        }
        return escaping;
    }

    /** Of a spray on standing weeds, for each species. */
    Effect[] of(Post post, int index) {
        return strike(index, (j, heightCm) -> post.responses().get(j).odds(post.rate(), heightCm), post.missedShare());
    }

    /** Of tillage, for each species. */
    Effect[] of(Tillage tillage, int index) {
        Effect[] effects = strike(index, (j, heightCm) -> oddsOf(tillage.killed(heightCm)), 0);
        for (int j = 0; j < effects.length; j++) {
            double[] up = season.species().get(j).emergence().broughtUp(season.days(), index);
            double[] added = new double[cohorts.count()];
            double before = 0;
            for (int g = 0; g < added.length; g++) {
                double now = up[cohorts.last(g)];
                added[g] = tillage.broughtUpShare() * (now - before);
                before = now;
            }
            effects[j] = new Effect(effects[j].odds, effects[j].untouched, effects[j].paid, added);
        }
        return effects;
    }

    private interface Odds {
        double of(int species, double heightCm);
    }

    /** What has emerged by the day of the pass, that day's own seedlings too, is met at its height. */
    private Effect[] strike(int index, Odds odds, double missed) {
        List<Species> species = season.species();
        Effect[] effects = new Effect[species.size()];
        int crop = season.crop().emergenceDay() - season.days().first();
        double[] untouched = new double[cohorts.count()];
        Arrays.fill(untouched, missed);
        for (int j = 0; j < effects.length; j++) {
            double[] killed = new double[cohorts.count()];
            double[] paid = new double[cohorts.count()];
            for (int g = 0; g < killed.length && cohorts.middle(g) <= index; g++) {
                int up = cohorts.middle(g);
                double heat = airHeat[j][index] - airHeat[j][up];
                killed[g] = finite(odds.of(j, species.get(j).growth().heightCm(heat)));
                paid[g] = species.get(j).competition().costBy(index - Math.max(crop, up));
            }
            effects[j] = new Effect(killed, untouched, paid, nothing);
        }
        return effects;
    }

    private static double oddsOf(double share) {
        return share / (1 - share);
    }

    /** Perfect control as odds that a doubt of 0 still takes away. */
    private static double finite(double odds) {
        return Math.min(odds, Double.MAX_VALUE);
    }
}
