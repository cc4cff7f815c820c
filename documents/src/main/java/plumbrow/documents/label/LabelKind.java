package plumbrow.documents.label;

/**
 * What is read from a label.
 *
 * Of a kind that holds once, two statements about the same thing that differ contradict each other; of the others a label
 * has as many as it likes.
 */
public enum LabelKind {
    PRODUCT_NAME("Product name", true),
    REGISTRATION("EPA registration number", true),
    ESTABLISHMENT("EPA establishment number", false),
    LABEL_DATE("Date of the label", true),
    SIGNAL_WORD("Signal word (label)", true),
    CHILD_STATEMENT("Keep out of reach of children", false),
    RESTRICTED_USE("Restricted use", true),
    ACTIVE("Active ingredient", true),
    STRENGTH("Active in the product", true),
    GROUP("Site-of-action group", false),
    REENTRY("Restricted-entry interval", true),
    PRE_HARVEST("Pre-harvest interval", true),
    GRAZING("Grazing and feeding", false),
    GEAR("Protective equipment", false),
    FIRST_AID("First aid", true),
    USE_RATE("Rate", false),
    SEASON_MAX("Most in a season", true),
    SINGLE_MAX("Most in one application", true),
    APPLICATIONS("Most applications", true),
    REAPPLICATION("Least time between applications", true),
    PLANT_BACK("Plant-back interval", true),
    SETBACK("Distance to keep", false),
    DROPLETS("Droplets", false),
    WIND("Wind", false),
    BOOM("Height of release", false),
    RAINFAST("Rainfast after", true),
    RAIN_AHEAD("Rain ahead", true),
    CARRIER("Carrier volume", false),
    MIX_BAN("Must not be mixed with", false),
    BEES("Bees and bloom", false),
    SATURATED_SOIL("Saturated or frozen ground", false),
    GROUND_WATER("Ground water", false),
    BULLETIN("Endangered-species bulletin", false),
    STAGE("Growth stage", false),
    CROP_HEIGHT("Tallest crop", true),
    WEED_HEIGHT("Tallest weeds", false),
    AIR_TEMPERATURE("Warmest air", true),
    METHOD("Way of application, as printed", false),
    FORMULATION("Formulation", true),
    MAKER("Maker or distributor", false),
    TELEPHONE("Emergency telephone", false),
    WHERE("Where and by whom it may be used", false),
    KEEP_OUT("Keep people out until", false),
    DRIFT("Spray drift, as printed", false),
    ADJUVANT("Adjuvant", false),
    STORAGE("Storage", false),
    DISPOSAL("Disposal of the product", false),
    CONTAINER("Container", false);

    private final String title;
    private final boolean holdsOnce;

    LabelKind(String title, boolean holdsOnce) {
        this.title = title;
        this.holdsOnce = holdsOnce;
    }

    /** What a person calls it. */
    public String title() {
        return title;
    }

    public boolean holdsOnce() {
        return holdsOnce;
    }
}
