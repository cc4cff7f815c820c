package plumbrow.advice.check;

import java.util.Set;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;

/** What a matter asks of a person, in the order in which it is told: the law first, our own screens and gaps last. */
public enum MatterKind {
    BARRED("Barred"),
    LOOK_UP("Look up first"),
    PLAN("Label duties to plan"),
    DAY("On the day"),
    STEWARDSHIP("Stewardship, not law"),
    GAP("Gaps in our data");

    private static final Set<String> OF_THE_DAY =
            Set.of("spray-weather", "exclusion-zone", "saturated-soil", "rain-ahead", "re-entry", "treated-seed");

    private static final Set<String> OF_STEWARDSHIP = Set.of(
            "label-rate",
            "soil-rate",
            "leaching",
            "runoff",
            "drift-to-water",
            "drift-to-neighbours",
            "vapour-drift",
            "bees",
            "birds-and-mammals",
            "carry-over",
            "sites-of-action",
            "effective-rate",
            "repeated-group",
            "insecticide-rotation",
            "volunteer-crop");

    private final String words;

    MatterKind(String words) {
        this.words = words;
    }

    /** Its heading. */
    public String words() {
        return words;
    }

    /** Whether it is told folded, by its count: nothing in it is law or waits for anybody. */
    public boolean folded() {
        return this == STEWARDSHIP || this == GAP;
    }

    /**
     * What a finding that is not clear asks.
     *
     * <p>A condition of the label is a duty to plan or one of the day; that of a screen, which never bars, is stewardship. A
     * condition of the label on bees or hours begins with what to look for on the day.
     */
    static MatterKind of(Finding finding) {
        if (finding.standing() == Standing.BARRED) {
            return BARRED;
        }
        if (finding.standing() == Standing.UNKNOWN) {
            return LOOK_UP;
        }
        if (finding.gap() != null) {
            return GAP;
        }
        if (OF_THE_DAY.contains(finding.gate())
                || finding.clears().startsWith("Look on the day")
                || finding.clears().equals("Spray within them.")) {
            return DAY;
        }
        return OF_STEWARDSHIP.contains(finding.gate()) ? STEWARDSHIP : PLAN;
    }
}
