package plumbrow.science.weedseason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.weedseason.Iowa.PLANTED;
import static plumbrow.science.weedseason.Iowa.known;
import static plumbrow.science.weedseason.Iowa.lossPct;
import static plumbrow.science.weedseason.Iowa.post;
import static plumbrow.science.weedseason.Iowa.residual;
import static plumbrow.science.weedseason.Iowa.season;
import static plumbrow.science.weedseason.Iowa.viny;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.weeds.PostDelay;

@DisplayName("The weed season at its limits, and against published numbers")
class LimitsTest {

    @Test
    @DisplayName("with all weeds up on one day the season is the hyperbola with relative time")
    void hyperbola() {
        assertThat(lossPct(season(onOneDay(3.2, 56, .03, 10, 0)))).isCloseTo(20.3636, within(5e-5));
        assertThat(lossPct(season(onOneDay(136, 90, .0932168, .69, 14)))).isCloseTo(19.8373, within(5e-5));
        assertThat(lossPct(season(onOneDay(136, 90, .0932168, .69, 28)))).isCloseTo(6.4087, within(5e-5));
    }

    @Test
    @DisplayName(
            "Soltani 2022, corn with many weeds: removed after 11, 17, 25 days they cost 5, 10, 25 % of a field that loses 60")
    void removal() {
        for (int[] published : new int[][] {{11, 5}, {17, 10}, {25, 25}}) {
            int days = published[0];
            Post perfect = new Post("hoe", 132 + days, known(0), 0, 1, 0, List.of(perfect()));
            WeedSeason season = season(onOneDay(3, 60, 0, 20, 0), perfect);
            double load = SeasonLoss.of(season, Iowa.NOTHING_DRAWN, 1).loadPct()[0][0];
            assertThat(load).isCloseTo(published[1], within(2.0));
            assertThat(load).isCloseTo(PostDelay.lossPct("corn-many", days), within(1e-9));
        }
    }

    @Test
    @DisplayName("in soil of 20 °C 530.5 g of 1400 are left after 28 days; control 99.71, 98.77, 94.91, 81.32, 50.38 %")
    void residualInWarmSoil() {
        double[] twenty = new double[120];
        Arrays.fill(twenty, 20);
        Days days = Days.measured(100, twenty, twenty, new double[120]);
        WeedSeason season = new WeedSeason(
                days,
                Iowa.CORN,
                List.of(viny(40)),
                List.of(new Residual(
                        "residual",
                        110,
                        known(0),
                        15,
                        1400,
                        Iowa.QUIET,
                        0,
                        Optional.empty(),
                        0,
                        List.of(new SoilResponse(200, 3, known(1))))));
        SeasonTrace.ControlLeft left = Iowa.trace(season).controls().get(0);
        assertThat(1400 * left.dose()[38]).isCloseTo(530.501, within(5e-4));
        double[] published = {99.71, 98.77, 94.91, 81.32, 50.38};
        for (int i = 0; i < published.length; i++) {
            assertThat(left.controlPct()[0][10 + 14 * i]).isCloseTo(published[i], within(5e-3));
        }
    }

    @Test
    @DisplayName(
            "Gray & Weierich 1965: EPTC on dry, moist, wet soil 23, 49, 69 % in a day and 44, 68, 90 % in six; Yates 2006: triallate 31 % in 6.5")
    void vapour() {
        double sixtyF = (60 - 32) / 1.8;
        lost(Surface.DRY, .23, .44);
        lost(Surface.MOIST, .49, .68);
        lost(Surface.WET, .69, .90);
        double triallate = VapourLoss.kind(new Chemistry(82, 2400, 4, .016));
        assertThat(VapourLoss.lostShare(6.5 * triallate * VapourLoss.day(Surface.MOIST, sixtyF)))
                .isCloseTo(.31, within(.02));
    }

    @Test
    @DisplayName(
            "Nordby & Hartzler 2004: of waterhemp up at VE, V3, V5, V8 in corn 16, 52, 96, 99 % die (days of the stages from memory)")
    void shade() {
        int[] days = {0, 14, 25, 38};
        double[] die = {.16, .52, .96, .99};
        for (int i = 0; i < days.length; i++) {
            double dies = 1 - KnownWeeds.waterhemp().shade().live(Iowa.CORN, 132 + days[i]);
            assertThat(dies).isCloseTo(die[i], within(.11));
        }
    }

    @Test
    @DisplayName("Nordby & Hartzler 2004: waterhemp at VE 48,400 and at V3 9,000 seeds a female, half of the plants")
    void seedByEmergence() {
        assertThat(KnownWeeds.waterhemp().seedSet().alone(0)).isEqualTo(24_200);
        assertThat(KnownWeeds.waterhemp().seedSet().alone(14)).isCloseTo(4500, within(50.0));
    }

    @Test
    @DisplayName("97 % at full rate and 10 cm is 85.110 % at half rate, 90.548 % at 15 cm, 54.494 % at 30 cm")
    void leaf() {
        LeafResponse response = LeafResponse.seen(97, 840, 2.5, 10, 1.2);
        assertThat(controlPct(response.odds(420, 10))).isCloseTo(85.110, within(5e-4));
        assertThat(controlPct(response.odds(840, 15))).isCloseTo(90.548, within(5e-4));
        assertThat(controlPct(response.odds(840, 30))).isCloseTo(54.494, within(5e-4));
    }

