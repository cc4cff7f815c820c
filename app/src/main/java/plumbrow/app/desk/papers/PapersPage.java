package plumbrow.app.desk.papers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.documents.binder.AdviceSheet;
import plumbrow.documents.binder.Binder;
import plumbrow.documents.binder.CheckPaper;

/** The binder and the check to print, and the advice as a spreadsheet. */
@Controller
public class PapersPage {
    private static final MediaType XLSX =
            MediaType.parseMediaType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

    private final DeskBook book;
    private final Weighings weighings;

    public PapersPage(DeskBook book, Weighings weighings) {
        this.book = book;
        this.weighings = weighings;
    }

    @FunctionalInterface
    private interface Writer {
        void write(Season season, Advice advice, Path file);
    }

    @GetMapping("/binder.pdf")
    ResponseEntity<byte[]> binder(@RequestParam(defaultValue = "") String farm) throws IOException {
        return advised(farm, "binder", ".pdf", MediaType.APPLICATION_PDF, this::binder);
    }

    @GetMapping("/advice.xlsx")
    ResponseEntity<byte[]> sheet(@RequestParam(defaultValue = "") String farm) throws IOException {
        return advised(farm, "advice", ".xlsx", XLSX, AdviceSheet::write);
    }

    @GetMapping("/check.pdf")
    ResponseEntity<byte[]> checks(@RequestParam(defaultValue = "") String farm) throws IOException {
        Season season = Asked.season(book);
        List<Field> fields = Asked.fields(season, farm);
        return file(
                "check",
                ".pdf",
                MediaType.APPLICATION_PDF,
                season,
                file -> CheckPaper.write(SeasonCheck.of(season, fields), file));
    }

    @GetMapping("/fields/{name}/check.pdf")
    ResponseEntity<byte[]> check(@PathVariable String name) throws IOException {
        Season season = Asked.season(book);
        SeasonCheck check = SeasonCheck.of(season, List.of(Asked.field(season, name)));
        return file("check", ".pdf", MediaType.APPLICATION_PDF, season, file -> CheckPaper.write(check, file));
    }

    private void binder(Season season, Advice advice, Path file) {
        Binder.write(season, advice, "", book::weather, file);
    }

    private ResponseEntity<byte[]> advised(String farm, String name, String ending, MediaType type, Writer writer)
            throws IOException {
        Season season = Asked.season(book);
        Advice advice = weighings.advice(season, Asked.fields(season, farm));
        return file(name, ending, type, season, file -> writer.write(season, advice, file));
    }

    private static ResponseEntity<byte[]> file(
            String name, String ending, MediaType type, Season season, Consumer<Path> writer) throws IOException {
        Path folder = Files.createTempDirectory("plumbrow");
        Path file = folder.resolve(name + ending);
        try {
            writer.accept(file);
            return ResponseEntity.ok()
                    .contentType(type)
                    .header(
                            HttpHeaders.CONTENT_DISPOSITION,
                            ContentDisposition.attachment()
                                    .filename(name + "-" + season.year() + ending)
                                    .build()
                                    .toString())
                    .body(Files.readAllBytes(file));
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }
}
