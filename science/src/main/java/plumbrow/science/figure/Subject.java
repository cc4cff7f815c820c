package plumbrow.science.figure;

/** The subjects under which figures are filed, one docs page each. */
public enum Subject {
    ECONOMICS("Economics"),
    TRIALS("Trials"),
    WEEDS("Weeds"),
    INSECTS("Insects and refuge"),
    SAFETY("Safety"),
    FATE("Fate, drift and wildlife"),
    STAND("Stand and replanting"),
    SPRAYING("Spraying and machinery"),
    WEATHER("Weather"),
    SOIL("Soil and tillage");

    private final String title;

    Subject(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
