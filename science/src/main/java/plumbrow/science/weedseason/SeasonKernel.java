package plumbrow.science.weedseason;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumbrow.science.weeds.HyperbolicLoss;

/**
 * The weed season over many draws. For one thread: it keeps the effects of passes that were made on a day before, as days late,
 * days to rain and steps of the floor's depth are whole and come again from draw to draw.
 */
final class SeasonKernel {
    private static final int DAY_BITS = 9;
    private static final int DEPTH_BITS = 6;

    private final WeedSeason season;
    private final double[][] columns;
    private final Effects effects;
    private final SpeciesKernel[] species;
    private final PassesMet met;
    private final List<Map<Long, Map<Long, Effect[]>>> known;
    private final int[] made;
    private final int[] depths;
    private final double highestLossPct;

    SeasonKernel(WeedSeason season, double[][] columns, Cohorts cohorts) {
        this.season = season;
        this.columns = columns;
        this.effects = new Effects(season, cohorts);
        this.species = season.species().stream()
                .map(one -> new SpeciesKernel(season, one, cohorts))
                .toArray(SpeciesKernel[]::new);
        this.met = new PassesMet(season.passes());
        this.known = season.passes().stream()
                .<Map<Long, Map<Long, Effect[]>>>map(pass -> new HashMap<>())
                .toList();
        this.made = new int[season.passes().size()];
        this.depths = new int[season.passes().size()];
        this.highestLossPct = season.highestLossPct();
    }

    /** Fills in the draws from one up to, but not with, another. */
    void run(int from, int to, SeasonLoss loss) {
        for (int draw = from; draw < to; draw++) {
            meet(draw);
            double load = 0;
            for (int j = 0; j < species.length; j++) {
                species[j].run(met, j, columns, draw);
                loss.loadPct()[j][draw] = species[j].loadPct();
                load += species[j].loadPct();
                loss.survivorsM2()[j][draw] = species[j].survivorsM2();
                loss.seedsM2()[j][draw] = species[j].seedsM2();
            }
            loss.lossPct()[draw] = HyperbolicLoss.ofLoad(load, highestLossPct);
        }
    }

    /** Reckons one species of one draw and lets its cohorts be looked at. */
    SpeciesKernel reckon(int draw, int place) {
        meet(draw);
        species[place].run(met, place, columns, draw);
        return species[place];
    }

    /** The passes of a draw, on the days on which they are really made. */
    private void meet(int draw) {
        List<Pass> passes = season.passes();
        long tilled = 0;
        long deep = 0;
        for (int p = 0; p < made.length; p++) {
            Pass pass = passes.get(p);
            made[p] = pass.day()
                    - season.days().first()
                    + Math.min(season.days().count(), pass.daysLate().wholeDays(columns, draw));
            if (pass instanceof Tillage tillage) {
                depths[p] = tillage.depthSteps(columns, draw);
                deep = (deep << DEPTH_BITS) + depths[p];
                tilled = (tilled << DAY_BITS) + Math.min(made[p], season.days().count());
            }
        }
        met.clear();
        for (int p = 0; p < made.length; p++) {
            if (made[p] < season.days().count()) {
                met.add(p, made[p], effectsOf(p, draw, tilled, deep));
            }
        }
    }

    private Effect[] effectsOf(int p, int draw, long tilled, long deep) {
        int index = made[p];
        Pass pass = season.passes().get(p);
        int rain = pass instanceof Residual residual ? rainAfter(residual, draw) : -1;
        long key = index;
        if (pass instanceof Residual) {
            key += ((tilled << DAY_BITS) + rain + 1) << DAY_BITS;
        }
        Map<Long, Effect[]> there =
                known.get(p).computeIfAbsent(pass instanceof Residual ? deep : 0, depth -> new HashMap<>());
        Effect[] found = there.get(key);
        if (found == null) {
            found = work(pass, index, rain);
            there.put(key, found);
        }
        return found;
    }

    private int rainAfter(Residual residual, int draw) {
        return residual.rainAfterDays()
                .map(days -> Math.min(season.days().count(), days.wholeDays(columns, draw)))
                .orElse(-1);
    }

    private Effect[] work(Pass pass, int index, int rainAfter) {
        if (pass instanceof Residual residual) {
            return effects.of(residual, index, rainAfter, mixedCm());
        }
        return pass instanceof Post post ? effects.of(post, index) : effects.of((Tillage) pass, index);
    }

    private double[] mixedCm() {
        double[] mixed = new double[season.days().count()];
        for (int p = 0; p < made.length; p++) {
            if (season.passes().get(p) instanceof Tillage tillage && made[p] < mixed.length) {
                mixed[made[p]] = Math.max(mixed[made[p]], ResidualFate.mixedCm(tillage, depths[p]));
            }
        }
        return mixed;
    }
}
