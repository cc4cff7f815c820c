package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.book.Book;
import plumbrow.app.demo.DemoPapers;

@SuppressWarnings("NullAway.Init")
class PapersCommandTest {
    @TempDir
    static Path shed;

    private static List<Path> papers;
    private static Path sheet;
    private static Path label;

    @TempDir
    Path folder;

    @BeforeAll
    static void print() throws IOException {
        papers = DemoPapers.writeTo(shed.resolve("papers"));
        sheet = papers.get(0);
        label = papers.get(1);
    }

    @Test
    void aCardSaysWhatMattersAndPrintsOnOnePage() throws IOException {
        String out = plumbrow("card", sheet, "--label", label, "--container", "2.5 gal", "--as-of", "2026-11-25")
                .good()
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .contains("Ironweir 4L, as of 2026-11-25", "chemical-resistant apron", "1-800-222-1222")
                .contains("Beside caffeine: about 7.5 times the dose", "Atrazine in a container of 2.5 gal: 9.99 lb")
                .contains("no federal reportable quantity found for these names")
                .contains("CAUTION: the acute values agree", "The current label is the law");
        Path pdf = folder.resolve("card.pdf");
        assertThat(plumbrow("card", sheet, pdf, "--as-of", "2026-11-25").good().out())
                .contains("The card of Ironweir 4L is in");
        assertThat(new String(Files.readAllBytes(pdf), 0, 5, StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
    }

    @Test
    void theCardAsJsonHasPagesAndWords() {
        var json = plumbrow("card", sheet, "--json", "--as-of", "2026-11-25")
                .good()
                .json();
        assertThat(json.get("product").stringValue()).isEqualTo("Ironweir 4L");
        var name = json.get("sections")
                .valueStream()
                .flatMap(section -> section.get("lines").valueStream())
                .filter(line -> line.get("about").stringValue().equals("Product name"))
                .findFirst()
                .orElseThrow();
        assertThat(name.get("origins").get(0).get("page").intValue()).isEqualTo(1);
        assertThat(name.get("origins").get(0).get("words").stringValue()).contains("Ironweir 4L");
        assertThat(name.get("origins").get(0).get("marks").size()).isPositive();
    }

    @Test
    void whatCantBeCardedIsASentence() throws IOException {
        plumbrow("card", label).refused("does not read as a safety sheet");
        plumbrow("card", sheet, "--label", sheet).refused("does not read as a label");
        plumbrow("card", sheet, "--container", "much").refused("expected a volume or a weight more than 0");
        plumbrow("card", sheet, "out.doc").refused("ends in .pdf");
        plumbrow("card", folder.resolve("none.pdf")).refused("There is no file");
        Path other = Files.writeString(folder.resolve("letter.txt"), "Dear neighbour, the fence is down.");
        plumbrow("card", other).refused("neither as a safety sheet");
    }

    @Test
    void aFolderComesInIsPairedAndNeverTwice() throws IOException {
        Path book = SmallBook.of(folder.resolve("farm.book"));
        Path heap = Files.createDirectory(folder.resolve("heap"));
        for (Path each : papers) {
            Files.copy(each, heap.resolve(each.getFileName()));
        }
        Files.writeString(heap.resolve("broken.pdf"), "%PDF-1.7 cut off");
        Typed first = plumbrow("papers", "add", heap, "--book", book);
        assertThat(first.code()).isZero();
        assertThat(first.out()).contains("4 papers taken in, 0 there already, 1 could not be read.");
        assertThat(first.err()).contains("broken.pdf is broken or cut off");
        Typed again = plumbrow("papers", "add", heap, "--book", book);
        assertThat(again.out()).contains("0 papers taken in, 4 there already");

        assertThat(plumbrow("papers", "list", "--book", book, "--as-of", "2026-11-25")
                        .good()
                        .out())
                .contains("2 products", "Ironweir 4L", "Hartsedge G", "no label", "2 safety sheets: the newest counts");
        var json = plumbrow("papers", "list", "--book", book, "--json").good().json();
        assertThat(json.get("papers").size()).isEqualTo(4);
        assertThat(json.get("papers").get(0).get("sha256").stringValue()).hasSize(64);
        assertThat(plumbrow("book", "check", "--book", book).good().out()).contains("is whole");
        try (Book opened = Book.open(book)) {
            int number = opened.papers().get(0).number();
            String name = opened.papers().get(0).paper().fileName();
            assertThat(opened.paperFile(number)).hasValue(Files.readAllBytes(heap.resolve(name)));
        }
    }

    @Test
    void revisionsAreComparedFromFilesOrFromTheBook() {
        Path old = shed.resolve("papers/hartsedge-g-sheet-2022.pdf");
        Path now = shed.resolve("papers/hartsedge-g-sheet-2026.pdf");
        String out = plumbrow("papers", "compare", old, now).good().out().replaceAll("\\s+", " ");
        assertThat(out)
                .contains("− 2022-06-02", "+ 2026-05-12", "7.8 mg/kg", "4.5 mg/kg", "respirator approved for dust")
                .doesNotContain("Terbufos, CAS");
        Path book = SmallBook.of(folder.resolve("farm.book"));
        plumbrow("papers", "add", old, now, "--book", book).good();
        var json = plumbrow("papers", "compare", "1", "2", "--book", book, "--json")
                .good()
                .json();
        assertThat(json.get("changes").size()).isGreaterThan(2);
        plumbrow("papers", "compare", "1", "7", "--book", book).refused("has no paper 7");
        plumbrow("papers", "compare", label, now).refused("only sheets are compared");
    }

    @Test
    void nothingToDoIsASentence() {
        Path book = SmallBook.of(folder.resolve("farm.book"));
        plumbrow("papers").refused("add FOLDER, list, confirm LABEL, or compare");
        plumbrow("papers", "add", folder, "--book", book).refused("There is no PDF");
        assertThat(plumbrow("papers", "list", "--book", book).good().out()).contains("holds no papers yet");
    }

    @Test
    void labelValuesAreListedAndDecided() {
        Path book = SmallBook.of(folder.resolve("farm.book"), plumbrow.app.demo.DemoBook.season());
        plumbrow("row", "change", "terms", 11, "carrier_low_gal_ac=15", "--book", book)
                .good();
        plumbrow("papers", "add", sheet, label, "--book", book).good();
        assertThat(plumbrow("papers", "confirm", "2", "--book", book).good().out())
                .contains("Ironweir 4L:", "values wait for a look", "terms.corn.carrier-low-gal-ac", "differs from");
        plumbrow("papers", "confirm", "2", "--at", "terms.corn.rei-hours", "--book", book)
                .refused("say both --at");
        plumbrow("papers", "confirm", "2", "--at", "x", "--do", "bless", "--by", "V", "--book", book)
                .refused("expected one of confirm, correct");
        plumbrow("papers", "confirm", "2", "--at", "x", "--do", "confirm", "--by", "V", "--book", book)
                .refused("has no value 'x'");
        plumbrow("papers", "confirm", "1", "--book", book).refused("is not a label");
        plumbrow("papers", "confirm", "7", "--book", book).refused("has no paper 7");
        String carrier = "terms.corn.carrier-low-gal-ac";
        plumbrow("papers", "confirm", "2", "--at", carrier, "--do", "confirm", "--by", "R. Voss", "--book", book)
                .good();
        try (Book opened = Book.open(book)) {
            var use = opened.latestSeason()
                    .orElseThrow()
                    .shelf()
                    .labels()
                    .terms("Ironweir 4L", plumbrow.advice.field.Crop.CORN)
                    .orElseThrow();
            assertThat(use.carrierLowGalPerAcre()).isEqualTo(10);
            assertThat(use.source()).contains("invented label", "page 1, confirmed by R. Voss on");
            var written = opened.latestWritten().orElseThrow().shelf().labels();
            assertThat(written.terms("Ironweir 4L", plumbrow.advice.field.Crop.CORN)
                            .orElseThrow()
                            .carrierLowGalPerAcre())
                    .isEqualTo(15);
            assertThat(opened.check()).isEmpty();
        }
        var json = plumbrow("papers", "confirm", "2", "--book", book, "--json")
                .good()
                .json();
        assertThat(json.get("product").stringValue()).isEqualTo("Ironweir 4L");
    }
}
