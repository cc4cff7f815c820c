package plumbrow.science.weatheryears;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How far the months of one year lie from those of another: standard deviation of the mean temperature [°F] and coefficient of
 * variation of the rain, January first.
 *
 * Source: our statistics of NOAA nClimDiv statewide months, 1990 to 2019, n = 30. Rain at one gauge varies more than that of a
 * state: 1.56 times the variance, the mean over the months of Champaign (1995 to 2023) against Illinois. States without a row
 * take the mean of the seven.
 *
 * @param meanSdF of the month's mean temperature [°F], twelve
 * @param rainCv of the month's rain at one place [-], twelve
 */
@SuppressWarnings("ArrayRecordComponent") // Twelve numbers, read only.
record YearSpread(double[] meanSdF, double[] rainCv) {
    private static final double GAUGE_VARIANCE = 1.56;

    /** Correlation of the month's warmth with its rain, mean of the seven states, January first. */
    static final double[] WARMTH_WITH_RAIN = {.04, -.03, .12, .05, -.26, -.11, -.30, .01, -.16, -.22, -.01, .16};

    private static final Map<String, YearSpread> STATES = new LinkedHashMap<>();

    static {
        STATES.put(
                "IL",
                gauge(
                        new double[] {4.76, 5.51, 4.57, 3.06, 3.14, 1.85, 2.55, 2.49, 2.76, 2.28, 4.48, 4.58},
                        new double[] {.479, .515, .349, .364, .406, .424, .362, .339, .505, .515, .459, .5}));
        STATES.put(
                "IN",
                gauge(
                        new double[] {4.9, 5.39, 4.53, 2.79, 3.35, 1.84, 2.53, 2.37, 2.59, 2.27, 4.06, 4.59},
                        new double[] {.458, .511, .369, .378, .356, .362, .357, .331, .467, .467, .387, .412}));
        STATES.put(
                "IA",
                gauge(
                        new double[] {5.34, 6.47, 4.89, 3.46, 3.01, 1.85, 2.69, 2.35, 2.97, 2.64, 5.18, 5.16},
                        new double[] {.368, .443, .529, .349, .347, .406, .467, .454, .478, .56, .597, .642}));
        STATES.put(
                "MN",
                gauge(
                        new double[] {6.14, 6.75, 5.34, 4.02, 3.07, 2.17, 2.63, 2.18, 2.71, 3.05, 5.6, 5.8},
                        new double[] {.485, .425, .404, .392, .317, .266, .296, .295, .456, .462, .661, .466}));
        STATES.put(
                "MO",
                gauge(
                        new double[] {4.09, 4.92, 4.38, 3.14, 2.93, 2.04, 2.41, 2.68, 2.98, 2.31, 4.39, 3.98},
                        new double[] {.469, .548, .363, .404, .401, .326, .455, .323, .562, .537, .592, .542}));
        STATES.put(
                "NE",
                gauge(
                        new double[] {4.22, 5.84, 4.5, 3.05, 2.79, 2.56, 2.69, 2.24, 2.92, 3.11, 4.32, 4.03},
                        new double[] {.544, .433, .558, .368, .4, .4, .448, .36, .386, .524, .631, .798}));
        STATES.put(
                "OH",
                gauge(
                        new double[] {4.96, 5.38, 4.21, 2.52, 3.52, 1.78, 2.34, 2.29, 2.46, 2.27, 3.7, 4.48},
                        new double[] {.401, .462, .328, .314, .37, .364, .324, .301, .426, .359, .421, .384}));
    }

    private static YearSpread gauge(double[] meanSdF, double[] stateCv) {
        return new YearSpread(
                meanSdF,
                Arrays.stream(stateCv).map(cv -> cv * Math.sqrt(GAUGE_VARIANCE)).toArray());
    }

    /** That of a state by its two letters; the mean of the seven where it has no row. */
    static YearSpread of(String state) {
        YearSpread own = STATES.get(state);
        return own == null ? mean() : own;
    }

    static boolean knows(String state) {
        return STATES.containsKey(state);
    }

    private static YearSpread mean() {
        double[] sd = new double[12];
        double[] cv = new double[12];
        for (YearSpread state : STATES.values()) {
            for (int m = 0; m < 12; m++) {
                sd[m] += state.meanSdF[m] / STATES.size();
                cv[m] += state.rainCv[m] / STATES.size();
            }
        }
        return new YearSpread(sd, cv);
    }

    /** Wider by the doubt about means that come from a few years: variance times 1 + 1/n. */
    YearSpread fromYears(int years) {
        double wider = Math.sqrt(1 + 1.0 / years);
        return new YearSpread(
                Arrays.stream(meanSdF).map(sd -> sd * wider).toArray(),
                Arrays.stream(rainCv).map(cv -> cv * wider).toArray());
    }
}
