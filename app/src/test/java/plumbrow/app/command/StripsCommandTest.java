package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@SuppressWarnings("NullAway.Init")
class StripsCommandTest {
    private static final String SIX_PAIRS = """
            block,treatment,yield_bu_ac
            1,full,212.4
            1,half,205.0
            2,full,205.1
            2,half,199.8
            3,full,198.7
            3,half,196.2
            4,full,220.3
            4,half,209.1
            5,full,209.9
            5,half,206.6
            6,full,201.6
            6,half,192.3
            """;

    @TempDir
    Path folder;

    private Path file(String text) throws IOException {
        Path file = folder.resolve("strips.csv");
        return Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    private Typed analyse(String text, Object... more) throws IOException {
        Object[] words = new Object[7 + more.length];
        System.arraycopy(
                new Object[] {"strips", "analyse", file(text), "--crop", "corn", "--check", "half"}, 0, words, 0, 7);
        System.arraycopy(more, 0, words, 7, more.length);
        return plumbrow(words);
    }

    @Test
    @DisplayName("Six pairs: +6.5, 2.9 to 10.1, pays above 5.5 with .74716 (computed independently)")
    void sixPairs() throws IOException {
        String out = analyse(SIX_PAIRS, "--price", "4.00", "--cost", "full=22")
                .good()
                .out();
        assertThat(out)
                .contains("'full' against 'half': +6.5 bu/ac")
                .contains("+2.9 and +10.1")
                .contains("75 of 100");
        assertThat(out).contains("One season of one field");

        var json = analyse(SIX_PAIRS, "--price", "4.00", "--cost", "full=22", "--json")
                .json();
        assertThat(json.at("/compared/0/chance_of_paying").asDouble()).isCloseTo(.74716, within(1e-5));
        assertThat(json.at("/compared/0/p").asDouble()).isCloseTo(.0055424, within(1e-7));
    }

    @Test
    @DisplayName(
            "Weights are turned into yields at standard moisture; other headings are mapped; semicolons part cells")
    void weights() throws IOException {
        String text = """
                Rep;What;Pounds;moisture_pct;length_ft;width_ft
                1;full;4860;18.2;1320;20
                1;half;4700;18.2;1320;20
                2;full;4910;18.0;1320;20
                2;half;4800;18.1;1320;20
                3;full;5000;18.2;1320;20
                3;half;4790;18.3;1320;20
                """;
        var json = analyse(
                        text,
                        "--column",
                        "block=rep",
                        "--column",
                        "treatment=what",
                        "--column",
                        "weight_lb=POUNDS",
                        "--json")
                .json();
        // 4,860 lb at 18.2 % on 1,320 × 20 ft is 138.62 bu/ac
        assertThat(json.at("/compared/0/mean_bu_per_acre").asDouble()).isCloseTo(140.8, within(.5));
        assertThat(json.at("/compared/0/chance_of_paying").isNull()).isTrue();
    }

    @Test
    @DisplayName("Nasty files get a sentence, exit 2, nothing else")
    void nasty() throws IOException {
        analyse("").refused("expected a line of headings");
        analyse("block,treatment\n1,a\n").refused("yield_bu_ac");
        analyse("block,treatment,yield_bu_ac\n1,full,\"201,5\"\n").refused("Line 2 has '201,5'");
        analyse("block,treatment,yield_bu_ac\n1,full,201,5\n").refused("A comma in a number");
        analyse("block,treatment,yield_bu_ac\n1,full,201.5 bu\n").refused("no unit");
        analyse("block,treatment,yield_bu_ac\n1,full,-3\n").refused("from 0 to 1000");
        analyse("block,treatment,yield_bu_ac\n1,full,NaN\n").refused("from 0 to 1000");
        analyse("block,treatment,yield_bu_ac\n1,full,\n").refused("Line 2 has no yield");
        analyse("block,treatment,yield_bu_ac\n1,,5\n").refused("Line 2 has no treatment");
        analyse("block,block,treatment,yield_bu_ac\n").refused("stands twice");
        analyse("block,treatment,yield_bu_ac\n1,full,200\n1,half,190\n").refused("one strip");
        analyse(SIX_PAIRS.replace("half", "control")).refused("'half'");
        analyse(SIX_PAIRS, "--cost", "ful=3", "--price", "4").refused("'ful'");
        analyse(SIX_PAIRS, "--price", "0", "--cost", "full=3").refused("above 0");
        analyse(SIX_PAIRS, "--confidence", "2").refused("0.5 to 0.999");
        analyse(SIX_PAIRS, "--column", "weight=pounds").refused("There is no 'weight'");
        plumbrow("strips", "analyse", folder.resolve("none.csv"), "--crop", "corn", "--check", "a")
                .refused("could not be read");
        plumbrow("strips", "analyse", file(SIX_PAIRS), "--crop", "rye", "--check", "half")
                .refused("'rye'");
        plumbrow("strips").refused("layout");
    }

    @Test
    @DisplayName("Layout draws by lot and says what the trial can show")
    void layout() {
        String out = plumbrow("strips", "layout", "none", "half", "full", "--blocks=6", "--gain=5", "--spread=5.656854")
                .good()
                .out();
        assertThat(out).contains("block 6").contains("24 of 100").contains("23 blocks");
        plumbrow("strips", "layout", "none").refused("two to 100");
    }
}
