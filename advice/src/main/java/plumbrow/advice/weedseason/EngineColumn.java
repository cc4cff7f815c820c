package plumbrow.advice.weedseason;

import plumbrow.science.weedseason.RatingOdds;

/** How a column of the engine comes from the draws of an input. */
sealed interface EngineColumn {
    /** Control that odds are still taken from: all of it would be odds without end. */
    double MOST_CONTROL = .995;

    /** Place of the input it comes from. */
    int place();

    /** Its value where the input has this one. */
    double of(double drawn);

    /** A number times a factor: days as they are, plants that would stand as seedlings. */
    record Times(int place, double factor) implements EngineColumn {
        @Override
        public double of(double drawn) {
            return drawn * factor;
        }
    }

    /** Odds of control against those of the likely control. */
    record Odds(int place, double likely) implements EngineColumn {
        @Override
        public double of(double drawn) {
            return odds(drawn) / odds(likely);
        }

        private static double odds(double share) {
            double held = Math.min(MOST_CONTROL, Math.max(0, share));
            return held / (1 - held);
        }
    }

    /** Odds of control of a residual against those of its likely rating, by the trial in which ratings are taken. */
    record Rated(int place, RatingOdds odds) implements EngineColumn {
        @Override
        public double of(double drawn) {
            return odds.times(drawn);
        }
    }

    /** The engine's column for an input's draws. */
    default double[] of(double[] drawn) {
        double[] values = new double[drawn.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = of(drawn[i]);
        }
        return values;
    }
}
