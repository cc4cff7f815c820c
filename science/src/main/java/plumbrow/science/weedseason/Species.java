package plumbrow.science.weedseason;

import java.util.List;

/**
 * A weed of the field.
 *
 * @param densityM2 seedlings of the season if nothing is done [plants/m²]
 * @param shiftDays days by which its flush runs late, negative early; −60 to 60, beyond it is cut
 * @param biotypes shares sum to 1, in every draw where they are drawn
 */
public record Species(
        String name,
        Uncertain densityM2,
        Uncertain shiftDays,
        Emergence emergence,
        Growth growth,
        Competition competition,
        SeedSet seedSet,
        Shade shade,
        Depth depth,
        List<Biotype> biotypes) {
    private static final double ROUNDING = 1e-9;

    public Species {
        biotypes = List.copyOf(biotypes);
        boolean drawn = biotypes.stream().anyMatch(one -> one.share().column() >= 0);
        double sum = biotypes.stream().mapToDouble(one -> one.share().fixed()).sum();
        if (!drawn && Math.abs(sum - 1) > ROUNDING) {
            throw new IllegalArgumentException("biotypes of " + name + " sum to " + sum + "; expected 1");
        }
    }

    public Species withDensity(Uncertain plantsM2) {
        return new Species(name, plantsM2, shiftDays, emergence, growth, competition, seedSet, shade, depth, biotypes);
    }

    public Species withShift(Uncertain days) {
        return new Species(name, densityM2, days, emergence, growth, competition, seedSet, shade, depth, biotypes);
    }

    public Species withBiotypes(List<Biotype> others) {
        return new Species(name, densityM2, shiftDays, emergence, growth, competition, seedSet, shade, depth, others);
    }

    public Species withCompetition(Competition other) {
        return new Species(name, densityM2, shiftDays, emergence, growth, other, seedSet, shade, depth, biotypes);
    }

    /** The same numbers under another name. */
    public Species named(String other) {
        return new Species(
                other, densityM2, shiftDays, emergence, growth, competition, seedSet, shade, depth, biotypes);
    }

    /** Share of its seedlings that would live if nothing were done, its flush on time [-]. */
    public double livingShare(Days days, Crop crop) {
        double[] up = emergence.byDay(days);
        double came = 0;
        double live = 0;
        for (int i = 0; i < up.length; i++) {
            double today = up[i] - (i == 0 ? 0 : up[i - 1]);
            came += today;
            live += today * shade.live(crop, days.first() + i);
        }
        return came == 0 ? 0 : live / came;
    }
}
