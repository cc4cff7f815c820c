package plumbrow.science.weedseason;

import plumbrow.science.fate.VapourFlux;
import plumbrow.science.fate.WarmVapour;

/**
 * Share of a soil herbicide that leaves as vapour while it lies on the surface.
 *
 *   lost = 1 − e^{−0.673·u^0.372};  u = Σ over days of wet^{1/0.372}·warm·kind
 *
 *   u     days on a moist surface at 60 °F that would have lost as much of EPTC
 *   0.673, 0.372  from EPTC on moist soil, 49 % in a day, and the mean rise from 1 to 6 days on dry, moist and wet soil
 *   wet   strength of {@link Surface}
 *   warm  vapour pressure against 60 °F, 95 kJ/mol; on a dry surface cold does not slow it: 32 to 60 °F made it faster on
 *         moist soil only. Above 45 °C as at 45 °C, below 5 °C as at 5 °C
 *   kind  flux from bare soil against that of EPTC
 *
 * Within 6 points of the six EPTC figures of 1 and 6 days; at 15 minutes 15 to 25 points too low, so work such a product in
 * at once. Triallate in 6.5 days 31 % (Yates 2006): 31 % here on a moist surface at 60 °F. Pendimethalin on turf lost 13 % in
 * 5 days: 40 % here, on soil at 68 °F. A planning figure: fields differed by a factor of 2 to 100.
 *
 * Source: Gray & Weierich 1965, Weeds 13:141; Woodrow, Seiber & Baker 1997 (see {@link VapourFlux}); the join is ours.
 */
public final class VapourLoss {
    private static final double REFERENCE_C = (60 - 32) / 1.8;
    private static final double HEAT_KJ_MOL = 95;
    private static final double COLDEST_C = 5;
    private static final double WARMEST_C = 45;
    private static final double IN_A_DAY = -Math.log(1 - .49);
    private static final double POWER = .372;

    /** EPTC: half-life, Koc and solubility of the federal table; vapour pressure from memory. */
    static final Chemistry EPTC = new Chemistry(6, 200, 344, 3.2);

    private VapourLoss() {}

    /** Flux of a herbicide from bare soil against that of EPTC [-]. */
    public static double kind(Chemistry chemistry) {
        return VapourFlux.sprayedOnSoil(ratio(chemistry)) / VapourFlux.sprayedOnSoil(ratio(EPTC));
    }

    private static double ratio(Chemistry chemistry) {
        return chemistry.vapourPa() / (chemistry.kocMlG() * chemistry.solubilityMgL());
    }

    /** What a day on the surface adds to u, for EPTC. */
    public static double day(Surface surface, double soilC) {
        double celsius = Math.min(WARMEST_C, Math.max(COLDEST_C, soilC));
        double warm = WarmVapour.factor(REFERENCE_C, celsius, HEAT_KJ_MOL);
        if (surface == Surface.DRY) {
            warm = Math.max(1, warm);
        }
        return Math.pow(surface.strength(), 1 / POWER) * warm;
    }

    /** Share lost at u. */
    public static double lostShare(double exposure) {
        return -Math.expm1(-IN_A_DAY * Math.pow(exposure, POWER));
    }
}
