package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.Figures;
import plumbrow.science.checks.Checks;
import plumbrow.science.safety.EverydayDose;

@DisplayName("The list of sources, and what cites it")
class SourcesTest {
    private static final Path ROOT = Path.of("..");

    /** "weeds.md 6.4", "x.md section 2", "safety-and-law.md G3": a section of notes that no reader has. */
    private static final Pattern NOTE = Pattern.compile("[a-z][a-z-]*\\.md,? (?:sections? )?(?:§ ?)?[A-Z]?\\d");

    @Test
    @DisplayName("Every key that a figure or a check cites is in the list, and nothing in the list is cited by none")
    void allCitedAndAllKnown() {
        Set<String> cited = Stream.of(
                        Figures.all().stream().map(figure -> figure.cited()),
                        Figures.all().stream()
                                .flatMap(figure -> figure.examples().stream())
                                .map(example -> example.cited()),
                        EverydayDose.ALL.stream().map(dose -> dose.cited()),
                        Checks.listed().stream().map(check -> check.source()))
                .flatMap(texts -> texts)
                .flatMap(text -> Sources.in(text).stream())
                .map(Source::key)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(Sources.all()).extracting(Source::key).isSorted();
        assertThat(Sources.all())
                .extracting(Source::key)
                .filteredOn(key -> !cited.contains(key))
                .isEmpty();
    }

    @Test
    @DisplayName("A key that is in no list is an error of its author")
    void unknownKey() {
        assertThatThrownBy(() -> Sources.full("data of [nobody-1900]"))
                .hasMessage("sources.csv has no source nobody-1900");
    }

    @Test
    @DisplayName("A person reads the source in full, or by author and year beside the list")
    void writtenOut() {
        assertThat(Sources.full("as in [gustafson-1989], bands"))
                .isEqualTo(
                        "as in Gustafson 1989, Groundwater ubiquity score: a simple method for assessing pesticide"
                                + " leachability, Environ. Toxicol. Chem. 8:339-357; bands: npic.orst.edu/envir/gus.html, bands");
        assertThat(Sources.brief("as in [gustafson-1989], bands")).isEqualTo("as in Gustafson 1989, bands");
        assertThat(Sources.brief("[40-cfr-156.62]")).isEqualTo("40 CFR 156.62: toxicity categories");
        assertThat(Sources.full("[49-cfr-171.8]"))
                .isEqualTo("US DOT, 49 CFR 171.8: definitions (hazardous substance), ecfr.gov");
    }

    @Test
    @DisplayName("A row with a fault is said by row and column")
    void faults() {
        List<Trouble> troubles = new ArrayList<>();
        String head = "key,author,year,title,about,where,status\n";
        assertThat(Sources.read(
                        head + "nagy-1987,Nagy,1987,Food,,,memory\nnagy-1987,Nagy,1987,Food,,,memory\nNagy,,,,,,seen\n",
                        troubles))
                .hasSize(1);
        assertThat(troubles.stream().map(Trouble::sentence))
                .containsExactly(
                        "sources.csv row 3, key: found 'nagy-1987'; expected a key of its own, in small letters, figures, dots and hyphens.",
                        "sources.csv row 4, key: found 'Nagy'; expected a key of its own, in small letters, figures, dots and hyphens.",
                        "sources.csv row 4, author: found ''; expected who wrote or published it.",
                        "sources.csv row 4, title: found ''; expected either the title as printed or what it is about.",
                        "sources.csv row 4, status: found 'seen'; expected verified or memory.");
    }

    @Test
    @DisplayName("Nothing in code, data, tests or manual refers to a section of notes that are not here")
    void noNotes() throws IOException {
        Set<String> found = new TreeSet<>();
        for (String part :
                List.of("science", "advice", "documents", "app", "bench", "docs", "README.md", "CHANGELOG.md")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(part))) {
                files.filter(SourcesTest::isText).forEach(file -> notes(file, found));
            }
        }
        assertThat(found).isEmpty();
    }

    private static boolean isText(Path file) {
        String name = file.toString();
        return Files.isRegularFile(file)
                && !name.contains("/target/")
                && !name.endsWith("SourcesTest.java")
                && name.matches(".*\\.(java|jte|csv|txt|md|properties|css|js|sql|py)");
    }

    private static void notes(Path file, Set<String> found) {
        try (Stream<String> lines = Files.lines(file)) {
            lines.filter(line -> NOTE.matcher(line).find())
                    .forEach(line -> found.add(ROOT.relativize(file) + ": " + line.strip()));
        } catch (IOException | UncheckedIOException unreadable) {
            // bytes that are no text, such as a made file of another encoding, cite nothing
        }
    }
}
