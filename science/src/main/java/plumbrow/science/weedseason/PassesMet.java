package plumbrow.science.weedseason;

import java.util.List;

/** The passes of one draw in the order in which seedlings meet them: residuals as they come up, then the others by day. */
final class PassesMet {
    private final List<Pass> passes;
    private final int[] order;
    private final int[] day;
    private final Effect[][] effects;
    private int residuals;
    private int count;

    PassesMet(List<Pass> passes) {
        this.passes = passes;
        this.order = new int[passes.size()];
        this.day = new int[passes.size()];
        this.effects = new Effect[passes.size()][];
    }

    void clear() {
        residuals = 0;
        count = 0;
    }

    /** Adds a pass; of one day, passes stay in the order in which they are added. */
    void add(int pass, int index, Effect[] effect) {
        boolean residual = passes.get(pass) instanceof Residual;
        int place = count++;
        while (place > 0 && comesBefore(residual, index, place - 1)) {
            order[place] = order[place - 1];
            place--;
        }
        order[place] = pass;
        day[pass] = index;
        effects[pass] = effect;
        residuals += residual ? 1 : 0;
    }

    private boolean comesBefore(boolean residual, int index, int place) {
        if (place < residuals) {
            return residual && index < day[order[place]];
        }
        return residual || index < day[order[place]];
    }

    int count() {
        return count;
    }

    /** Passes before this place are residuals. */
    int residuals() {
        return residuals;
    }

    Pass pass(int place) {
        return passes.get(order[place]);
    }

    int day(int place) {
        return day[order[place]];
    }

    Effect effect(int place, int species) {
        return effects[order[place]][species];
    }

    /** What a draw makes of the rating of a pass on a species: times the odds. */
    double oddsTimes(int place, int species, double[][] columns, int draw) {
        Pass pass = pass(place);
        if (pass instanceof Residual residual) {
            return Math.max(0, residual.responses().get(species).oddsTimes().in(columns, draw));
        }
        if (pass instanceof Post post) {
            return Math.max(0, post.responses().get(species).oddsTimes().in(columns, draw));
        }
        return 1;
    }

    /** Whether a biotype does not die of a pass. */
    boolean resisted(int place, Biotype biotype) {
        Pass pass = pass(place);
        if (pass instanceof Residual residual) {
            return biotype.resists().contains(residual.group());
        }
        return pass instanceof Post post && biotype.resists().contains(post.group());
    }
}
