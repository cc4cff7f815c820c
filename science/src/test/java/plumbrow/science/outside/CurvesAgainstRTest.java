package plumbrow.science.outside;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbrow.science.chance.RankCorrelation;
import plumbrow.science.figure.Answer;

@Tag("r")
@DisplayName("Curves, distributions and correlations beside R, on 20 seeded data sets each")
class CurvesAgainstRTest extends BesideR {
    private static final int SETS = 20;

    private final Draws draws = new Draws(1995);

    @Test
    @DisplayName("Log-logistic of four parameters by nls; estimates and residual error 1e-4")
    void logLogistic() {
        double[] doses = {0, 0, 0, .5, .5, 1, 1, 2, 2, 4, 4, 8, 8, 16, 16, 32, 32};
        for (int set = 0; set < SETS; set++) {
            double slope = draws.between(1.2, 3);
            double upper = draws.between(6, 10);
            double lower = draws.between(.3, 1);
            double half = draws.between(1.5, 6);
            double[] responses = new double[doses.length];
            for (int i = 0; i < doses.length; i++) {
                responses[i] = draws.around(lower + (upper - lower) / (1 + Math.pow(doses[i] / half, slope)), .25);
            }
            ours.add(answer(
                    "dose-response-fit", Map.of("doses", Draws.typed(doses), "responses", Draws.typed(responses))));
            r.add("x", doses, "y", responses, "b", slope, "c", lower, "d", upper, "e", half);
        }
        same(r.answers("""
                        f <- nls(y ~ c + (d - c) / (1 + (x / e)^b), data.frame(x = s$x, y = s$y),
                                 start = list(b = s$b, c = s$c, d = s$d, e = s$e),
                                 algorithm = "port", control = nls.control(maxiter = 500))
                        c(coef(f), sigma(f))
                        """), 1e-4, "slope_b", "lower_c", "upper_d", "ed50_e", "residual_se");
    }

    @Test
    @DisplayName("Counts of dead by glm and dose.p of MASS; 1e-6")
    void kill() {
        double[] doses = {0, 1, 2, 4, 0, 1, 2, 4, 0, 1, 2, 4};
        for (int set = 0; set < SETS; set++) {
            double middle = draws.between(1, 3);
            double steep = draws.between(1, 3);
            double[] alive = new double[doses.length];
            double[] dead = new double[doses.length];
            for (int i = 0; i < doses.length; i++) {
                alive[i] = draws.whole(15, 40);
                double share = 1 / (1 + Math.exp(-steep * (doses[i] - middle)));
                dead[i] = Math.min(alive[i], Math.max(0, Math.rint(draws.around(alive[i] * share, 2))));
            }
            ours.add(answer(
                    "kill-fit",
                    Map.of("doses", Draws.typed(doses), "alive", Draws.typed(alive), "dead", Draws.typed(dead))));
            r.add("x", doses, "n", alive, "dead", dead);
        }
        same(r.answers("""
                        f <- glm(cbind(dead, n - dead) ~ x, binomial, data.frame(x = s$x, n = s$n, dead = s$dead),
                                 control = glm.control(epsilon = 1e-14, maxit = 100))
                        p <- dose.p(f, p = .9)
                        c(coef(f), p, attr(p, "SE"))
                        """, "MASS"), 1e-6, "intercept", "slope", "dose", "standard_error");
    }

    @Test
    @DisplayName("Parabola over rate by lm; 1e-7")
    void quadratic() {
        double[] rates = {0, 40, 80, 120, 160, 200, 240};
        for (int set = 0; set < SETS; set++) {
            double[] yields = new double[rates.length];
            double rise = draws.between(.4, 1.2);
            for (int i = 0; i < rates.length; i++) {
                yields[i] = draws.around(100 + rise * rates[i] - .002 * rates[i] * rates[i], 5);
            }
            ours.add(answer("quadratic-fit", Map.of("rates", Draws.typed(rates), "yields", Draws.typed(yields))));
            r.add("x", rates, "y", yields);
        }
        same(
                r.answers("f <- lm(y ~ x + I(x^2), data.frame(x = s$x, y = s$y)); c(coef(f), deviance(f))"),
                1e-7,
                "a",
                "b",
                "c",
                "rss");
    }

    @Test
    @DisplayName("PERT by qbeta; mean, spread, quantile; 1e-8")
    void pert() {
        for (int set = 0; set < SETS; set++) {
            double low = draws.between(50, 100);
            double likely = low + draws.between(0, 60);
            double high = likely + draws.between(1, 50);
            double p = draws.between(.02, .98);
            ours.add(answer(
                    "pert",
                    Map.of(
                            "low", Double.toString(low),
                            "likely", Double.toString(likely),
                            "high", Double.toString(high),
                            "probability", Double.toString(p))));
            r.add("a", low, "m", likely, "b", high, "p", p);
        }
        same(r.answers("""
                        w <- s$b - s$a; alpha <- 1 + 4 * (s$m - s$a) / w; beta <- 1 + 4 * (s$b - s$m) / w
                        c(s$a + w * alpha / (alpha + beta),
                          w * sqrt(alpha * beta / ((alpha + beta)^2 * (alpha + beta + 1))),
                          s$a + w * qbeta(s$p, alpha, beta))
                        """), 1e-8, "mean", "sd", "quantile");
    }

