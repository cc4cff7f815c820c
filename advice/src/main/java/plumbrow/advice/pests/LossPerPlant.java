package plumbrow.advice.pests;

/** How the loss per weed plant is named among the inputs of a field: the same whichever way its weeds are weighed. */
public final class LossPerPlant {
    public static final String UNIT = "% per plant/m²";

    private LossPerPlant() {}

    public static String id(String weed) {
        return "loss per plant: " + weed;
    }

    public static String label(String weed) {
        return "yield lost for each plant of " + weed + " while they are few";
    }

    /** The name of its draws: places differ in it more than years do, so it is the field's own. */
    public static String stream(String weed, String field) {
        return "loss per plant of " + weed + " on " + field;
    }
}
