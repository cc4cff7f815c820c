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
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.app.desk.Asked;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.app.desk.door.NotHereException;
import plumbrow.app.desk.door.TooManyException;
import plumbrow.app.desk.fieldplan.PlansOfFields;
import plumbrow.app.desk.shelf.ShelfPapers;
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
    private final PlansOfFields plans;
    private final ShelfPapers papers;

    public PapersPage(DeskBook book, Weighings weighings, PlansOfFields plans, ShelfPapers papers) {
        this.book = book;
        this.weighings = weighings;
        this.plans = plans;
        this.papers = papers;
    }

    /** Which binder: of a farm, of fields, of a grower; all of the season where nothing is named. */
    @GetMapping("/binder")
    String choose(Model model) {
        model.addAttribute("view", BinderView.of(Asked.season(book)));
        return "binder";
    }

    @GetMapping("/binder.pdf")
    ResponseEntity<byte[]> binder(
            @RequestParam(defaultValue = "") String farm,
            @RequestParam(defaultValue = "") String grower,
            @RequestParam(defaultValue = "") List<String> field,
            @RequestParam(defaultValue = "false") boolean annex)
            throws IOException {
        Season season = Asked.season(book);
        List<Field> fields = ofOneGrower(season, farm, grower, field);
        List<FieldPlan> made = plans.of(season, fields);
        Binder.Contents contents = new Binder.Contents(
                season,
                made,
                papers.cards(season, Binder.products(season, made), season.asOf()),
                annex ? new Binder.Annex(weighings.advice(season, fields), book::weather) : null,
                book.head().text());
        return file("binder", ".pdf", MediaType.APPLICATION_PDF, season, file -> Binder.write(contents, file));
    }

    @GetMapping("/advice.xlsx")
    ResponseEntity<byte[]> sheet(
            @RequestParam(defaultValue = "") String farm,
            @RequestParam(defaultValue = "") String grower,
            @RequestParam(defaultValue = "") List<String> field)
            throws IOException {
        Season season = Asked.season(book);
        Advice advice = weighings.advice(season, ofOneGrower(season, farm, grower, field));
        return file("advice", ".xlsx", XLSX, season, file -> AdviceSheet.write(season, advice, file));
    }

    /** The fields meant: a file never holds the money of two growers. */
    private static List<Field> ofOneGrower(Season season, String farm, String grower, List<String> names) {
        names.forEach(name -> Asked.field(season, name));
        List<Field> fields = Asked.fields(season, farm).stream()
                .filter(one -> names.isEmpty() || names.contains(one.name()))
                .filter(one -> grower.isEmpty() || grower(season, one).equals(grower))
                .toList();
        List<String> growers =
                fields.stream().map(one -> grower(season, one)).distinct().toList();
        if (growers.size() > 1) {
            throw new TooManyException("A binder or spreadsheet holds the money of one grower, and these are fields of "
                    + String.join(", ", growers)
                    + ". Choose at /binder, or name a farm (?farm=…) or a grower (?grower=…).");
        }
        if (fields.isEmpty()) {
            throw new NotHereException("No field is meant by that; choose at /binder.");
        }
        return fields;
    }

    static String grower(Season season, Field field) {
        return season.farm(field.farm()).map(Farm::grower).orElse("");
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
