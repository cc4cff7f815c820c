package plumbrow.advice.pestpage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weedseason.WeedField;
import plumbrow.science.Figures;

/** The page of a pest, on a field of the central Corn Belt. */
class PestPageTest {
    private static final Distribution FIVE = new Distribution.Fixed(5);

    /** Waterhemp with a soil product of group 27 and one for leaves, whose ingredient the test chooses. */
    private static WeedField field(String leaf) {
        return new WeedField()
                .herbicide("Soilhold", "mesotrione")
                .herbicide("Leafwork", leaf)
                .herbicide("Nobody 1", "2,4-DB")
                .weed("waterhemp", FIVE, 2, 60)
                .rating("Soilhold", "waterhemp", Timing.SOIL, 30, new Distribution.Pert(.85, .92, .97))
                .rating("Leafwork", "waterhemp", Timing.LEAF, 30, new Distribution.Pert(.85, .9, .95))
                .program("two", WeedField.spray(5, 1, "Soilhold", 30), WeedField.spray(5, 28, "Leafwork", 30));
    }

    private static PestPage page(Season season, String name) {
        return PestPages.of(season, name).orElseThrow();
    }

    private static LocalDate half(String weed) {
        Season season = new WeedField().weed(weed, FIVE, 1, 50).season();
        List<Coming.Day> days = page(season, weed).coming().get(0).days();
        assertThat(days).extracting(Coming.Day::event).containsExactly("10 % up", "50 % up", "90 % up");
        LocalDate middle = days.get(1).date();
        assertThat(middle).isAfter(days.get(0).date()).isBefore(days.get(2).date());
        return Objects.requireNonNull(middle);
    }

    @Test
    void weedsComeInTheOrderOfTheirMedians() {
        assertThat(List.of(half("common lambsquarters"), half("giant foxtail"), half("waterhemp"), half("burcucumber")))
                .as("medians of Forcella et al. 1997: 200, 265, 639; burcucumber as tall morningglory")
                .isSorted();
    }

    /** Straight lines between the middles of the months, five days behind, by hand in a spreadsheet: 639 °C·d above 4.4. */
    @Test
    void theDayOfHalfIsThatOfASumByHand() {
        double[] meanF = {19, 25, 37, 50, 61, 72, 75, 72, 64, 52, 37, 25};
        int[] middle = {16, 46, 75, 106, 136, 167, 197, 228, 259, 289, 320, 350};
        double sum = 0;
        int day = 0;
        while (sum < 639) {
            day++;
            double soil = 0;
            for (int back = 0; back < 5; back++) {
                int at = day - back;
                int i = 0;
                while (i < 10 && middle[i + 1] <= at) {
                    i++;
                }
                double f = meanF[i] + (meanF[i + 1] - meanF[i]) * (at - middle[i]) / (middle[i + 1] - middle[i]);
                soil += (f - 32) / 1.8 / 5;
            }
            sum += Math.max(0, soil - 4.4);
        }
        // Days that are warmer and colder than the months' means gain heat above the base that the means don't have in
        // March and
        // April: the middle of the seasons is some days before the smooth sum, never after it.
        assertThat(half("waterhemp")).isBetween(LocalDate.ofYearDay(2026, day - 6), LocalDate.ofYearDay(2026, day));
    }

    @Test
    void aBorrowedWeedSaysSoAndAnUnknownOneSaysWhereToLook() {
        PestPage borrowed = page(
                new WeedField()
                        .weed("wild cucumber", FIVE, 1, 50)
                        .like("wild cucumber", "burcucumber")
                        .season(),
                "wild cucumber");
        assertThat(borrowed.coming().get(0).eitherWayDays()).isEqualTo(20);
        assertThat(borrowed.coming().get(0).reserves().get(0)).contains("borrowed from burcucumber");
        assertThat(borrowed.alike().get(0).name()).isEqualTo("burcucumber");
        PestPage unknown =
                page(new WeedField().weed("wild cucumber", FIVE, 1, 50).season(), "Wild Cucumber");
        assertThat(unknown.coming().get(0).lookUp()).contains("like_weeds");
        assertThat(unknown.alike()).extracting(Alike::name).contains("waterhemp", "burcucumber");
        assertThat(PestPages.of(field("glyphosate").season(), "no such thing")).isEmpty();
    }

