package plumbrow.science.trials;

import plumbrow.science.figure.Numbers;

/**
 * Effects of several sites put together with the weight of their precision.
 *
 *   w = 1/(v + τ²);  mean = Σwy/Σw;  Q = Σw(y − mean)²;  C = Σw − Σw²/Σw;  τ² = max(0, (Q − (k−1))/C)
 *
 *   y  effect at a site;  v  its squared standard error, more than 0;  τ²  variance between sites;  k  sites, two or more
 *
 * Source: DerSimonian & Laird 1986, Control. Clin. Trials 7:177 (form from memory).
 */
public final class Pooled {
    private static final int MOST_TERMS = 12;

    private Pooled() {}

    public static double[] weights(double[] variances, double betweenSites) {
        double[] weights = new double[variances.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = 1 / (variances[i] + betweenSites);
        }
        return weights;
    }

    public static double mean(double[] effects, double[] weights) {
        double sum = 0;
        for (int i = 0; i < effects.length; i++) {
            sum += weights[i] * effects[i];
        }
        return sum / sum(weights);
    }

    /** Q, or the same with other weights. */
    public static double squares(double[] effects, double[] weights, double mean) {
        double sum = 0;
        for (int i = 0; i < effects.length; i++) {
            sum += weights[i] * (effects[i] - mean) * (effects[i] - mean);
        }
        return sum;
    }

    /** C. */
    public static double scale(double[] weights) {
        double squares = 0;
        for (double weight : weights) {
            squares += weight * weight;
        }
        return sum(weights) - squares / sum(weights);
    }

    /** τ². */
    public static double betweenSites(double q, int sites, double scale) {
        return Math.max(0, (q - (sites - 1)) / scale);
    }

    static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    static String meanTerms(double[] effects, double[] weights) {
        StringBuilder text = new StringBuilder("(");
        for (int i = 0; i < effects.length && i < MOST_TERMS; i++) {
            text.append(i == 0 ? "" : " + ")
                    .append(Numbers.plain(weights[i]))
                    .append(" × ")
                    .append(Numbers.inBrackets(effects[i]));
        }
        return text + (effects.length > MOST_TERMS ? " + …" : "") + ") ÷ " + Numbers.plain(sum(weights));
    }

    static String squareTerms(double[] effects, double[] weights, double mean) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < effects.length && i < MOST_TERMS; i++) {
            text.append(i == 0 ? "" : " + ")
                    .append(Numbers.plain(weights[i]))
                    .append(" × (")
                    .append(Numbers.plain(effects[i]))
                    .append(" − ")
                    .append(Numbers.inBrackets(mean))
                    .append(")²");
        }
        return text + (effects.length > MOST_TERMS ? " + …" : "");
    }
}
