package plumbrow.advice.weedseason;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import plumbrow.science.weedseason.RatingOdds;

/** How a column of the engine comes from the draws of the field's inputs. */
sealed interface EngineColumn {
    /** Control that odds are still taken from: all of it would be odds without end. */
    double MOST_CONTROL = .995;

    /** Places of the inputs it comes from. */
    IntStream places();

    /**
     * The engine's column.
     *
     * @param drawn a row of draws for each input, by its place; only those of {@link #places} are read
     */
    double[] of(double[][] drawn);

    /** A number times a factor: days as they are, plants that would stand as seedlings. */
    record Times(int place, double factor) implements EngineColumn {
        @Override
        public IntStream places() {
            return IntStream.of(place);
        }

        @Override
        public double[] of(double[][] drawn) {
            return Arrays.stream(drawn[place]).map(value -> value * factor).toArray();
        }
    }

    /** Odds of control on leaves against those of the likely control. */
    record Odds(int place, double likely) implements EngineColumn {
        private static final double MOST_DRAWN = .999;

        @Override
        public IntStream places() {
            return IntStream.of(place);
        }

        @Override
        public double[] of(double[][] drawn) {
            double usual = odds(likely);
            return Arrays.stream(drawn[place]).map(share -> odds(share) / usual).toArray();
        }

        private static double odds(double share) {
            double held = Math.min(MOST_DRAWN, Math.max(0, share));
            return held / (1 - held);
        }
    }

    /** Odds of control of a residual against those of its likely rating, by the trial in which ratings are taken. */
    record Rated(int place, RatingOdds odds) implements EngineColumn {
        @Override
        public IntStream places() {
            return IntStream.of(place);
        }

        @Override
        public double[] of(double[][] drawn) {
            return Arrays.stream(drawn[place]).map(odds::times).toArray();
        }
    }

    /**
     * Share of the plants that resist some groups and not others: what is known times, for each further group, the share drawn or what
     * it leaves.
     */
    record Plants(double known, List<OfGroup> drawnGroups) implements EngineColumn {
        public Plants {
            drawnGroups = List.copyOf(drawnGroups);
        }

        /** @param resist whether these plants are those that resist it */
        record OfGroup(int place, boolean resist) {}

        @Override
        public IntStream places() {
            return drawnGroups.stream().mapToInt(OfGroup::place);
        }

        @Override
        public double[] of(double[][] drawn) {
            double[] share = new double[drawn[drawnGroups.get(0).place()].length];
            Arrays.fill(share, known);
            for (OfGroup group : drawnGroups) {
                double[] resistant = drawn[group.place()];
                for (int i = 0; i < share.length; i++) {
                    double held = Math.min(1, Math.max(0, resistant[i]));
                    share[i] *= group.resist() ? held : 1 - held;
                }
            }
            return share;
        }
    }
}
