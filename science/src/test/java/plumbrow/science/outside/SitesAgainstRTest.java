package plumbrow.science.outside;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("r")
@DisplayName("Several sites, and how many strips it takes, beside R, on 20 seeded data sets each")
class SitesAgainstRTest extends BesideR {
    private static final int SETS = 20;
    /** Relative; both sides are double arithmetic on the same numbers. */
    private static final double SAME = 1e-8;
    /** Relative; both sides search for a least or a root. */
    private static final double SEARCHED = 1e-4;

    private final Draws draws = new Draws(1986);

    @Test
    @DisplayName("Several sites by metafor: DerSimonian-Laird with z, Hartung-Knapp; next field with t of k−2; 1e-8")
    void randomEffects() {
        for (int set = 0; set < SETS; set++) {
            int sites = draws.whole(3, 12);
            double[] effects = draws.list(sites, 4, draws.between(.5, 5));
            double[] variances = new double[sites];
            for (int i = 0; i < sites; i++) {
                variances[i] = draws.between(.5, 8);
            }
            ours.add(answer(
                    "random-effects",
                    Map.of(
                            "effects",
                            Draws.typed(effects),
                            "variances",
                            Draws.typed(variances),
                            "confidence",
                            "0.95")));
            r.add("y", effects, "v", variances);
        }
        same(
                r.answers("""
                        m <- rma(s$y, s$v, method = "DL"); k <- rma(s$y, s$v, method = "DL", test = "knha")
                        f <- rma(s$y, s$v, method = "FE")
                        next_field <- c(m$b) + c(-1, 1) * qt(.975, length(s$y) - 2) * sqrt(m$tau2 + m$se^2)
                        c(m$b, m$se, m$tau2, m$QE, m$QEp, f$b, m$ci.lb, m$ci.ub, k$ci.lb, k$ci.ub, next_field)
                        """, "metafor"),
                SAME,
                "pooled",
                "standard_error",
                "tau2",
                "q",
                "p_q",
                "fixed",
                "low",
                "high",
                "hk_low",
                "hk_high",
                "next_low",
                "next_high");
    }

    @Test
    @DisplayName("Several sites by metafor with restricted likelihood and Hartung-Knapp; 1e-6")
    void restrictedLikelihood() {
        for (int set = 0; set < SETS; set++) {
            int sites = draws.whole(3, 12);
            double[] effects = draws.list(sites, 4, draws.between(1, 6));
            double[] variances = new double[sites];
            for (int i = 0; i < sites; i++) {
                variances[i] = draws.between(.5, 8);
            }
            ours.add(answer(
                    "random-effects-reml",
                    Map.of("effects", Draws.typed(effects), "variances", Draws.typed(variances))));
            r.add("y", effects, "v", variances);
        }
        same(r.answers("""
                        steps <- list(threshold = 1e-12, maxiter = 10000)
                        m <- rma(s$y, s$v, method = "REML", control = steps)
                        k <- rma(s$y, s$v, method = "REML", test = "knha", control = steps)
                        c(m$b, m$se, m$tau2, k$ci.lb, k$ci.ub)
                        """, "metafor"), 1e-6, "pooled", "standard_error", "tau2", "hk_low", "hk_high");
    }

    @Test
    @DisplayName("Power and replicates by power.t.test, its far tail left out as here; 1e-4")
    void power() {
        for (int set = 0; set < SETS; set++) {
            double difference = draws.between(2, 8);
            double sd = draws.between(4, 10);
            double alpha = draws.between(.02, .2);
            double power = draws.between(.6, .95);
            ours.add(answer(
                    "replicates-needed",
                    Map.of(
                            "difference", Double.toString(difference),
                            "sd", Double.toString(sd),
                            "alpha", Double.toString(alpha),
                            "power", Double.toString(power))));
            r.add("difference", difference, "sd", sd, "alpha", alpha, "power", power);
        }
        List<double[]> theirs = r.answers("""
                n <- power.t.test(delta = s$difference, sd = s$sd, sig.level = s$alpha, power = s$power, type = "paired",
                                  tol = 1e-10)$n
                c(n, ceiling(n))
                """);
        same(theirs, SEARCHED, "exact", "replicates");
    }

    @Test
    @DisplayName("Plots of two groups by power.t.test; 1e-4")
    void twoGroups() {
        for (int set = 0; set < SETS; set++) {
            double difference = draws.between(3, 8);
            double sd = draws.between(4, 10);
            ours.add(answer(
                    "plots-needed",
                    Map.of("difference", Double.toString(difference), "sd", Double.toString(sd), "power", "0.9")));
            r.add("difference", difference, "sd", sd);
        }
        same(r.answers("power.t.test(delta = s$difference, sd = s$sd, power = .9, tol = 1e-10)$n"), SEARCHED, "exact");
    }

    @Test
    @DisplayName("The chance of showing a difference by the noncentral t of pt; 1e-8")
    void noncentral() {
        for (int set = 0; set < SETS; set++) {
            int pairs = draws.whole(3, 40);
            double difference = draws.between(1, 9);
            ours.add(answer(
                    "trial-power",
                    Map.of(
                            "difference",
                            Double.toString(difference),
                            "sd",
                            "8",
                            "replicates",
                            Integer.toString(pairs))));
            r.add("n", pairs, "difference", difference);
        }
        same(r.answers("1 - pt(qt(.975, s$n - 1), s$n - 1, ncp = s$difference / 8 * sqrt(s$n))"), SAME, "power");
    }
}
