package plumbrow.science.weedseason;

import plumbrow.science.fate.Dissipation;

/** What each day of a season does to a residual, wherever and whenever it was laid: worked out once for all draws. */
final class Weathering {
    private static final double REFERENCE_C = 20;
    private static final double Q10 = 2.58;

    final Days days;
    final Residual residual;

    /** Exposure to vapour loss of each whole day on the surface, as {@link VapourLoss} counts it. */
    final double[] exposure;

    /** Days at 20 °C that its decay has had before each day: Σ f_T. */
    private final double[] decayDays;

    Weathering(Days days, Residual residual) {
        this.days = days;
        this.residual = residual;
        exposure = new double[days.count()];
        decayDays = warmDays(days);
        double kind = VapourLoss.kind(residual.chemistry());
        for (int i = 0; i < exposure.length; i++) {
            exposure[i] = kind * VapourLoss.day(days.surface(i), days.soilC(i));
        }
    }

    /** Days at 20 °C before each day, the clock of decay. */
    static double[] warmDays(Days days) {
        double[] warm = new double[days.count()];
        double sum = 0;
        for (int i = 0; i < warm.length; i++) {
            warm[i] = sum;
            sum += Dissipation.temperatureFactor(days.soilC(i), REFERENCE_C, Q10);
        }
        return warm;
    }

    /** Share not yet broken down on a day, of what was laid on another. */
    double left(int applied, int index) {
        return Dissipation.leftShare(
                decayDays[index] - decayDays[applied], residual.chemistry().halfLifeDays(), 1);
    }
}
