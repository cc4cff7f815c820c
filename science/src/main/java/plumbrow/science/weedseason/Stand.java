package plumbrow.science.weedseason;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Plants of one biotype on a square metre, by the day on which they came up, as a season goes by. */
final class Stand {
    private final WeedSeason season;
    private final Species weed;
    private final double densityM2;
    private final double[] up;
    private final double[] airHeat;
    private final double[] plants;
    private double removedLoad;

    Stand(WeedSeason season, Species weed, double densityM2) {
        this.season = season;
        this.weed = weed;
        this.densityM2 = densityM2;
        this.up = weed.emergence().byDay(season.days());
        this.airHeat = season.days().airHeat(weed.growth().baseC());
        this.plants = new double[season.days().count()];
    }

    /** What germinates on a day: of the season's flush, and of seed that tillage brought up. */
    double sprouted(int index, double shiftDays, List<Integer> byDay, int[] made) {
        double share = upBy(index - shiftDays) - upBy(index - 1 - shiftDays);
        for (int p : byDay) {
            if (season.passes().get(p) instanceof Tillage tillage) {
                double[] more = weed.emergence().broughtUp(season.days(), made[p]);
                share += tillage.broughtUpShare() * (more[index] - (index == 0 ? 0 : more[index - 1]));
            }
        }
        return densityM2 * share;
    }

    private double upBy(double time) {
        int day = (int) Math.floor(time);
        double part = time - day;
        return (1 - part) * upBy(day) + part * upBy(day + 1);
    }

    private double upBy(int day) {
        return day < 0 ? 0 : up[Math.min(up.length - 1, day)];
    }

    void add(int index, double plantsM2) {
        plants[index] += plantsM2;
    }

    /** Kills by height what stands; returns the plants killed. */
    double strike(int index, DoubleUnaryOperator killedShareAtCm) {
        int crop = season.crop().emergenceDay() - season.days().first();
        double all = 0;
        for (int i = 0; i <= index; i++) {
            double height = weed.growth().heightCm(airHeat[index] - airHeat[i]);
            double killed = plants[i] * killedShareAtCm.applyAsDouble(height);
            plants[i] -= killed;
            all += killed;
            removedLoad += killed
                    * weed.competition().load(i - crop)
                    * weed.competition().costBy(index - Math.max(crop, i));
        }
        return all;
    }

    /** Plants that came up on a day and still stand. */
    double left(int index) {
        return plants[index];
    }

    double plants() {
        double sum = 0;
        for (double one : plants) {
            sum += one;
        }
        return sum;
    }

    double loadPct() {
        int crop = season.crop().emergenceDay() - season.days().first();
        double load = removedLoad;
        for (int i = 0; i < plants.length; i++) {
            load += plants[i] * weed.competition().load(i - crop);
        }
        return load;
    }

    double seeds() {
        int crop = season.crop().emergenceDay() - season.days().first();
        double seeds = 0;
        for (int i = 0; i < plants.length; i++) {
            seeds += plants[i] * weed.seedSet().alone(i - crop);
        }
        return seeds;
    }
}
