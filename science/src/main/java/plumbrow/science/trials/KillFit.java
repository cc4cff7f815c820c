package plumbrow.science.trials;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Kill counts over dose, where size is not measured.
 *
 *   logit(killed share) = β₀ + β₁·dose;  dose for p: (logit p − β₀)/β₁
 *   its interval: the doses at which the band around the line meets logit p (Fieller);  se by the delta method
 *
 * Fitted by maximum likelihood. Where no dose splits the kills (all dead above, none below) no line can be fitted.
 *
 * Source: Turner, Ralphs & Evans 1992 (agridat turner.herbicide) for the check.
 */
public final class KillFit {
    private static final int MOST_STEPS = 60;

    public static final Figure FIGURE = Figure.declare("kill-fit", Subject.TRIALS)
            .question("Which dose kills so many, from counts of dead plants?")
            .input(list(
                    "doses", "Dose of each plot", "", Range.NOT_NEGATIVE, "0,1.1,2.2,4.5,0,1.1,2.2,4.5,0,1.1,2.2,4.5"))
            .input(list("alive", "Plants alive before", "", Range.POSITIVE, "18,24,29,24,29,21,24,31,28,32,26,27"))
            .input(list("dead", "Plants dead after", "", Range.NOT_NEGATIVE, "0,13,28,24,0,11,18,31,0,9,24,27"))
            .input(number("kill_pct", "Kill wanted", "%", Range.open(0, 100), "90")
                    .orElse("90"))
            .input(Asked.CONFIDENCE)
            .output("dose", "Dose for that kill", "")
            .output("standard_error", "Its standard error", "")
            .sometimes("low", "Interval, lower end", "")
            .sometimes("high", "Interval, upper end", "")
            .output("intercept", "Log-odds of kill at dose 0", "")
            .output("slope", "Log-odds per unit of dose", "")
            .formula("logit(kill) = β₀ + β₁ × dose; dose = (logit(p) − β₀) ÷ β₁")
            .source("Binomial logit, as in [turner-1992]", VERIFIED)
            .validity(
                    "Two doses or more, dead no more than alive, kill that rises with the dose without a sharp split. No interval where the slope is not clear.")
            .example(
                    "doses=0,1.1,2.2,4.5,0,1.1,2.2,4.5,0,1.1,2.2,4.5 alive=18,24,29,24,29,21,24,31,28,32,26,27"
                            + " dead=0,13,28,24,0,11,18,31,0,9,24,27",
                    "dose=2.12939 standard_error=.128418 low=1.92 high=2.45 intercept=-3.46 slope=2.6567",
                    "picloram on larkspur, [turner-1992]",
                    VERIFIED)
            .model(KillFit::solve);

    private KillFit() {}

    private static Outputs solve(Given given, Working working) {
        double[] doses = given.list("doses");
        double[] alive = given.list("alive");
        double[] dead = given.list("dead");
        if (alive.length != doses.length) {
            throw given.refuse("alive", "as many numbers as doses has (" + doses.length + ")");
        }
        if (dead.length != doses.length) {
            throw given.refuse("dead", "as many numbers as doses has (" + doses.length + ")");
        }
        for (int i = 0; i < dead.length; i++) {
            if (dead[i] > alive[i]) {
                throw given.refuse("dead", "no more dead than were alive, plot by plot");
            }
        }
        double b0 = 0;
        double b1 = 0;
        double v00 = 0;
        double v01 = 0;
        double v11 = 0;
        double step = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_STEPS && !(step < 1e-12); round++) {
            double g0 = 0;
            double g1 = 0;
            double h00 = 0;
            double h01 = 0;
            double h11 = 0;
            for (int i = 0; i < doses.length; i++) {
                double p = 1 / (1 + Math.exp(-b0 - b1 * doses[i]));
                double weight = alive[i] * p * (1 - p);
                double left = dead[i] - alive[i] * p;
                g0 += left;
                g1 += left * doses[i];
                h00 += weight;
                h01 += weight * doses[i];
                h11 += weight * doses[i] * doses[i];
            }
            double det = h00 * h11 - h01 * h01;
            v00 = h11 / det;
            v01 = -h01 / det;
            v11 = h00 / det;
            double d0 = v00 * g0 + v01 * g1;
            double d1 = v01 * g0 + v11 * g1;
            b0 += d0;
            b1 += d1;
            step = Math.abs(d0) / (1 + Math.abs(b0)) + Math.abs(d1) / (1 + Math.abs(b1));
        }
        if (!(step < 1e-9) || !(b1 > 0) || !Double.isFinite(b0) || !Double.isFinite(v00 + v11)) {
            throw given.refuse("dead", "kill that rises with the dose without a sharp split between none and all");
        }
        double intercept =
                working.line("log-odds at dose 0", b0, "", "likeliest line, give or take {}", Math.sqrt(v00));
        double slope =
                working.line("log-odds per unit of dose", b1, "", "likeliest line, give or take {}", Math.sqrt(v11));
        double kill = given.number("kill_pct");
        double wanted =
                working.line("log-odds wanted", Math.log(kill / (100 - kill)), "", "ln({} ÷ (100 − {}))", kill, kill);
        double dose =
                working.line("dose", (wanted - intercept) / slope, "", "({} − {}) ÷ {}", wanted, intercept, slope);
        double variance = (v00 + 2 * dose * v01 + dose * dose * v11) / (b1 * b1);
        double error = working.line(
                "its standard error",
                Math.sqrt(Math.max(0, variance)),
                "",
                "√({} + 2 × {} × {} + {}² × {}) ÷ {}",
                v00,
                dose,
                v01,
                dose,
                v11,
                b1);
        Outputs outputs = new Outputs()
                .put("dose", dose)
                .put("standard_error", error)
                .put("intercept", intercept)
                .put("slope", slope);
        double z = StandardNormal.quantile((1 + given.number("confidence")) / 2);
        double a = b1 * b1 - z * z * v11;
        double half = (intercept - wanted) * b1 - z * z * v01;
        double c = (intercept - wanted) * (intercept - wanted) - z * z * v00;
        double root = half * half - a * c;
        if (a > 0 && root >= 0) {
            outputs.put(
                    "low",
                    working.line("lower end", (-half - Math.sqrt(root)) / a, "", "(−{} − √({})) ÷ {}", half, root, a));
            outputs.put(
                    "high",
                    working.line("upper end", (-half + Math.sqrt(root)) / a, "", "(−{} + √({})) ÷ {}", half, root, a));
        } else {
            working.caution("The slope is not clear: the dose has no interval.");
        }
        return outputs;
    }
}
