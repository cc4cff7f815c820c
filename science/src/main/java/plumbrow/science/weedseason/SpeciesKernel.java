package plumbrow.science.weedseason;

import java.util.Arrays;

/**
 * One species through one draw, all cohorts at once.
 *
 *   left_g = live_g·Π residuals·Π strikes;  load = D·Σ up_g·strength_g·(left_g + Σ strikes killed_g·paid_g)
 *
 * A flush that runs s days late has on each day what the unshifted one had s days before; part days are shared out evenly.
 */
final class SpeciesKernel {
    private static final int MOST_SHIFT_DAYS = 60;

    private final Species species;
    private final Cohorts cohorts;
    private final double[] daily;
    private final int firstDay;
    private final double[] live;
    private final double[] strength;
    private final double[] seeds;

    private final double[] today;
    private final double[] up;
    private final double[] left;
    private final double[] cost;
    private double loadPct;
    private double survivorsM2;
    private double seedsM2;

    SpeciesKernel(WeedSeason season, Species species, Cohorts cohorts) {
        this.species = species;
        this.cohorts = cohorts;
        Days days = season.days();
        double[] byDay = species.emergence().byDay(days);
        daily = new double[byDay.length + 2 * MOST_SHIFT_DAYS + 1];
        for (int i = 0; i < byDay.length; i++) {
            daily[MOST_SHIFT_DAYS + 1 + i] = byDay[i] - (i == 0 ? 0 : byDay[i - 1]);
        }
        int first = 0;
        while (first < byDay.length && byDay[first] == 0) {
            first++;
        }
        firstDay = first;
        int count = cohorts.count();
        live = new double[count];
        strength = new double[count];
        seeds = new double[count];
        for (int g = 0; g < count; g++) {
            int day = days.first() + cohorts.middle(g);
            int after = day - season.crop().emergenceDay();
            live[g] = species.shade().live(season.crop(), day);
            strength[g] = species.competition().load(after);
            seeds[g] = species.seedSet().alone(after);
        }
        today = new double[byDay.length];
        up = new double[count];
        left = new double[count];
        cost = new double[count];
    }

    /** Reckons a draw; the answers are read off afterwards. */
    void run(PassesMet met, int place, double[][] columns, int draw) {
        int from = emerge(met, place, species.shiftDays().in(columns, draw));
        double load = 0;
        double plants = 0;
        double seed = 0;
        for (Biotype biotype : species.biotypes()) {
            double share = biotype.share().in(columns, draw);
            if (share == 0) {
                continue;
            }
            pass(met, place, biotype, columns, draw, from);
            double oneLoad = 0;
            double onePlants = 0;
            double oneSeed = 0;
            for (int g = from; g < up.length; g++) {
                double stand = up[g] * left[g];
                oneLoad += strength[g] * (stand + up[g] * cost[g]);
                onePlants += stand;
                oneSeed += seeds[g] * stand;
            }
            load += share * oneLoad;
            plants += share * onePlants;
            seed += share * oneSeed;
        }
        double density = Math.max(0, species.densityM2().in(columns, draw));
        loadPct = density * load * species.competition().timesIn(columns, draw);
        survivorsM2 = density * plants;
        seedsM2 = density * seed / (1 + species.seedSet().crowdingM2() * survivorsM2);
    }

    /** What comes up in each cohort, as a share of the season's; returns the first cohort in which anything may. */
    private int emerge(PassesMet met, int place, double shiftDays) {
        double shift = Math.min(MOST_SHIFT_DAYS, Math.max(-MOST_SHIFT_DAYS, shiftDays));
        int whole = (int) Math.floor(shift);
        double part = shift - whole;
        int offset = MOST_SHIFT_DAYS + 1 - whole;
        for (int i = 0; i < today.length; i++) {
            today[i] = (1 - part) * daily[offset + i] + part * daily[offset + i - 1];
        }
        int from = cohorts.of(Math.min(today.length - 1, Math.max(0, firstDay + whole)));
        gather();
        for (int p = met.residuals(); p < met.count(); p++) {
            if (met.pass(p) instanceof Tillage tillage && tillage.broughtUpShare() > 0) {
                double[] added = met.effect(p, place).added;
                for (int g = 0; g < up.length; g++) {
                    up[g] += added[g];
                }
                from = Math.min(from, cohorts.of(met.day(p)));
            }
        }
        return from;
    }

    private void gather() {
        if (up.length == today.length) {
            System.arraycopy(today, 0, up, 0, up.length);
            return;
        }
        Arrays.fill(up, 0);
        for (int i = 0; i < today.length; i++) {
            up[cohorts.of(i)] += today[i];
        }
    }

    private void pass(PassesMet met, int place, Biotype biotype, double[][] columns, int draw, int from) {
        System.arraycopy(live, from, left, from, left.length - from);
        Arrays.fill(cost, from, cost.length, 0);
        for (int p = 0; p < met.count(); p++) {
            if (met.resisted(p, biotype)) {
                continue;
            }
            Effect effect = met.effect(p, place);
            double times = met.oddsTimes(p, place, columns, draw);
            if (p < met.residuals()) {
                residual(effect.odds, effect.untouched, times, from);
            } else {
                int to = Math.min(left.length, cohorts.of(met.day(p)) + 1);
                strike(effect.odds, effect.untouched, effect.paid, times, from, to);
            }
        }
    }

    private void residual(double[] odds, double[] untouched, double times, int from) {
        for (int g = from; g < left.length; g++) {
            left[g] *= untouched[g] + (1 - untouched[g]) / (1 + odds[g] * times);
        }
    }

    private void strike(double[] odds, double[] untouched, double[] paid, double times, int from, int to) {
        for (int g = from; g < to; g++) {
            double before = left[g];
            double after = before * (untouched[g] + (1 - untouched[g]) / (1 + odds[g] * times));
            left[g] = after;
            cost[g] += (before - after) * paid[g];
        }
    }

    /** Share of the season's seedlings that came up in a cohort, in the draw last reckoned. */
    double up(int cohort) {
        return up[cohort];
    }

    /** Of a cohort's seedlings the share that is left; of the last biotype. */
    double left(int cohort) {
        return left[cohort];
    }

    /** Load of a cohort's seedlings, each [% per plant/m²], by I itself; of the last biotype. */
    double load(int cohort) {
        return strength[cohort] * (left[cohort] + cost[cohort]);
    }

    double loadPct() {
        return loadPct;
    }

    double survivorsM2() {
        return survivorsM2;
    }

    double seedsM2() {
        return seedsM2;
    }
}
