package plumbrow.documents.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.documents.picture.StripPictureTest.all;
import static plumbrow.documents.picture.StripPictureTest.parse;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.EqualRule;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.InformationValue;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.SampleAdvice;
import plumbrow.documents.SampleSeason;
import plumbrow.documents.picture.DotStack.Dot;

class PicturePartsTest {
    @Test
    void dotsStandAtTheMiddleOfTheirShareAndStackWithinReach() {
        MarginPoints even = new MarginPoints(
                IntStream.rangeClosed(0, 50).mapToObj(i -> i * 20.0).toList());
        MoneyScale scale = new MoneyScale(0, 1000, 100, 0, 1000);
        List<Dot> apart = DotStack.of(even, scale, 10);
        assertThat(apart).extracting(Dot::x).startsWith(25.0, 75.0).endsWith(975.0);
        assertThat(DotStack.tallest(apart)).isEqualTo(1);
        List<Dot> paired = DotStack.of(even, scale, 60);
        assertThat(DotStack.tallest(paired)).isEqualTo(2);
        assertThat(paired).hasSize(20);
    }

    @Test
    void scaleHasRoundTicksAndHoldsItsEnds() {
        MoneyScale scale = MoneyScale.holding(-37, 612, 100, 500, 6);
        assertThat(scale.low()).isLessThanOrEqualTo(-37);
        assertThat(scale.high()).isGreaterThanOrEqualTo(612);
        assertThat(scale.ticks()).contains(0.0, 200.0, 400.0, 600.0);
        assertThat(scale.x(scale.low())).isEqualTo(100);
        assertThat(scale.x(scale.high())).isEqualTo(500);
    }

    @Test
    void aProgramKeepsItsColourWhenTheRanksTurn() {
        FieldAdvice field = SampleAdvice.home();
        FieldAdvice turned =
                StripPictureTest.field(IntStream.range(0, field.programs().size())
                        .mapToObj(i -> field.programs().get(field.programs().size() - 1 - i))
                        .toList());
        assertThat(field.programs())
                .allSatisfy(program -> assertThat(palette(turned).colour(program))
                        .isEqualTo(palette(field).colour(program)));
    }

    @Test
    void onEachFieldEveryProgramHasAColourOfItsOwn() {
        FieldAdvice[] fields = SampleAdvice.advice().fields().toArray(FieldAdvice[]::new);
        ProgramPalette palette = palette(fields);
        for (FieldAdvice field : fields) {
            assertThat(field.programs().stream().map(palette::colour)).doesNotHaveDuplicates();
        }
    }

    @Test
    void blackIsTheBaselineOfTheFieldAndNothingElse() {
        ProgramPalette palette = palette(SampleAdvice.advice().fields().toArray(FieldAdvice[]::new));
        for (FieldAdvice field : SampleAdvice.advice().fields()) {
            assertThat(field.programs())
                    .allSatisfy(program -> assertThat(palette.colour(program).equals("#000000"))
                            .isEqualTo(program.baseline()));
        }
    }

    static ProgramPalette palette(FieldAdvice... fields) {
        return ProgramPalette.of(Stream.of(fields)
                .map(field -> field.programs().stream()
                        .filter(program -> !program.baseline())
                        .map(WeighedProgram::name)
                        .toList())
                .toList());
    }

    @Test
    void whatIsWorthLessThanACentIsCountedAndNotDrawn() throws Exception {
        FieldAdvice home = SampleAdvice.home();
        List<InformationValue> worth = List.of(
                new InformationValue("a", "A", 1, 80, 1, "A."), new InformationValue("b", "B", 0.001, 0, 0, "B."));
        FieldAdvice field = new FieldAdvice(
                home.field(),
                "",
                100,
                1,
                home.programs(),
                home.baseline(),
                null,
                null,
                EqualRule.DEFAULT,
                "",
                "",
                "",
                null,
                List.of(),
                List.of(),
                worth,
                List.of(),
                List.of(),
                0,
                List.of());
        Element svg = parse(InformationPicture.svg(field, 360));
        assertThat(all(svg, "rect")).hasSize(1);
        assertThat(svg.getTextContent()).contains("1 more input is worth less than a cent an acre to know.");
    }

    @Test
    void theFourMarksDifferInShapeAndSayTheirWord() throws Exception {
        List<String> marks = Arrays.stream(Standing.values())
                .map(standing -> StandingMark.svg(standing, 16))
                .toList();
        assertThat(marks.stream().map(mark -> mark.replaceAll("(aria-label|<title>)[^>]*", "")))
                .doesNotHaveDuplicates();
        for (Standing standing : Standing.values()) {
            Element svg = parse(StandingMark.svg(standing, 16));
            assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                    .isEqualTo(standing.word());
        }
    }

    @Test
    void knowingBarsBeginAtZeroAndAreInProportion() throws Exception {
        Element svg = parse(InformationPicture.svg(SampleAdvice.home(), 900));
        List<Element> bars = all(svg, "rect");
        assertThat(bars).hasSize(3);
        assertThat(bars.stream().map(bar -> bar.getAttribute("x")).distinct()).hasSize(1);
        double first = Double.parseDouble(bars.get(0).getAttribute("width"));
        double second = Double.parseDouble(bars.get(1).getAttribute("width"));
        assertThat(second / first).isBetween(1.2 / 4.1 - 0.001, 1.2 / 4.1 + 0.001);
        assertThat(svg.getTextContent()).contains("$4.10/ac").contains("how hard rootworm presses, untreated");
    }

    @Test
    void bandsLieOnTheInputsAxisAndAreNamed() throws Exception {
        FieldAdvice home = SampleAdvice.home();
        ProgramPalette palette = ProgramPalette.of(SampleSeason.season());
        for (int width : new int[] {350, 720}) {
            Element svg = parse(BandsPicture.svg(home, palette, width));
            assertThat(svg.getAttribute("aria-label")).contains("Below $3.82/bu corn another program earns more.");
            assertThat(svg.getTextContent())
                    .contains("price received at harvest", "now about $4.20/bu", "Half rate in the furrow", "$3.82/bu")
                    .doesNotContain("attainable yield");
            // The band of the other program takes (3.82 − 2.61)/(6.40 − 2.61) of the axis.
            List<Double> widths = all(svg, "rect").stream()
                    .filter(rect -> rect.getAttribute("height").equals("4"))
                    .map(rect -> Double.parseDouble(rect.getAttribute("width")))
                    .toList();
            assertThat(widths).hasSize(2);
            assertThat(widths.get(0) / (widths.get(0) + widths.get(1)))
                    .isBetween(1.21 / 3.79 - 0.002, 1.21 / 3.79 + 0.002);
        }
    }

    @Test
    void knowingNothingIsSaidInWords() throws Exception {
        FieldAdvice home = SampleAdvice.home();
        FieldAdvice settled = new FieldAdvice(
                home.field(),
                home.grower(),
                10_000,
                1,
                home.programs(),
                home.baseline(),
                home.advised(),
                null,
                EqualRule.DEFAULT,
                "",
                "",
                "",
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                0,
                List.of());
        assertThat(parse(InformationPicture.svg(settled, 360)).getTextContent())
                .contains("No uncertain input by itself changes which program is best on this field.");
    }
}
