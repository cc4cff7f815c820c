package plumbrow.science.trials;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Differences that count when many treatments are compared, and a plot that was lost.
 *
 *   honest difference = q·√(MS/b);  against a control: d·√(2·MS/b);  q, d of {@link ManyMeans}
 *   lost plot x = (t·T + b·B − G)/((t−1)(b−1)),  bias of the treatment squares (B − (t−1)·x)²/(t(t−1))
 *
 *   MS  mean square of the error;  b  blocks, t treatments;  B, T, G  totals of block, treatment and all that remain
 *
 * After a lost plot the error and the total have one degree of freedom less. More than one lost: fit the linear model.
 *
 * Source: Tukey 1953; Dunnett 1955 (as in SciPy); Yates 1933 (from memory).
 */
public final class ManyTreatments {
    private static final Input TREATMENTS =
            number("treatments", "Treatments, the control among them", "", Range.closed(2, 100), "6");
    private static final Input BLOCKS = number("blocks", "Blocks", "", Range.closed(2, 1000), "4");

    public static final Figure DIFFERENCES = Figure.declare("many-treatments", Subject.TRIALS)
            .question("From which difference on do treatments differ when many are compared?")
            .input(number("ms_error", "Mean square of the error", "", Range.POSITIVE, "110558.41"))
            .input(TREATMENTS)
            .input(BLOCKS)
            .input(Asked.CONFIDENCE)
            .output("honest_difference", "Difference that counts between any two", "bu/ac")
            .output("control_difference", "Difference that counts from the control", "bu/ac")
            .output("q", "Studentised range", "")
            .output("d", "Critical value against the control", "")
            .formula("any two: q × √(MS ÷ blocks); control: d × √(2 × MS ÷ blocks)")
            .source("[tukey-1953]; [dunnett-1955]; both as in [scipy]", VERIFIED)
            .validity(
                    "Complete blocks, equal replicates, error degrees of freedom (blocks − 1)(treatments − 1). By numerical integration.")
            .caution(Asked.NOT_SHOWN)
            .example(
                    "ms_error=110558.41 treatments=6 blocks=4",
                    "q=4.5947 honest_difference=763.88 control_difference=662",
                    "rice seeding rates",
                    COMPUTED)
            .model(ManyTreatments::solve);

    public static final Figure LOST_PLOT = Figure.declare("lost-plot", Subject.TRIALS)
            .question("Which value stands for a plot that was lost?")
            .input(TREATMENTS)
            .input(BLOCKS)
            .input(number("block_total", "Total of its block, without it", "", Range.ANY, "26453"))
            .input(number("treatment_total", "Total of its treatment, without it", "", Range.ANY, "14560"))
            .input(number("grand_total", "Total of all that remain", "", Range.ANY, "114199"))
            .output("value", "Value for the plot", "")
            .output("bias", "What to take off the treatment squares", "")
            .formula("value = (t × T + b × B − G) ÷ ((t − 1)(b − 1)); bias = (B − (t − 1) × value)² ÷ (t(t − 1))")
            .source("[yates-1933]", MEMORY)
            .validity("One plot only, in complete blocks; error and total then have one degree of freedom less.")
            .example(
                    "treatments=6 blocks=4 block_total=26453 treatment_total=14560 grand_total=114199",
                    "value=5264.87 bias=551.84",
                    "rice, block 2 at 100 kg dropped",
                    COMPUTED)
            .model(ManyTreatments::solveLost);

    private ManyTreatments() {}

    private static int whole(Given given, String key) {
        double value = given.number(key);
        if (value != Math.rint(value)) {
            throw given.refuse(key, "a whole number, 2 or more");
        }
        return (int) value;
    }

    private static Outputs solve(Given given, Working working) {
        int t = whole(given, "treatments");
        int b = whole(given, "blocks");
        double ms = given.number("ms_error");
        double confidence = given.number("confidence");
        int df = (b - 1) * (t - 1);
        double q = working.line(
                "studentised range",
                ManyMeans.honestRange(confidence, t, df),
                "",
                "q at {} of {} means with {} degrees of freedom",
                confidence,
                t,
                df);
        double d = working.line(
                "critical value against the control",
                ManyMeans.againstControl(confidence, t - 1, df),
                "",
                "d at {} of {} treatments with {} degrees of freedom",
                confidence,
                t - 1,
                df);
        return new Outputs()
                .put(
                        "honest_difference",
                        working.line("any two", q * Math.sqrt(ms / b), "bu/ac", "{} × √({} ÷ {})", q, ms, b))
                .put(
                        "control_difference",
                        working.line(
                                "from the control",
                                d * Math.sqrt(2 * ms / b),
                                "bu/ac",
                                "{} × √(2 × {} ÷ {})",
                                d,
                                ms,
                                b))
                .put("q", q)
                .put("d", d);
    }

    private static Outputs solveLost(Given given, Working working) {
        int t = whole(given, "treatments");
        int b = whole(given, "blocks");
        double block = given.number("block_total");
        double treatment = given.number("treatment_total");
        double grand = given.number("grand_total");
        double x = working.line(
                "value for the plot",
                (t * treatment + b * block - grand) / ((t - 1.0) * (b - 1)),
                "",
                "({} × {} + {} × {} − {}) ÷ (({} − 1) × ({} − 1))",
                t,
                treatment,
                b,
                block,
                grand,
                t,
                b);
        double off = working.line("block total off", block - (t - 1) * x, "", "{} − ({} − 1) × {}", block, t, x);
        double bias = working.line(
                "bias of the treatment squares", off * off / (t * (t - 1.0)), "", "{}² ÷ ({} × ({} − 1))", off, t, t);
        return new Outputs().put("value", x).put("bias", bias);
    }
}