    @Test
    void ownRatingsComeFirstThenPublishedAndTheUnratedIsSaidUnrated() {
        PestPage page = page(field("glyphosate").season(), "waterhemp");
        assertThat(page.works()).extracting(Works::rank).isSorted();
        assertThat(page.works().get(0).product()).isEqualTo("Soilhold");
        assertThat(page.works())
                .filteredOn(one -> one.product().equals("Nobody 1"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.rank()).isEqualTo(Works.Rank.UNRATED);
                    assertThat(one.meanPct()).isNull();
                    assertThat(PestWords.control(one)).contains("unrated");
                });
        assertThat(page.works())
                .as("an own rating hides what is published at its timing")
                .noneMatch(one -> one.product().equals("Soilhold")
                        && one.reach() == Works.Reach.SOIL
                        && one.rank() == Works.Rank.PUBLISHED);
    }

    @Test
    void twoPassesHoldWithTwoSitesAndNotWithOneOrWhereOneFails() {
        TwoPasses two = page(field("glyphosate").season(), "waterhemp").plans().get(0);
        assertThat(two.holds()).isTrue();
        assertThat(two.sites()).containsExactly("27", "9");
        PestPage resistant =
                page(field("glyphosate").resists("waterhemp", "9", null).season(), "waterhemp");
        assertThat(resistant.failed()).singleElement().satisfies(one -> {
            assertThat(one.group()).isEqualTo("9");
            assertThat(one.says()).contains("nobody has counted");
        });
        assertThat(resistant.unasked()).isEmpty();
        assertThat(resistant.plans().get(0).after()).isNull();
        assertThat(resistant.plans().get(0).holds()).isFalse();
        assertThat(resistant.plans().get(0).says()).contains("none on this shelf");
        TwoPasses same = page(field("mesotrione").season(), "waterhemp").plans().get(0);
        assertThat(same.sites()).containsExactly("27");
        assertThat(same.holds()).isFalse();
    }

    @Test
    void theThresholdIsThatOfItsFigureAndRisesWithTheCost() {
        Season season = field("glyphosate").season();
        Threshold dear = page(season, "waterhemp").thresholds().get(0);
        assertThat(dear.lookUp())
                .as("no program charges for a trip: the passes of the product cost 0")
                .isNull();
        assertThat(dear.density())
                .isEqualTo(Figures.find(dear.figure())
                        .orElseThrow()
                        .answer(dear.asked())
                        .number("density_m2"));
        // 30 fl oz at $1, 90 % of the plants, $4 and 200 bu: L* = 100·30/(200·4·0.9) = 4.1667 %; D* = L*/(I(1 − L*/A))
        assertThat(dear.density()).isCloseTo(4.166667 / (2 * (1 - 4.166667 / 60)), within(1e-4));
    }

    @Test
    void theLossIsTheHyperbola() {
        Pressing one =
                page(field("glyphosate").season(), "waterhemp").pressing().get(0);
        assertThat(one.lossPct()).isCloseTo(2 * 5 / (1 + 2 * 5 / 60.0), within(1e-9));
        assertThat(one.says()).contains("10 days after the crop costs 55 %");
    }

    @Test
    void theSameSeasonGivesTheSamePageForEveryName() {
        Season season = field("glyphosate").season();
        assertThat(PestNames.of(season)).hasSizeGreaterThan(30).allSatisfy(name -> {
            PestPage page = page(season, name.name());
            assertThat(page).isEqualTo(page(season, name.name()));
            assertThat(page.sentence()).isNotBlank();
            assertThat(page.cautions().get(0)).startsWith("The current label is the law");
        });
        assertThat(PestNames.of(season).get(0).name()).isEqualTo("waterhemp");
    }

    @Test
    void insectsGoByTheirCalendarAndSayWhatTheyDoNotKnow() {
        Season season = field("glyphosate").season();
        Coming borer = page(season, "European corn borer").coming().get(0);
        assertThat(borer.days()).extracting(Coming.Day::date).isSorted();
        assertThat(borer.days().get(0).event()).startsWith("first spring moth");
        assertThat(page(season, "corn rootworm").coming().get(0).reserves()).anyMatch(one -> one.contains("and dig"));
        assertThat(page(season, "black cutworm").coming().get(0).lookUp()).contains("traps");
        assertThat(page(season, "corn rootworm").plans().get(0).says()).contains("No");
    }
}
