package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Figure;

@DisplayName("Figures are found by the words of a question")
class FigureSearchTest {
    private static final int NEAR = 3;

    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "How many jugs until I must report a spill? | spill",
                "how much residual is left | residual-left",
                "how many bags of seed do I need | seed-units",
                "how many sacks | seed-units",
                "how much extra yield pays for the spray | break-even-gain",
                "how many acres of refuge | refuge-acres",
                "how many tank loads for 137 acres | loads",
                "when can my crew go back into the field | reentry-end",
                "REI | reentry-end",
                "EVPI | perfect-information",
                "PPE | handler-equipment",
                "GDD | degree-days",
                "CVaR | tail-shortfall",
                "LD50 | half-lethal-ratio",
                "is half a rate good enough | rate-margin",
                "should I replant the corn | replant-net",
                "how many strips does my trial need | replicates-needed",
                "is it dangerous for honeybees | bee-exposure",
                "how fast may I drive | spray-speed",
                "how deep does the field cultivator mix the herbicide | incorporation",
                "when do I spray soybean aphids | aphid-threshold",
                "will the herbicide hurt next year's crop | days-to-safe-residue",
                "how poisonous is it against caffeine | half-lethal-ratio",
                "how far does it drift onto the neighbor | neighbour-dose",
                "what order do I mix the tank | mixing-order",
                "how much AMS | water-conditioner",
                "is it too windy or dry for small droplets | delta-t",
                "when does the sun set | sun-times",
                "is it cheaper to save my own seed | saved-seed-cost",
                "will it leach into the well | leaching-score",
                "what does waiting to spray the weeds cost | post-delay-loss",
                "how soon will weeds be resistant | resistance-years",
                "do I need placards on the truck | placard",
                "which nozzle for 15 gallons | nozzle-flow"
            })
    void everydayQuestion(String question, String id) {
        List<String> found =
                FigureSearch.find(question).stream().map(Figure::id).limit(NEAR).toList();
        assertThat(found).contains(id);
    }

    @Test
    @DisplayName("The last word may be unfinished, an earlier one not")
    void whileTyping() {
        assertThat(FigureSearch.find("refu")).extracting(Figure::id).contains("refuge-acres", "refuge-band");
        assertThat(FigureSearch.find("node inj")).extracting(Figure::id).contains("rootworm-break-even");
        assertThat(FigureSearch.find("Refuge!")).isEqualTo(FigureSearch.find("refuge"));
    }

    @Test
    @DisplayName("Blank gives all, unknown words none, words that carry nothing none")
    void ends() {
        assertThat(FigureSearch.find(" ")).isEqualTo(Figures.all());
        assertThat(FigureSearch.find("zzz")).isEmpty();
        assertThat(FigureSearch.find("how many do I")).isEmpty();
        assertThat(FigureSearch.find("?")).isEmpty();
    }

    @Test
    @DisplayName("Each figure is found by its own question, and first or second by its name")
    void itself() {
        for (Figure figure : Figures.all()) {
            assertThat(FigureSearch.find(figure.question())).contains(figure);
            assertThat(FigureSearch.find(figure.id().replace('-', ' '))).contains(figure);
        }
    }
}
