package plumbrow.science.years;

/**
 * How much of its resistance a plant shows at the dose it gets.
 *
 *   e = (Φ − 1)/(Φ + o),  o = c/(1 − c);  survival = s + e·(1 − s),  s = 1 − c
 *
 *   c  control of susceptible plants at that dose [share];  o  its odds
 *   Φ  fold by which resistance lowers the odds of control: (ED50 resistant/ED50 susceptible)^slope, 1 and more
 *   e  0 for a plant that dies like any other, 1 for one that the dose does not touch
 *
 * It follows from two log-logistic curves of one slope. A plant with one copy is nearly as resistant as one with two where
 * the dose is low, and dies where it is high: dominance goes by dose, and half rates make it.
 *
 * Source: log-logistic dose response, Seefeldt et al. 1995, Weed Technol. 9:218 (form from memory); the algebra is ours.
 */
public final class Expression {
    private Expression() {}

    /** e for the control of susceptible plants and the fold Φ; Φ may be +∞. */
    public static double at(double control, double fold) {
        if (fold == Double.POSITIVE_INFINITY) {
            return 1;
        }
        return (fold - 1) * (1 - control) / (fold * (1 - control) + control);
    }

    /** The fold Φ at which a plant shows e at that control: the inverse, for a dominance that is known. */
    public static double fold(double control, double expression) {
        return expression == 1
                ? Double.POSITIVE_INFINITY
                : (1 + expression * control / (1 - control)) / (1 - expression);
    }
}
