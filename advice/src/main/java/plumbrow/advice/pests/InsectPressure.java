package plumbrow.advice.pests;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;

/**
 * How hard an insect presses on a field, untreated and without a trait.
 *
 * @param insect its name, such as "corn rootworm"
 * @param measure how pressure is counted, which decides the loss
 * @param pressure untreated pressure in that measure
 * @param lossPerUnitPct yield lost per unit of pressure [%]
 * @param neighbourShare share of an unprotected plant's loss that protected neighbours make up [0 to 1]
 * @param sample a scouting sample that could be taken, where one is planned
 * @param scouted when it was last looked at, where it was
 */
public record InsectPressure(
        String field,
        String insect,
        Measure measure,
        Distribution pressure,
        Distribution lossPerUnitPct,
        double neighbourShare,
        @Nullable ScoutingSample sample,
        @Nullable LocalDate scouted,
        String source) {

    /** How pressure is counted. */
    public enum Measure {
        /** Node-injury scale 0 to 3, whole season, no treatment. */
        NODE_INJURY("nodes", "node", 3),
        /** Larvae per plant. */
        LARVAE_PER_PLANT("larvae/plant", "larva/plant", Double.POSITIVE_INFINITY),
        /** Insects per plant. */
        INSECTS_PER_PLANT("insects/plant", "insect/plant", Double.POSITIVE_INFINITY),
        /** Insects per sweep, foot of row, stem or whatever the loss figure is given for. */
        INSECTS_PER_SAMPLE("insects/sample unit", "insect/sample unit", Double.POSITIVE_INFINITY),
        /** Leaf that would be eaten from now on [% of all leaf]. */
        LEAF_LOST("% of leaf", "% of leaf", 100);

        private final String unit;
        private final String one;
        private final double cap;

        Measure(String unit, String one, double cap) {
            this.unit = unit;
            this.one = one;
            this.cap = cap;
        }

        public String unit() {
            return unit;
        }

        /** One of it, as in "% per node". */
        public String one() {
            return one;
        }

        /** The most the scale can show. */
        public double cap() {
            return cap;
        }
    }
}
