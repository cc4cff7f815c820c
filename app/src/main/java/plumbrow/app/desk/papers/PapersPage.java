package plumbrow.app.desk.papers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.documents.binder.AdviceSheet;
import plumbrow.documents.binder.Binder;

/** The binder to print, and the advice as a spreadsheet. */
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
    ResponseEntity<byte[]> binder() throws IOException {
        return file("binder", ".pdf", MediaType.APPLICATION_PDF, Binder::write);
    }

    @GetMapping("/advice.xlsx")
    ResponseEntity<byte[]> sheet() throws IOException {
        return file("advice", ".xlsx", XLSX, AdviceSheet::write);
    }

    private ResponseEntity<byte[]> file(String name, String ending, MediaType type, Writer writer) throws IOException {
        Season season = Asked.season(book);
        Advice advice = weighings.whole(season).advice();
        Path folder = Files.createTempDirectory("plumbrow");
        Path file = folder.resolve(name + ending);
        try {
            writer.write(season, advice, file);
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