    @Test
    @DisplayName("Beta and Weibull yields by qbeta, qweibull and uniroot; 1e-7")
    void yields() {
        List<Answer> weibull = new ArrayList<>();
        for (int set = 0; set < SETS; set++) {
            double mean = draws.between(100, 200);
            double cv = draws.between(.1, .35);
            double p = draws.between(.02, .98);
            Map<String, String> both =
                    Map.of("mean", Double.toString(mean), "cv", Double.toString(cv), "probability", Double.toString(p));
            weibull.add(answer("yield-weibull", both));
            ours.add(answer(
                    "yield-beta",
                    Map.of(
                            "mean", Double.toString(mean),
                            "cv", Double.toString(cv),
                            "low", "0",
                            "high", "280",
                            "probability", Double.toString(p))));
            r.add("mean", mean, "cv", cv, "p", p);
        }
        List<double[]> theirs = r.answers("""
                m <- s$mean / 280; v <- (s$cv * m)^2; k <- m * (1 - m) / v - 1
                shape <- uniroot(function(k) gamma(1 + 2 / k) / gamma(1 + 1 / k)^2 - 1 - s$cv^2, c(1, 60), tol = 1e-13)$root
                c(m * k, (1 - m) * k, 280 * qbeta(s$p, m * k, (1 - m) * k),
                  qweibull(s$p, shape, s$mean / gamma(1 + 1 / shape)))
                """);
        for (int set = 0; set < SETS; set++) {
            double[] found = {
                ours.get(set).number("alpha"),
                ours.get(set).number("beta"),
                ours.get(set).number("quantile"),
                weibull.get(set).number("quantile")
            };
            close(found, theirs.get(set), 1e-7, "set " + set);
        }
    }

    @Test
    @DisplayName("Harvest price by qlnorm and plnorm; 1e-8")
    void price() {
        List<Answer> chances = new ArrayList<>();
        for (int set = 0; set < SETS; set++) {
            double futures = draws.between(3, 12);
            double volatility = draws.between(.1, .5);
            double p = draws.between(.02, .98);
            double strike = draws.between(3, 12);
            Map<String, String> market = Map.of(
                    "futures_usd", Double.toString(futures), "volatility", Double.toString(volatility), "years", "0.5");
            ours.add(answer("price-quantile", with(market, "probability", p)));
            chances.add(answer("price-chance-above", with(market, "strike_usd", strike)));
            r.add("f", futures, "v", volatility, "p", p, "k", strike);
        }
        List<double[]> theirs = r.answers("""
                sd <- s$v * sqrt(.5); mu <- log(s$f) - sd^2 / 2
                c(qlnorm(s$p, mu, sd), plnorm(s$k, mu, sd, lower.tail = FALSE))
                """);
        for (int set = 0; set < SETS; set++) {
            double[] found = {
                ours.get(set).number("price_usd"), chances.get(set).number("chance")
            };
            close(found, theirs.get(set), 1e-8, "set " + set);
        }
    }

    @Test
    @DisplayName("Rank and straight-line correlation by cor, ties among them; 1e-12")
    void correlation() {
        double[][] found = new double[SETS][];
        for (int set = 0; set < SETS; set++) {
            int n = draws.whole(5, 40);
            double[] x = draws.list(n, 10, 3);
            double[] y = new double[n];
            for (int i = 0; i < n; i++) {
                x[i] = set % 2 == 0 ? Math.rint(x[i]) : x[i];
                y[i] = draws.around(-.5 * x[i], 2);
            }
            found[set] = new double[] {RankCorrelation.spearman(x, y), RankCorrelation.pearson(x, y)};
            r.add("x", x, "y", y);
        }
        List<double[]> theirs = r.answers("c(cor(s$x, s$y, method = \"spearman\"), cor(s$x, s$y))");
        for (int set = 0; set < SETS; set++) {
            close(found[set], theirs.get(set), 1e-12, "set " + set);
        }
    }

    @Test
    @DisplayName("Quantile of outcomes by quantile of type 7; 1e-12")
    void quantile() {
        for (int set = 0; set < SETS; set++) {
            double[] values = draws.list(draws.whole(3, 60), 5, 30);
            double share = draws.between(.05, .95);
            ours.add(answer("tail-shortfall", Map.of("values", Draws.typed(values), "share", Double.toString(share))));
            r.add("x", values, "p", share);
        }
        same(r.answers("quantile(s$x, s$p, type = 7)"), 1e-12, "quantile");
    }

    private static Map<String, String> with(Map<String, String> typed, String key, double value) {
        Map<String, String> more = new HashMap<>(typed);
        more.put(key, Double.toString(value));
        return more;
    }
}
