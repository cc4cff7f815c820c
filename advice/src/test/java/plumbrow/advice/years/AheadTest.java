package plumbrow.advice.years;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighedProgram;

@DisplayName("A field looked at over several seasons")
class AheadTest {
    private static final YearsOptions OPTIONS = YearsOptions.DEFAULT.withDraws(200);

    private static TwoFields weedy() {
        return new TwoFields()
                .weed("waterhemp", 20)
                .herbicide("Pre", "S-metolachlor", "waterhemp", .9)
                .herbicide("Post", "glyphosate", "waterhemp", .97)
                .program("nothing", true, "bare corn")
                .program("post", false, "bare corn", "Post")
                .program("both", false, "bare corn", "Pre", "Post");
    }

    private static YearsAhead ahead(TwoFields fields, YearsOptions options) {
        Season season = fields.season();
        Field field = season.fields().get(0);
        return Ahead.of(season, field, Ahead.repeated(season, field), options);
    }

    private static RotationAhead of(YearsAhead ahead, String name) {
        return ahead.rotations().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    @DisplayName("the first year is the weighing, and one season's present value is its margin")
    void firstYear() {
        Season season = weedy().season();
        YearsAhead ahead = ahead(weedy(), OPTIONS.withSeasons(1));
        for (WeighedProgram program : Adviser.adviseField(
                        season, season.fields().get(0), OPTIONS.weighing())
                .programs()) {
            RotationAhead one = of(ahead, program.name());
            assertThat(one.years().get(0).meanMarginUsdPerAcre())
                    .isCloseTo(program.meanMarginUsdPerAcre(), within(.01));
            assertThat(one.presentValueUsdPerAcre())
                    .isCloseTo(one.years().get(0).meanMarginUsdPerAcre(), within(1e-9));
            assertThat(one.perYearUsdPerAcre()).isCloseTo(one.presentValueUsdPerAcre(), within(1e-9));
        }
    }

    @Test
    @DisplayName("the lines of the working sum to the present value, by hand")
    void working() {
        for (RotationAhead one : ahead(weedy(), OPTIONS).rotations()) {
            double sum = 0;
            for (int y = 0; y < 10; y++) {
                sum += one.years().get(y).meanMarginUsdPerAcre() / Math.pow(1.05, y);
                assertThat(one.working().get(y).value())
                        .isCloseTo(one.years().get(y).meanMarginUsdPerAcre() / Math.pow(1.05, y), within(1e-9));
            }
            assertThat(one.presentValueUsdPerAcre()).isCloseTo(sum, within(1e-6));
            assertThat(one.presentValue().low()).isLessThan(one.presentValue().middle());
        }
    }

    @Test
    @DisplayName("the same question gives the same answer to the bit, whatever else is looked at beside it")
    void sameBits() {
        assertThat(ahead(weedy(), OPTIONS)).isEqualTo(ahead(weedy(), OPTIONS));
    }

    @Test
    @DisplayName("one site every year is outgrown, two last longer; what is left alone grows and costs")
    void oneSiteFails() {
        YearsAhead ahead = ahead(weedy(), OPTIONS.withSeasons(20));
        RotationAhead one = of(ahead, "post");
        RotationAhead both = of(ahead, "both");
        RotationAhead nothing = of(ahead, "nothing");
        assertThat(share(one, "9", 19)).isGreaterThan(.2);
        assertThat(share(nothing, "9", 19)).isLessThan(1e-3);
        assertThat(both.presentValueUsdPerAcre())
                .isGreaterThan(one.presentValueUsdPerAcre())
                .isGreaterThan(nothing.presentValueUsdPerAcre());
        assertThat(nothing.fails().chanceByYear().get(0)).isEqualTo(1);
        for (RotationAhead each : ahead.rotations()) {
            for (int y = 1; y < 20; y++) {
                assertThat(each.fails().chanceByYear().get(y))
                        .isGreaterThanOrEqualTo(each.fails().chanceByYear().get(y - 1));
            }
        }
        assertThat(ahead.sentence()).startsWith(ahead.best() + " earns most of what may be advised over 20 seasons");
    }

    private static double share(RotationAhead one, String group, int year) {
        return one.weeds().get(0).resistant().stream()
                .filter(share -> share.group().equals(group))
                .findFirst()
                .orElseThrow()
                .share()
                .get(year)
                .middle();
    }

    @Test
    @DisplayName("more control selects no slower in the first years")
    void moreControl() {
        double before = 0;
        for (double control : new double[] {.5, .8, .9, .95}) {
            TwoFields fields = new TwoFields()
                    .weed("waterhemp", 20)
                    .herbicide("Post", "glyphosate", "waterhemp", control)
                    .program("post", true, "bare corn", "Post");
            double share = share(of(ahead(fields, OPTIONS.withSeasons(5)), "post"), "9", 4);
            assertThat(share).isGreaterThanOrEqualTo(before);
            before = share;
        }
        assertThat(before).isPositive();
    }

    @Test
    @DisplayName("a group that all plants resist is left to the control sheet, and not followed")
    void knownResistance() {
        YearsAhead ahead = ahead(weedy().resists("waterhemp", "9"), OPTIONS);
        assertThat(of(ahead, "both").weeds().get(0).resistant())
                .extracting(RotationAhead.Share::group)
                .containsExactly("15");
    }

    @Test
    @DisplayName("a weed of whose seed nothing is known stays as it is, and that is said")
    void unknownSeed() {
        TwoFields fields = new TwoFields().weed("burcucumber", 3).program("nothing", true, "bare corn");
        RotationAhead.WeedAhead weed =
                of(ahead(fields, OPTIONS), "nothing").weeds().get(0);
        assertThat(weed.followed()).isFalse();
        assertThat(weed.seedsM2()).allSatisfy(band -> assertThat(band.middle()).isEqualTo(3));
        assertThat(weed.source()).contains("not known");
    }

    @Test
    @DisplayName("neither weeds nor traits: nothing fails, and every year earns what this one does within the draws")
    void clean() {
        RotationAhead one = of(ahead(new TwoFields().program("plain", true, "bare corn"), OPTIONS), "plain");
        assertThat(one.fails().chance()).isZero();
        double first = one.years().get(0).meanMarginUsdPerAcre();
        assertThat(one.years())
                .allSatisfy(year -> assertThat(year.meanMarginUsdPerAcre())
                        .as("price and yield meet in another order")
                        .isCloseTo(first, within(3.0)));
    }

    @Test
    @DisplayName("rootworms outgrow a trait; a bigger refuge in the bag is not outgrown sooner; without it nothing is")
    void traits() {
        TwoFields fields = new TwoFields()
                .rootworm(1.5)
                .trait("Cry3", .9)
                .seed("five", Crop.CORN, 5, "Cry3")
                .seed("twenty", Crop.CORN, 20, "Cry3")
                .program("bare", true, "bare corn")
                .program("five", false, "five")
                .program("twenty", false, "twenty");
        YearsAhead ahead = ahead(fields, OPTIONS.withSeasons(15));
        double bare = copies(of(ahead, "bare"), 14);
        assertThat(copies(of(ahead, "five"), 14)).isGreaterThan(copies(of(ahead, "twenty"), 14));
        assertThat(copies(of(ahead, "twenty"), 14)).isGreaterThan(bare);
        assertThat(bare).isLessThanOrEqualTo(copies(of(ahead, "bare"), 0));
        assertThat(of(ahead, "five").fails().chance())
                .isGreaterThanOrEqualTo(of(ahead, "twenty").fails().chance())
                .isPositive();
        assertThat(of(ahead, "bare").insects().get(0).fails().says()).contains("No trait");
    }

    @Test
    @DisplayName("a trait that has failed already prevents in the first year what the doubt says")
    void failedTrait() {
        TwoFields fields = new TwoFields()
                .rootworm(1.5)
                .trait("Cry3", .9)
                .doubt("Cry3", 1, .25)
                .seed("five", Crop.CORN, 5, "Cry3")
                .program("five", true, "five");
        Season season = fields.season();
        YearsAhead ahead = ahead(fields, OPTIONS);
        double weighed = Adviser.adviseField(season, season.fields().get(0), OPTIONS.weighing())
                .programs()
                .get(0)
                .meanMarginUsdPerAcre();
        assertThat(of(ahead, "five").years().get(0).meanMarginUsdPerAcre()).isCloseTo(weighed, within(.01));
        assertThat(of(ahead, "five").fails().chanceByYear().get(0)).isEqualTo(1);
    }

    private static double copies(RotationAhead one, int year) {
        return one.insects().get(0).resistant().get(0).share().get(year).middle();
    }

    @Test
    @DisplayName("a year of beans holds the rootworm down and does not select; the other field's program stands in")
    void rotation() {
        TwoFields fields = new TwoFields()
                .rootworm(1.5)
                .trait("Cry3", .9)
                .seed("five", Crop.CORN, 5, "Cry3")
                .program("bare", true, "bare corn")
                .program("five", false, "five")
                .beans("beans");
        Season season = fields.season();
        Field field = season.fields().get(0);
        Rotation turn = Rotation.named(season, field, List.of("five", TwoFields.BEANS + ": beans"));
        Rotation bare = Rotation.named(season, field, List.of("bare", TwoFields.BEANS + ": beans"));
        YearsAhead ahead =
                Ahead.of(season, field, List.of(turn, bare, Rotation.named(season, field, List.of("five"))), OPTIONS);
        RotationAhead one = of(ahead, "five; then Hill 40: beans");
        assertThat(one.years()).extracting(RotationAhead.YearMargin::crop).startsWith("corn", "soybean", "corn");
        assertThat(copies(one, 2)).isEqualTo(copies(one, 1));
        assertThat(copies(one, 9)).isLessThan(copies(of(ahead, "five"), 9));
        RotationAhead without = of(ahead, "bare; then Hill 40: beans");
        assertThat(without.years().get(2).meanMarginUsdPerAcre())
                .as("corn after beans with a tenth of the rootworms")
                .isGreaterThan(without.years().get(0).meanMarginUsdPerAcre() + 100);
        assertThat(ahead.cautions()).anyMatch(caution -> caution.contains("stands in"));
    }

    @Test
    @DisplayName("a program that is not there is refused in words, with those that are")
    void noSuchProgram() {
        Season season = weedy().season();
        assertThatThrownBy(() -> Rotation.named(season, season.fields().get(0), List.of("neither")))
                .isInstanceOf(SeasonGapException.class)
                .hasMessageContaining("'neither'")
                .hasMessageContaining("nothing; post; both");
        assertThatThrownBy(() -> OPTIONS.withSeasons(21)).hasMessage("the number of seasons is 21; expected 1 to 20");
    }

    @Test
    @DisplayName("a share of insects and of plants is turned into the frequency of the copy, and back")
    void frequencies() {
        for (double h : new double[] {0, .2, .5, 1}) {
            double p = InsectLook.frequency(.7, h);
            assertThat(p * p + 2 * p * (1 - p) * h).isCloseTo(.7, within(1e-12));
        }
        for (double inbreeding : new double[] {0, .3, 1}) {
            double p = WeedLook.frequency(.7, inbreeding);
            assertThat((1 - p) * (1 - p) * (1 - inbreeding) + (1 - p) * inbreeding)
                    .isCloseTo(.3, within(1e-12));
        }
    }
}
