package plumbrow.advice.means;

import plumbrow.advice.program.PassKind;

/** Which passes a machine does. */
public enum MachineKind {
    PLANTER("planter"),
    SPRAYER("sprayer");

    private final String word;

    MachineKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether it does such a pass. Granules go on with the planter and take no trip of their own. */
    public boolean does(PassKind pass) {
        return this == PLANTER ? pass == PassKind.SEED : pass == PassKind.SPRAY;
    }
}