    @Test
    @DisplayName("no weeds, no loss; perfect residual, no loss and no seed; perfect late post, no plants but a loss")
    void limits() {
        assertThat(lossPct(season(viny(0)))).isZero();
        Residual wall = new Residual(
                "wall",
                1,
                known(0),
                15,
                1,
                Iowa.QUIET,
                0,
                Optional.empty(),
                0,
                List.of(new SoilResponse(1e-200, 3, known(1))));
        SeasonLoss none = SeasonLoss.of(season(viny(40), wall), Iowa.NOTHING_DRAWN, 1);
        assertThat(none.lossPct()[0]).isLessThan(1e-200);
        assertThat(none.seedsM2()[0][0]).isLessThan(1e-200);
        Post end = new Post("hoe", 280, known(0), 0, 1, 0, List.of(perfect()));
        SeasonLoss late = SeasonLoss.of(season(viny(40), end), Iowa.NOTHING_DRAWN, 1);
        assertThat(late.survivorsM2()[0][0]).isLessThan(1e-200);
        assertThat(late.lossPct()[0]).isPositive().isLessThan(lossPct(season(viny(40))));
    }

    @Test
    @DisplayName(
            "a pass that the draw makes too late for the season, a rate of nothing and a rating of nothing change nothing")
    void nothingDone() {
        double untouched = lossPct(season(viny(40)));
        Post never = new Post("post", 270, known(40), 9, 840, 0, List.of(perfect()));
        Post blank = new Post("post", 150, known(0), 9, 840, 0, List.of(LeafResponse.none()));
        assertThat(lossPct(season(viny(40), never, blank, post(150, 0), residual(PLANTED, 0))))
                .isEqualTo(untouched);
    }

    @Test
    @DisplayName("two passes of one group kill a resistant biotype no better than none")
    void resistance() {
        Species resistant = viny(40).withBiotypes(List.of(new Biotype(1, Set.of(9))));
        assertThat(lossPct(season(resistant, post(140, 840), post(160, 840)))).isEqualTo(lossPct(season(resistant)));
    }

    @Test
    @DisplayName("more plants, more resistant ones, a later sprayer, less rate: never less loss")
    void directions() {
        double last = 0;
        for (double density = 0; density <= 200; density += 10) {
            last = notLess(last, lossPct(season(viny(density), post(150, 840))));
        }
        last = 0;
        for (double share = 0; share <= 1; share += .125) {
            Species mixed =
                    viny(40).withBiotypes(List.of(new Biotype(1 - share, Set.of()), new Biotype(share, Set.of(9))));
            last = notLess(last, lossPct(season(mixed, post(150, 840))));
        }
        last = 0;
        for (double rate = 2000; rate >= 0; rate -= 100) {
            last = notLess(last, lossPct(season(viny(40), residual(PLANTED, rate), post(150, rate))));
        }
        last = 0;
        for (int rain = 0; rain <= 30; rain++) {
            Residual waiting =
                    residual(PLANTED, 1400, Iowa.QUIET, new SoilResponse(200, 3, known(1)), Optional.of(known(rain)));
            last = notLess(last, lossPct(season(viny(40), waiting)));
        }
    }

    @Test
    @DisplayName("a season that can't be is refused in words")
    void refused() {
        assertThatThrownBy(() -> season(viny(40), post(300, 840)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("post is on day 300, outside the days of weather, 1 to 280");
        assertThatThrownBy(() -> new Crop(132, 132)).hasMessageContaining("expected after it is up");
        assertThatThrownBy(() -> new Biotype(1.2, Set.of())).hasMessageContaining("expected a share from 0 to 1");
        assertThatThrownBy(() -> viny(40).withBiotypes(List.of(new Biotype(.5, Set.of()))))
                .hasMessageContaining("sum to 0.5; expected 1");
        assertThatThrownBy(() -> Days.measured(1, new double[3], new double[2], new double[3]))
                .hasMessageContaining("air 2");
    }

    private static void lost(Surface surface, double inADay, double inSixDays) {
        double day = VapourLoss.day(surface, (60 - 32) / 1.8);
        assertThat(VapourLoss.lostShare(day)).isCloseTo(inADay, within(1e-4));
        assertThat(VapourLoss.lostShare(6 * day)).isCloseTo(inSixDays, within(.06));
    }

    private static double notLess(double last, double now) {
        assertThat(now).isGreaterThanOrEqualTo(last - 1e-12);
        return now;
    }

    private static double controlPct(double odds) {
        return 100 * odds / (1 + odds);
    }

    private static LeafResponse perfect() {
        return new LeafResponse(1e-200, 2, 10, 0, known(1));
    }

    /** A weed of which all comes up on the day that lies so many days after the crop. */
    private static Species onOneDay(double perPlant, double highest, double perDay, double plants, int afterCrop) {
        double[] heat = Iowa.NORMAL.soilHeat(4.4);
        int index = 132 + afterCrop - Iowa.NORMAL.first();
        double middle = (heat[index] + heat[index - 1]) / 2;
        return new Species(
                "weed",
                known(plants),
                known(0),
                new Emergence(middle, 5000, 4.4),
                new Growth(6, 1.64, 200, 10),
                new Competition(perPlant, highest, perDay, 30.5, 2.38),
                new SeedSet(100, 0, 0),
                new Shade(0, 0),
                new Depth(2, 5),
                List.of(Biotype.susceptible()));
    }
}
