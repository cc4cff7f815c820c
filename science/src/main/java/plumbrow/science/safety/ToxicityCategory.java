package plumbrow.science.safety;

/**
 * Toxicity categories of the US label, I the most poisonous.
 *
 * Limits are upper limits of I, II and III, each included; above the third it is IV. The regulation and the agency's review
 * manual differ for skin and lungs: the regulation is the default, and which table was used is always said.
 *
 * Source: 40 CFR 156.62; Label Review Manual ch. 7 (value from memory).
 */
enum ToxicityCategory {
    I(1, "DANGER"),
    II(2, "WARNING"),
    III(3, "CAUTION"),
    IV(4, "none");

    /** Which printed table is read. */
    @SuppressWarnings("ImmutableEnumChecker") // a record of numbers is as fixed as they are
    enum Limits {
        REGULATION(new Steps(50, 500, 5000), new Steps(200, 2000, 20_000), new Steps(.2, 2, 20)),
        MANUAL(new Steps(50, 500, 5000), new Steps(200, 2000, 5000), new Steps(.05, .5, 2));

        private final Steps oral;
        private final Steps dermal;
        private final Steps inhalation;

        Limits(Steps oral, Steps dermal, Steps inhalation) {
            this.oral = oral;
            this.dermal = dermal;
            this.inhalation = inhalation;
        }

        /** The category of a value [mg/kg, or mg/L for inhalation]. */
        ToxicityCategory of(Route route, double value) {
            Steps steps = switch (route) {
                case ORAL -> oral;
                case DERMAL -> dermal;
                case INHALATION -> inhalation;
            };
            if (value <= steps.first) {
                return I;
            }
            if (value <= steps.second) {
                return II;
            }
            return value <= steps.third ? III : IV;
        }
    }

    /** Upper limits of the first three categories. */
    private record Steps(double first, double second, double third) {}

    /** How the poison enters. */
    enum Route {
        ORAL,
        DERMAL,
        INHALATION
    }

    private final int number;
    private final String signalWord;

    ToxicityCategory(int number, String signalWord) {
        this.number = number;
        this.signalWord = signalWord;
    }

    /** 1 for I to 4 for IV. */
    int number() {
        return number;
    }

    String signalWord() {
        return signalWord;
    }
}
