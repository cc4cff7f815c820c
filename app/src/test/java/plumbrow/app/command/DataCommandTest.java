package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.science.reference.ReferenceSet;
import plumbrow.science.reference.Substance;
import plumbrow.science.reference.Substances;

class DataCommandTest {
    private static final String OWN = String.join(",", ReferenceSet.EFFICACY.columns()) + "\n"
            + "corn,pre-emergence,atrazine,5,velvetleaf,Abutilon theophrasti,G,\"E G F P N, key of our guide\",80,89,,our"
            + " county guide,2026,,practice\n";

    @Test
    void theDataThatComeWithItAreSound() {
        assertThat(plumbrow("data", "check").good().out())
                .contains("Nothing is wrong with the data", "from memory", "efficacy on weeds", "Sources disagree");
        var json = plumbrow("data", "check", "--json").good().json();
        assertThat(json.get("clean").booleanValue()).isTrue();
        assertThat(json.get("sets").size()).isEqualTo(ReferenceSet.values().length);
        assertThat(json.get("sets").get(0).get("memory").intValue()).isPositive();
    }

    @Test
    void anAdvisersOwnGuideIsReadInTheSameColumns(@TempDir Path folder) throws IOException {
        Path guide = Files.writeString(folder.resolve("guide.csv"), "\uFEFF" + OWN);
        assertThat(plumbrow("data", "check", guide).good().out()).contains("Nothing is wrong", "own guide");

        Files.writeString(guide, OWN.replace(",80,89,", ",60,89,").replace(",5,", ",five,"));
        Typed found = plumbrow("data", "check", guide);
        assertThat(found.code()).isEqualTo(2);
        assertThat(found.out().replaceAll("\\s+", " "))
                .contains("One thing is wrong", "row 2, group: found 'five'; expected site-of-action numbers");
    }

    @Test
    void aGuideThatCantBeReadIsOneSentence(@TempDir Path folder) throws IOException {
        plumbrow("data", "check", folder.resolve("none.csv")).refused("There is no file");
        Path latin = folder.resolve("latin.csv");
        Files.write(latin, "año".getBytes(StandardCharsets.ISO_8859_1));
        plumbrow("data", "check", latin).refused("is not UTF-8 text");
        plumbrow("data", "check", folder).refused("can't be read");
    }

    @Test
    void anIngredientShowsEveryValueAndMarksWhatIsNotVerified() {
        String out = plumbrow("data", "show", "Atrazine").good().out();
        assertThat(out).contains("atrazine, herbicide, CAS 1912-24-9", "○ 60 d", "value from memory", "Unknown here");
        assertThat(plumbrow("data", "show", "1912-24-9").good().out()).isEqualTo(out);
        assertThat(plumbrow("data", "show", "chlorpyrifos").good().out()).contains("● 1 lb · CERCLA");
    }

    @Test
    void everyIngredientCanBeShownWithEveryValue() {
        for (Substance substance : Substances.all()) {
            var json =
                    plumbrow("data", "show", substance.name(), "--json").good().json();
            int values = 0;
            for (var property : json.get("properties")) {
                values += property.get("values").size();
            }
            assertThat(values).as(substance.name()).isEqualTo(substance.facts().size());
            plumbrow("data", "show", substance.name()).good();
        }
    }

    @Test
    void anUnknownNameIsNoVerdict() {
        plumbrow("data", "show", "atrazin").refused("which says nothing about it; did you mean atrazine?");
        plumbrow("data", "show", "zzz").refused("expected an ISO common name or a CAS number");
        plumbrow("data").refused("check, or show NAME");
    }
}
