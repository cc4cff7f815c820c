package plumbrow.advice.weighing;

import java.util.List;
import java.util.Optional;
import plumbrow.science.reference.TypicalValue;

/**
 * How much of the doubt about an input a person can take away before the season, where he finds the answer, and what that costs.
 *
 * <p>The price of next autumn or this year's weather nobody can tell; what is bid today, what a field usually brings, or what roots
 * showed last July somebody can. Shares and costs are common practice, no source.
 *
 * @param told share of the variance that the answer takes away [0 to 1], where the input is typical
 * @param toldOfOwn the same where the season has an own value already; 0 where there is no more to tell
 * @param usd what finding it out costs for a field [$]
 */
record Tellable(String id, double told, double toldOfOwn, String asks, String where, double usd) {
    /** A yes or no is answered right with this chance. */
    static final double RIGHT = 0.85;

    private static final List<Tellable> ALL = List.of(
            new Tellable(
                    "price",
                    0.15,
                    0,
                    "What is bid for your harvest, at your elevator?",
                    "a phone call to the elevator",
                    0),
            new Tellable(
                    "yield",
                    0.35,
                    0,
                    "What has this field brought on average?",
                    "own records, six years or more of this field",
                    0),
            new Tellable("handling", 0.6, 0, "What do haul and check-off cost you?", "own settlement sheets", 0),
            new Tellable("drying", 0.5, 0, "What does drying cost you?", "own settlement sheets or the gas bill", 0),
            new Tellable(
                    "pressure: corn rootworm",
                    0.5,
                    0.25,
                    "How much node injury did roots show here last July?",
                    "ten roots dug and washed in July; own records",
                    75),
            new Tellable(
                    "pressure: ", 0.6, 0.25, "What does scouting find of %s?", "scouting ten places of the field", 30),
            new Tellable(
                    "density: ",
                    0.6,
                    0.3,
                    "How many plants of %s stand before spraying?",
                    "ten frames on a walk in May",
                    30),
            new Tellable(
                    "trait works: ",
                    RIGHT,
                    RIGHT,
                    "Did corn with %s show unexpected injury here or next door last year?",
                    "roots dug last July; the seed dealer’s reports",
                    40),
            new Tellable("plants counted", 0.7, 0.2, "How many plants live?", "ten more places counted", 20),
            new Tellable("gaps", 0.7, 0.3, "How much do gaps cost?", "a walk along the rows", 10),
            new Tellable("stand: ", 0.3, 0, "What did strips without it yield?", "own or a neighbour’s strips", 0),
            new Tellable("gain: ", 0.25, 0.25, "How did %s yield in trials near you?", "county variety trials", 0),
            new Tellable("control: ", 0.2, 0, "What did %s do in trials near you?", "extension trials", 0),
            new Tellable("genetic lag", 0.3, 0, "How fast do new varieties gain here?", "state variety trials", 0));

    /** What can be told of an input; empty where nobody can tell anything before the season. */
    static Optional<Tellable> of(Variable input) {
        return ALL.stream()
                .filter(one -> one.id.endsWith(" ")
                        ? input.id().startsWith(one.id)
                        : input.id().equals(one.id))
                .filter(one -> one.share(input) > 0)
                .findFirst();
    }

    /** Share of the variance that the answer takes away [0 to 1]. */
    double share(Variable input) {
        return TypicalValue.marked(input.source()) ? told : toldOfOwn;
    }

    /** The question, naming what the input is of. */
    String question(Variable input) {
        return asks.contains("%s") ? asks.formatted(subject(input.id().substring(id.length()))) : asks;
    }

    private static String subject(String of) {
        int on = of.indexOf(" on ");
        return on > 0 ? of.substring(0, on) : of;
    }
}
