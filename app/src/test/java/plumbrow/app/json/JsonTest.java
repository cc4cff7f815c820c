package plumbrow.app.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Boundary.Polygon;
import plumbrow.advice.field.Crop;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Protects;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.weighing.Band;
import plumbrow.advice.weighing.UncertainInput;
import plumbrow.app.SmallSeason;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Output;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Status;
import plumbrow.science.figure.Subject;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class JsonTest {
    private static final JsonMapper READER = new JsonMapper();

    private final Figure third = new Figure(
            "third",
            Subject.ECONOMICS,
            "What is a third of it?",
            List.of(),
            List.of(Input.number("cost_usd", "cost", "$", Range.POSITIVE, "10")),
            List.of(new Output("third_usd", "a third", "$", true)),
            "cost ÷ 3",
            "arithmetic",
            Status.COMPUTED,
            "any cost",
            List.of("A third is a third."),
            List.of(),
            (given, working) -> new Outputs()
                    .put("third_usd", working.step("third", "10 ÷ 3", given.number("cost_usd") / 3, "$"))
                    .put("word", "yes")
                    .put("list", new double[] {1, 0.1 + 0.2}));

    @Test
    void anAnswerKeepsTheContractOfFigures() {
        JsonNode json = READER.readTree(Json.of(third.answer(Map.of("cost_usd", "10"))));
        assertThat(json.propertyNames()).containsExactly("figure", "outputs", "working", "source", "cautions");
        assertThat(json.get("figure").stringValue()).isEqualTo("third");
        assertThat(json.get("outputs").get("third_usd").doubleValue()).isEqualTo(10.0 / 3);
        assertThat(json.get("outputs").get("word").stringValue()).isEqualTo("yes");
        assertThat(json.get("outputs").get("list").get(1).doubleValue()).isEqualTo(0.1 + 0.2);
        assertThat(json.get("working").get(0).stringValue()).isEqualTo("third = 10 ÷ 3 = 3.33333 $");
        assertThat(json.get("cautions").get(0).stringValue()).isEqualTo("A third is a third.");
    }

    @Test
    void aFindingIsItsWords() {
        Finding finding = new Finding(
                "setback",
                Protects.NEXT_CROP,
                Standing.UNKNOWN,
                "pass 2",
                "Nobody has looked.",
                null,
                40.0,
                "ft",
                "label",
                "x");
        assertThat(Json.of(finding)).isEqualTo("""
                {
                  "gate" : "setback",
                  "protects" : "the next crop",
                  "standing" : "unknown",
                  "subject" : "pass 2",
                  "says" : "Nobody has looked.",
                  "measured" : null,
                  "limit" : 40.0,
                  "unit" : "ft",
                  "source" : "label",
                  "clears" : "x",
                  "gap" : null,
                  "distance" : null
                }""");
    }

    @Test
    void aDistributionNamesItsFormAndKeysCarryUnits() {
        UncertainInput input = new UncertainInput(
                "price",
                "price",
                "$/bu",
                DoubtKind.YEAR,
                new Distribution.Pert(3, 4, 6),
                4.1,
                new Band(3.3, 4, 5),
                "market");
        JsonNode json = READER.readTree(Json.of(input));
        assertThat(json.get("distribution").toString())
                .isEqualTo("{\"form\":\"pert\",\"low\":3.0,\"likely\":4.0,\"high\":6.0}");
        assertThat(READER.readTree(Json.of(SmallSeason.of(2027).farms().get(0))).propertyNames())
                .containsExactly("name", "grower", "crop_share", "cost_share", "shares");
    }

    @Test
    void everyFormOfDistributionHasItsName() {
        for (Class<?> form : Distribution.class.getPermittedSubclasses()) {
            assertThat(Json.of(new DistributionHolder(sample(form))))
                    .as(form.getSimpleName())
                    .containsPattern(
                            "\"form\" : \"(number|pert|triangular|even|normal|weibull|price|factor|log-odds|past|chance)\"");
        }
    }

    @Test
    void aBoundaryIsGeoJson() {
        List<Point> ring =
                List.of(new Point(-93.5, 42), new Point(-93.4, 42), new Point(-93.4, 42.1), new Point(-93.5, 42));
        Boundary boundary = new Boundary(List.of(new Polygon(ring, List.of())));
        assertThat(READER.readTree(Json.of(new Holder(boundary))).get("value").toString())
                .isEqualTo("{\"type\":\"MultiPolygon\",\"coordinates\":"
                        + "[[[[-93.5,42.0],[-93.4,42.0],[-93.4,42.1],[-93.5,42.0]]]]}");
    }

    @Test
    void fixedListsAreTheirWords() {
        assertThat(List.of(FarmUnit.FL_OZ, Crop.CORN, Measure.LARVAE_PER_PLANT, Status.MEMORY))
                .extracting(JsonWords::of)
                .containsExactly("fl oz", "corn", "larvae per plant", "value from memory");
    }

    @Test
    void theSameSeasonGivesTheSameText() {
        String once = Json.of(SeasonSummary.of(SmallSeason.of(2027)));
        assertThat(Json.of(SeasonSummary.of(SmallSeason.of(2027)))).isEqualTo(once);
        JsonNode json = READER.readTree(once);
        assertThat(json.get("as_of").stringValue()).isEqualTo("2027-03-02");
        assertThat(json.get("acres").doubleValue()).isEqualTo(80);
        assertThat(json.get("fields").get(0).get("programs").toString())
                .isEqualTo("[\"seed alone\",\"half rate\",\"full rate\"]");
    }

    @Test
    void aFiguresPageLeavesOutItsCode() {
        JsonNode json = READER.readTree(Json.of(third));
        assertThat(json.propertyNames()).contains("id", "inputs", "formula").doesNotContain("model", "examples");
        assertThat(json.get("inputs").get(0).get("range").stringValue()).isEqualTo("more than 0");
        assertThat(Json.index(List.of(third))).contains("\"subject\" : \"Economics\"");
    }

    private record Holder(Boundary value) {}

    private record DistributionHolder(Distribution distribution) {}

    private static Distribution sample(Class<?> form) {
        return List.<Distribution>of(
                        new Distribution.Fixed(1),
                        new Distribution.Pert(1, 2, 3),
                        new Distribution.Triangular(1, 2, 3),
                        new Distribution.Even(1, 2),
                        new Distribution.Normal(1, 0.1),
                        new Distribution.Weibull(1, 0.1),
                        new Distribution.Lognormal(4, 0.2, 1),
                        new Distribution.Factor(1, 0.2),
                        new Distribution.LogOdds(0.5, 0.2),
                        new Distribution.Past(List.of(1.0, 2.0)),
                        new Distribution.Chance(0.5))
                .stream()
                .filter(form::isInstance)
                .findFirst()
                .orElseThrow();
    }
}
