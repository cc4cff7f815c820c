package plumbrow.documents.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.SampleAdvice;

class StripPictureTest {
    private static String svg(FieldAdvice field, int widthPx) {
        return StripPicture.svg(field, PicturePartsTest.palette(field), widthPx);
    }

    @ParameterizedTest
    @ValueSource(ints = {280, 360, 640, 900})
    void everyMarkAndLabelLiesInsideThePicture(int width) throws Exception {
        for (FieldAdvice field : SampleAdvice.advice().fields()) {
            Element svg = parse(svg(field, width));
            double height = Double.parseDouble(svg.getAttribute("height"));
            for (Element text : all(svg, "text")) {
                double size = number(text, "font-size");
                double length = Lettering.width(
                        text.getTextContent(),
                        size,
                        text.getAttribute("font-weight").equals("bold"));
                double left = switch (text.getAttribute("text-anchor")) {
                    case "middle" -> number(text, "x") - length / 2;
                    case "end" -> number(text, "x") - length;
                    default -> number(text, "x");
                };
                assertThat(left).as(text.getTextContent()).isGreaterThanOrEqualTo(0);
                assertThat(left + length).as(text.getTextContent()).isLessThanOrEqualTo(width);
                assertThat(number(text, "y")).isBetween(size * 0.7, height);
            }
            for (Element dot : all(svg, "circle")) {
                assertThat(number(dot, "cx")).isBetween(0.0, (double) width);
            }
        }
    }

    @Test
    void twentyDotsForEachProgramOnOneScale() throws Exception {
        FieldAdvice field = SampleAdvice.home();
        Element svg = parse(svg(field, 900));
        assertThat(all(svg, "circle")).hasSize(20 * field.programs().size());
    }

    @Test
    void saysStandingAndOddsInWords() throws Exception {
        String text = parse(svg(SampleAdvice.home(), 900)).getTextContent();
        assertThat(text)
                .contains("advised, conditional")
                .contains("beats baseline 71 of 100")
                .contains("on average +$14/ac")
                .contains("on average −$12/ac")
                .contains("barred")
                .contains("unknown")
                .contains("baseline median $414/ac")
                .contains("$/ac");
    }

    @Test
    void tellsTheFindingToWhoeverCannotSeeIt() throws Exception {
        FieldAdvice field = SampleAdvice.home();
        Element svg = parse(svg(field, 360));
        assertThat(svg.getAttribute("role")).isEqualTo("img");
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                .startsWith(field.sentence())
                .contains("Half rate in the furrow (advised, conditional): mean $428/ac, median $428")
                .contains("beats the baseline in 71 of 100");
    }

    @ParameterizedTest
    @EnumSource(Standing.class)
    void barredAndUnknownAreHatchedAndHollowWithoutHelpOfColour(Standing standing) {
        String clear = strip(Standing.CLEAR);
        String svg = strip(standing);
        int moreLines = svg.split("<line", -1).length - clear.split("<line", -1).length;
        boolean hollow = svg.contains("fill=\"#ffffff\" stroke=\"#0072B2\"");
        assertThat(hollow).isEqualTo(!standing.advisable());
        assertThat(moreLines > 20).isEqualTo(!standing.advisable());
    }

    private static String strip(Standing standing) {
        return svg(field(List.of(SampleAdvice.program("One", standing, 400, 100, 0.5, 130))), 900);
    }

    @Test
    void hostileNamesStayText() throws Exception {
        String name = "<script>alert(1)</script> & \"quotes\" \u0001 🌽 " + "verylong".repeat(40);
        WeighedProgram program = SampleAdvice.program(name, Standing.CLEAR, 400, 100, 0.5, 130);
        String svg = svg(field(List.of(program)), 360);
        assertThat(svg).doesNotContain("<script").doesNotContain("\u0001");
        assertThat(parse(svg).getElementsByTagName("desc").item(0).getTextContent())
                .contains("<script>alert(1)</script> & \"quotes\" \uFFFD 🌽");
    }

    @Test
    void aProgramWithoutSpreadAndAFieldWithoutProgramsAreDrawn() throws Exception {
        WeighedProgram sure = SampleAdvice.program("Sure", Standing.CLEAR, 400, 1e-9, 0.5, 130);
        assertThat(all(parse(svg(field(List.of(sure)), 360)), "circle")).hasSize(20);
        assertThat(parse(svg(field(List.of()), 360)).getTextContent()).contains("No program has been entered");
    }

    @Test
    void samePictureEveryTime() {
        assertThat(svg(SampleAdvice.home(), 900)).isEqualTo(svg(SampleAdvice.home(), 900));
    }

    static FieldAdvice field(List<WeighedProgram> programs) {
        return SampleAdvice.of("Test", programs);
    }

    static Element parse(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        return document.getDocumentElement();
    }

    static List<Element> all(Element svg, String tag) {
        NodeList nodes = svg.getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
