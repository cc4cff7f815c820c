package plumbrow.app.desk.ask;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbrow.advice.ask.TypicalAssumptions;
import plumbrow.advice.season.Season;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.rows.IncomingWorkbooks;
import plumbrow.app.desk.shown.Shown;
import plumbrow.documents.workbook.WorkbookFaults;
import plumbrow.documents.workbook.WorkbookReader;

/** A workbook that is dropped on the page, and the way to the demo. */
@Controller
public class DoorsPage {
    private final DeskBook book;
    private final DemoDesk demo;
    private final IncomingWorkbooks waiting;
    private final Clock clock;

    public DoorsPage(DeskBook book, DemoDesk demo, IncomingWorkbooks waiting, Clock clock) {
        this.book = book;
        this.demo = demo;
        this.waiting = waiting;
        this.clock = clock;
    }

    /** Opens the demo as a desk of its own, so that nothing invented comes into the book. */
    @PostMapping("/demo")
    String demo(Model model) {
        model.addAttribute("address", demo.address());
        return "demo";
    }

    /** Which assumptions are lacking, and the offer to put typical ones there. */
    @GetMapping("/typical")
    String lacking(Model model) {
        model.addAttribute("lacking", TypicalAssumptions.lacking(Asked.season(book)));
        return "typical";
    }

    /** Puts typical assumptions where a field has none, each marked so, so that it can be weighed. */
    @PostMapping("/typical")
    String typical() {
        Asked.season(book);
        By by = new By(null, "typical values where none were entered", By.Way.DESK, clock.instant());
        book.changeHeld(by, held -> TypicalAssumptions.filled(held.written()));
        return "redirect:/";
    }

    /** Takes in a workbook, whole or not at all; where the book has its year, what it would change is shown first. */
    @PostMapping("/workbook")
    String take(
            @RequestParam(name = "workbook", required = false) @Nullable List<MultipartFile> files,
            Model model,
            HttpServletResponse response) {
        try {
            Season season = read(files == null ? List.of() : files);
            boolean there = book.season()
                    .map(Season::year)
                    .filter(year -> year == season.year())
                    .isPresent();
            if (there) {
                return "redirect:/season/import/" + waiting.hold(season);
            }
            book.bring(season, clock.instant());
            return "redirect:/";
        } catch (NoFileException none) {
            return refused("No file was chosen; expected a workbook (.xlsx), or its sheets (.csv).", model, response);
        } catch (WorkbookFaults faults) {
            return refused(said(faults), model, response);
        } catch (MeanwhileException lacking) {
            return refused(
                    lacking.getMessage() + " Export the book, work on in that workbook and send it again.",
                    model,
                    response);
        } catch (IOException fault) {
            return refused("The file could not be read; send it again.", model, response);
        }
    }

    /** Nothing was chosen. */
    private static final class NoFileException extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private static final int MOST_FAULTS = 40;

    private static String said(WorkbookFaults faults) {
        List<String> first = faults.lines().stream().limit(MOST_FAULTS).toList();
        int more = faults.lines().size() - first.size();
        return String.join("\n", first) + (more > 0 ? "\nand " + more + " more." : "");
    }

    private String refused(String why, Model model, HttpServletResponse response) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return AskPage.doors(book, model, why);
    }

    private static Season read(List<MultipartFile> files) throws IOException {
        List<MultipartFile> given = files.stream()
                .filter(file -> !Shown.text(file.getOriginalFilename()).isBlank())
                .toList();
        if (given.isEmpty()) {
            throw new NoFileException();
        }
        Path folder = Files.createTempDirectory("plumbrow-workbook");
        try {
            List<Path> kept = new ArrayList<>();
            for (MultipartFile file : given) {
                Path to = folder.resolve(plain(Shown.text(file.getOriginalFilename())));
                file.transferTo(to);
                kept.add(to);
            }
            boolean one = kept.size() == 1
                    && kept.get(0).toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
            return WorkbookReader.read(one ? kept.get(0) : folder);
        } finally {
            empty(folder);
        }
    }

    /** The bare name of a file, without any folder. */
    private static String plain(String name) {
        String bare = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        String safe = bare.replaceAll("[^\\p{L}\\p{N}._ -]", "_");
        return safe.isBlank() || safe.startsWith(".") ? "workbook" + safe : safe;
    }

    private static void empty(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(folder);
        } catch (IOException left) {
            throw new UncheckedIOException(left);
        }
    }
}
