package plumbrow.app.desk.ask;

import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;

/**
 * The scale on which the gains of a field's programs over its baseline stand side by side, none among them.
 *
 * @param low lowest gain shown [$/ac]
 * @param high highest gain shown [$/ac]
 */
public record GainStrips(double low, double high) {
    public static final int WIDTH = 240;
    private static final double EDGE = 6;
    private static final double LEAST = 5;

    static GainStrips of(FieldAdvice advice) {
        double low = -LEAST;
        double high = LEAST;
        for (WeighedProgram program : advice.programs()) {
            if (!program.baseline()) {
                low = Math.min(low, Math.min(program.gain().low(), program.meanGainUsdPerAcre()));
                high = Math.max(high, Math.max(program.gain().high(), program.meanGainUsdPerAcre()));
            }
        }
        return new GainStrips(low, high);
    }

    /** Where a gain stands. */
    public double x(double gain) {
        return Math.rint(10 * (EDGE + (gain - low) / (high - low) * (WIDTH - 2 * EDGE))) / 10;
    }

    /** How wide a band is. */
    public double width(Band band) {
        return Math.max(1, Math.rint(10 * (x(band.high()) - x(band.low()))) / 10);
    }
}
