package plumbrow.advice.farmplan;

import plumbrow.science.figure.Numbers;

/**
 * A limit with the words for it.
 *
 * @param step one more of it, as the worth is told for: a day's hours, a thousand dollars
 * @param oneMore that step in words: "another day fit for the sprayer in early June"
 */
record SharedLimit(Kind kind, String name, double most, String unit, double step, String oneMore) {
    enum Kind {
        HOURS,
        REFUGE,
        MONEY,
        FLOOR,
        SUPPLY
    }

    String text() {
        String amount = unit.equals("$") ? Numbers.dollars(most, 0) : Numbers.fixed(most, 0) + " " + unit;
        return name + " (" + amount + ")";
    }
}
