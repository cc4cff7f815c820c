package plumbrow.science.fate;

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

/** Spray drift that settles beside the field, as a figure. The curve is {@link DriftCurve}. */
public final class DriftDeposit {
    static final Input DISTANCE = number(
            "distance_m",
            "Distance from the field edge",
            "m",
            Range.closed(DriftCurve.NEAREST_M, DriftCurve.FARTHEST_M),
            "10");
    static final String CURVE_SOURCE = "[rautmann-2001]";
    static final String CONDITIONS =
            "Standard nozzles, boom low, wind up to 5 m/s (11 mph), speed up to 8 km/h (5 mph): 9 of 10 trials drifted less."
                    + " Faster, windier or higher drifts more; vapour and inversions are not in it.";
    static final String US_SCREEN =
            "The flat US screening defaults are 1 % by ground and 5 % from the air (value from memory): show both.";
    private static final double THIN_BEYOND_M = 75;

    public static final Figure FIGURE = Figure.declare("drift-deposit", Subject.FATE)
            .question("How much of the field rate drifts to a distance from the edge?")
            .input(DISTANCE)
            .output("deposit_pct", "Deposit, share of the field rate", "%")
            .formula("deposit = 2.7705 × distance^(−0.9787)")
            .source(CURVE_SOURCE, MEMORY)
            .validity("1 to 100 m from a ground boom in field crops; thin data beyond 75 m.")
            .caution(CONDITIONS)
            .caution(US_SCREEN)
            .example("distance_m=1", "deposit_pct=2.7705", "table 2.77 (pfm drift_data_JKI)", COMPUTED)
            .example("distance_m=3", "deposit_pct=0.945365", "table 0.95", COMPUTED)
            .example("distance_m=5", "deposit_pct=0.57", "[pfm]", VERIFIED)
            .example("distance_m=10", "deposit_pct=0.29", "[pfm]", VERIFIED)
            .example("distance_m=50", "deposit_pct=0.060225", "table 0.06", COMPUTED)
            .model(DriftDeposit::solve);

    private DriftDeposit() {}

    private static Outputs solve(Given given, Working working) {
        return new Outputs().put("deposit_pct", showDeposit(working, given.number("distance_m")));
    }

    static double showDeposit(Working working, double distance) {
        if (distance > THIN_BEYOND_M) {
            working.caution("Beyond 75 m the curve rests on few measurements.");
        }
        return working.line(
                "deposit", DriftCurve.FIELD_CROPS.pointPct(distance), "%", "2.7705 × {}^(−0.9787)", distance);
    }
}
