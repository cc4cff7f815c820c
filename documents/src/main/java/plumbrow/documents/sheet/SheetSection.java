package plumbrow.documents.sheet;

/**
 * The sixteen sections of a safety data sheet, by the order of today; older sheets have the second and third the other way
 * round.
 *
 * Source: 29 CFR 1910.1200 App. D and REACH Annex II.
 */
public enum SheetSection {
    IDENTIFICATION(1, "Identification"),
    HAZARDS(2, "Hazards identification"),
    COMPOSITION(3, "Composition, information on ingredients"),
    FIRST_AID(4, "First-aid measures"),
    FIRE(5, "Fire-fighting measures"),
    RELEASE(6, "Accidental release measures"),
    HANDLING(7, "Handling and storage"),
    EXPOSURE(8, "Exposure controls, personal protection"),
    PROPERTIES(9, "Physical and chemical properties"),
    STABILITY(10, "Stability and reactivity"),
    TOXICOLOGY(11, "Toxicological information"),
    ECOLOGY(12, "Ecological information"),
    DISPOSAL(13, "Disposal considerations"),
    TRANSPORT(14, "Transport information"),
    REGULATION(15, "Regulatory information"),
    OTHER(16, "Other information");

    private final int number;
    private final String title;

    SheetSection(int number, String title) {
        this.number = number;
        this.title = title;
    }

    /** From 1 to 16. */
    public int number() {
        return number;
    }

    public String title() {
        return title;
    }
}
