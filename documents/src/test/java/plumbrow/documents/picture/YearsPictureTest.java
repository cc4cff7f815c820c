package plumbrow.documents.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.documents.picture.StripPictureTest.all;
import static plumbrow.documents.picture.StripPictureTest.parse;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.years.Failure;
import plumbrow.advice.years.RotationAhead;
import plumbrow.advice.years.YearsAhead;
import plumbrow.advice.years.YearsOptions;
import plumbrow.documents.SampleAdvice;

class YearsPictureTest {
    private static final int SEASONS = 20;

    private static RotationAhead rotation() {
        List<Double> chances = years(y -> y / 20.0);
        Failure fails = new Failure(chances, 11, "Control of waterhemp fails in 2036 or before in half of the draws.");
        return new RotationAhead(
                "two passes",
                Standing.CLEAR,
                List.of(),
                3000,
                new Band(2000, 3000, 4000),
                300,
                1,
                years(y -> new RotationAhead.YearMargin(
                        2026 + y, "corn", "two passes", 300 - y, new Band(-20 - y, 300 - y, 500))),
                List.of(
                        new RotationAhead.WeedAhead(
                                "waterhemp",
                                true,
                                years(y -> new Band(0, 10 * Math.pow(2, y), 1e6)),
                                List.of(
                                        new RotationAhead.Share("9", years(y -> new Band(0, y / 20.0, 1))),
                                        new RotationAhead.Share("14", years(y -> new Band(0, 0, .5))),
                                        new RotationAhead.Share("15", years(y -> new Band(0, 0, .001)))),
                                fails,
                                "invented"),
                        new RotationAhead.WeedAhead(
                                "burcucumber", false, years(y -> new Band(3, 3, 3)), List.of(), fails, "not known")),
                List.of(new RotationAhead.InsectAhead(
                        "corn rootworm",
                        true,
                        List.of(new RotationAhead.Share("Cry3", years(y -> new Band(.01, .1, .9)))),
                        fails)),
                fails,
                List.of());
    }

    private static <T> List<T> years(IntFunction<T> of) {
        return IntStream.range(0, SEASONS).mapToObj(of).toList();
    }

    private static YearsAhead ahead() {
        Field field = SampleAdvice.advice().fields().get(0).field();
        return new YearsAhead(
                field,
                "A. Grower",
                2026,
                YearsOptions.DEFAULT.withSeasons(SEASONS),
                List.of(rotation()),
                "two passes",
                "Take two passes.",
                "",
                "",
                List.of(),
                List.of());
    }

    @ParameterizedTest
    @ValueSource(ints = {200, 350, 720})
    void everyMarkAndLabelLiesInsideThePicture(int width) throws Exception {
        Element svg = parse(YearsPicture.svg(ahead(), rotation(), width));
        double wide = Double.parseDouble(svg.getAttribute("width"));
        double tall = Double.parseDouble(svg.getAttribute("height"));
        for (Element text : all(svg, "text")) {
            double size = Double.parseDouble(text.getAttribute("font-size"));
            double length = Lettering.width(
                    text.getTextContent(),
                    size,
                    text.getAttribute("font-weight").equals("bold"));
            double x = Double.parseDouble(text.getAttribute("x"));
            double left = switch (text.getAttribute("text-anchor")) {
                case "middle" -> x - length / 2;
                case "end" -> x - length;
                default -> x;
            };
            assertThat(left).as(text.getTextContent()).isGreaterThanOrEqualTo(0);
            assertThat(left + length).as(text.getTextContent()).isLessThanOrEqualTo(wide + .5);
            assertThat(Double.parseDouble(text.getAttribute("y"))).isBetween(size * .7, tall);
        }
        for (Element dot : all(svg, "circle")) {
            assertThat(Double.parseDouble(dot.getAttribute("cx"))).isBetween(0.0, wide);
            assertThat(Double.parseDouble(dot.getAttribute("cy"))).isBetween(0.0, tall);
        }
    }

    @Test
    void itShowsWhatIsFollowedAndSaysTheFinding() throws Exception {
        Element svg = parse(YearsPicture.svg(ahead(), rotation(), 720));
        assertThat(svg.getTextContent())
                .contains(
                        "Margin over these inputs",
                        "Seed of waterhemp in the soil",
                        "Seed of waterhemp that resists, by group",
                        "group 9",
                        "group 14",
                        "Resistant copies in corn rootworm, Cry3",
                        "Chance that control has failed",
                        "2026",
                        "Control of waterhemp fails in 2036")
                .doesNotContain("group 15", "Seed of burcucumber");
        assertThat(all(svg, "circle")).hasSize(SEASONS * (1 + 1 + 2 + 1 + 3));
    }

    @Test
    void scalesHoldTheirEnds() {
        YearScale seed = YearScale.powers(0, 2_000);
        assertThat(seed.y(seed.high(), 10, 90)).isEqualTo(10);
        assertThat(seed.y(0, 10, 90)).isEqualTo(90);
        assertThat(seed.y(1e-30, 10, 90)).isEqualTo(90);
        assertThat(YearScale.money(120, 640).low()).isZero();
        assertThat(YearScale.money(-120, 640).low()).isLessThanOrEqualTo(-120);
        assertThat(YearScale.percent().ticks()).containsExactly(0.0, 50.0, 100.0);
    }
}
