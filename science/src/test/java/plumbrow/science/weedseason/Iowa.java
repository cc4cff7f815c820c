package plumbrow.science.weedseason;

import java.util.List;
import java.util.Optional;

/**
 * A corn field of the central Corn Belt to test on: monthly normals rounded to whole degrees (value from memory), corn up on
 * 12 May and closed on 1 July, 40 burcucumber seedlings/m² as in a case worked apart from this code.
 *
 * The residual is a worked case (1400 g/ha, half-life 20 d, ED50 200, slope 3); the post kills 97 % at 10 cm with slope
 * 2.5 and γ 1.2 (Sivesind et al. 2011: .93 to 1.59), and misses 2 in 100 (common practice).
 */
final class Iowa {
    static final double[] AIR_C = {-7, -4, 3, 10, 16, 22, 24, 22, 18, 11, 3, -4};
    static final Days NORMAL = Days.ofMonths(AIR_C, 1, 280, Surface.MOIST);
    static final Crop CORN = new Crop(132, 182);
    static final int PLANTED = 121;
    static final Chemistry QUIET = new Chemistry(20, 200, 530, 4.18e-3);
    static final double[][] NOTHING_DRAWN = {};

    private Iowa() {}

    static Uncertain known(double value) {
        return Uncertain.known(value);
    }

    static WeedSeason season(Species species, Pass... passes) {
        return new WeedSeason(NORMAL, CORN, List.of(species), List.of(passes));
    }

    static Species viny(double plantsM2) {
        return KnownWeeds.burcucumber().withDensity(known(plantsM2));
    }

    static Residual residual(int day, double rate) {
        return residual(day, rate, QUIET, new SoilResponse(200, 3, known(1)), Optional.of(known(5)));
    }

    static Residual residual(
            int day, double rate, Chemistry chemistry, SoilResponse response, Optional<Uncertain> rainAfterDays) {
        return new Residual("residual", day, known(0), 15, rate, chemistry, 20, rainAfterDays, 2, List.of(response));
    }

    static Post post(int day, double rate) {
        LeafResponse response = LeafResponse.seen(97, 840, 2.5, 10, 1.2);
        return new Post("post", day, known(0), 9, rate, .02, List.of(response));
    }

    static Tillage tillage(int day, double workingCm, double broughtUp) {
        return new Tillage("field cultivator", day, known(0), workingCm, false, .95, 25, broughtUp);
    }

    static double lossPct(WeedSeason season) {
        return SeasonLoss.of(season, NOTHING_DRAWN, 1).lossPct()[0];
    }

    static SeasonTrace trace(WeedSeason season) {
        return SeasonTrace.of(season, NOTHING_DRAWN, 0);
    }
}
