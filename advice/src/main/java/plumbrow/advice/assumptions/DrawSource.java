package plumbrow.advice.assumptions;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import plumbrow.science.chance.StandardNormal;

/**
 * Draws of the assumptions, each quantity from a stream of its own that depends only on the seed and the quantity's name.
 *
 * <p>So a program added, a field dropped or another number of threads changes no draw of anything else, and a quantity
 * that fields share (a price, what a product controls) takes the same draws on all of them.
 *
 * <p>Stratified (Latin hypercube, one dimension each): the distribution's quantiles at (i + ½)/N, in shuffled order. Every draw
 * of N stands for the same share of chance, which lowers the error of a mean well below that of plain draws.
 *
 * <p>Source: McKay, Beckman &amp; Conover 1979, Technometrics 21:239 (value from memory).
 */
public final class DrawSource {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    /** Columns kept, so that a farm of ten thousand fields needs no more room than one of ten: what is let go comes again. */
    private static final int MOST_NUMBERS_KEPT = 2_000_000;

    private static final int FEWEST_KEPT = 64;

    private final int draws;
    private final long seed;
    private final double[] normalStrata;
    private final Map<String, Column> columns;

    /** A source of so many draws from a seed. */
    public DrawSource(int draws, long seed) {
        this.draws = draws;
        this.seed = seed;
        this.normalStrata = StandardNormal.strata(draws);
        int most = Math.max(FEWEST_KEPT, MOST_NUMBERS_KEPT / draws);
        this.columns = Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Column> eldest) {
                return size() > most;
            }
        });
    }

    public int draws() {
        return draws;
    }

    /** The draws of a quantity; the same draws for the same name and distribution, and as a rule the same array. */
    public Column column(String name, Distribution distribution) {
        return kept(name + '\u0000' + distribution, () -> draw(name, distribution));
    }

    private Column kept(String key, Supplier<Column> draw) {
        Column known = columns.get(key);
        if (known != null) {
            return known;
        }
        Column drawn = draw.get();
        Column first = columns.putIfAbsent(key, drawn);
        return first == null ? drawn : first;
    }

    /** The draws of {@code column} put in the order that ties them to {@code leader} by a rank correlation. */
    public Column tied(String name, Distribution distribution, Column leader, double rankCorrelation) {
        Column own = column(name, distribution);
        return kept(
                name + '\u0000' + distribution + '\u0000' + rankCorrelation,
                () -> RankTie.tie(own, leader, rankCorrelation, normalStrata));
    }

    /**
     * A column that leads another.
     *
     * @param ranks for each draw, how many draws of the leader are lower
     * @param rankCorrelation of the two, −1 to 1
     */
    @SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
    public record Tie(int[] ranks, double rankCorrelation) {}

    /**
     * As {@link #tied(String, Distribution, Column, double)}, to several columns that are free of each other, and besides to normals that
     * many fields share, so that the scores of two fields are correlated by {@code between} [0 to 1].
     *
     * @param shared empty where there are none
     */
    public Column tied(String name, Distribution distribution, List<Tie> ties, double[] shared, double between) {
        return RankTie.tie(column(name, distribution), ties, shared, between, normalStrata);
    }

    /**
     * The draws of a column in another year, a share of its spread staying with the field.
     *
     * @param name of the column: where it is shared, so is the field's part of it
     * @param row for each draw, the draw whose year it is
     * @param share for each draw, the part of the spread that stays [0 to 1]
     */
    public Column again(String name, Column own, int[] row, double[] share) {
        return RankTie.again(own, row, share, normals("field's part of " + name), normalStrata);
    }

    /** Standard normal draws of their own, for what is not in the assumptions: the error of a sample, say. */
    public double[] normals(String name) {
        UniformRandomProvider random = random("normals of " + name);
        int[] order = shuffled(random);
        double[] values = new double[draws];
        for (int i = 0; i < draws; i++) {
            values[i] = normalStrata[order[i]];
        }
        return values;
    }

    private Column draw(String name, Distribution distribution) {
        double[] sorted = sorted(distribution);
        int[] ranks = shuffled(random(name));
        double[] values = new double[draws];
        for (int i = 0; i < draws; i++) {
            values[i] = sorted[ranks[i]];
        }
        return new Column(values, ranks);
    }

    private double[] sorted(Distribution distribution) {
        if (distribution instanceof Distribution.Chance chance) {
            double[] sorted = new double[draws];
            for (int i = 0; i < draws; i++) {
                sorted[i] = (i + 0.5) / draws < 1 - chance.chance() ? 0 : 1;
            }
            return sorted;
        }
        return Chances.of(distribution).strata(draws);
    }

    private UniformRandomProvider random(String name) {
        long mixed = seed;
        for (int i = 0; i < name.length(); i++) {
            mixed = (mixed ^ name.charAt(i)) * 0x100000001B3L;
        }
        return RandomSource.XO_SHI_RO_256_PP.create(scrambled(mixed + GOLDEN));
    }

    private static long scrambled(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    private int[] shuffled(UniformRandomProvider random) {
        int[] order = new int[draws];
        for (int i = 0; i < draws; i++) {
            int j = random.nextInt(i + 1);
            order[i] = order[j];
            order[j] = i;
        }
        return order;
    }
}
