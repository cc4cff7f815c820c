package plumbrow.documents.binder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordCheck;
import plumbrow.advice.records.RecordFact;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.records.Reentry;
import plumbrow.documents.binder.Html.Column;
import plumbrow.science.figure.Numbers;

/** Records on paper, for an inspector: each whole, with what corrects it, what it lacks, and the head of the chain. */
public final class RecordPaper {
    private RecordPaper() {}

    /** The records as PDF. */
    public static byte[] pdf(RecordExport export) {
        String pages = Typeface.printable(html(export));
        try {
            return PdfPages.print(pages, export.day(), Objects.hash(export.day(), pages.hashCode()))
                    .file();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static String html(RecordExport export) {
        Html html = new Html();
        html.markup("<html lang=\"en-US\">").open("head").element("title", "Application records");
        html.open("style").markup(style()).close("style").close("head").open("body");
        html.element("div", "foot", "Application records, head " + export.head());
        List<String> about = RecordSheets.about(export);
        html.element("h1", about.get(0));
        about.subList(1, about.size()).forEach(line -> html.element("p", line));
        if (export.records().isEmpty()) {
            html.element("p", "lead", "No record.");
        }
        export.records().forEach(kept -> record(html, export, kept));
        return html.close("body").close("html").toString();
    }

    private static void record(Html html, RecordExport export, KeptRecord kept) {
        html.open("div", "record");
        html.element(
                "h2",
                "Record " + kept.number() + ": " + kept.record().field() + ", "
                        + kept.record().date() + ", " + kept.record().words());
        if (!kept.counts()) {
            html.element("p", "lead", "Does not count: " + RecordFact.state(kept) + ".");
        }
        if (kept.corrects() != null) {
            html.element("p", "lead", "Corrects record " + kept.corrects() + ": " + kept.why());
        }
        html.table(
                "products",
                List.of(
                        Column.words("product", 26),
                        Column.words("EPA Reg. No.", 15),
                        Column.words("rate", 15),
                        Column.words("total", 15),
                        Column.words("restricted use", 10),
                        Column.words("REI, h", 9),
                        Column.words("PHI, d", 10)));
        for (RecordedProduct one : kept.record().products()) {
            html.open("tr")
                    .cell(one.product())
                    .cell(one.registration() == null ? "not written down" : one.registration())
                    .cell(Numbers.read(one.rate().value(), one.rate().unit().symbol()) + "/ac")
                    .cell(Numbers.read(one.total().value(), one.total().unit().symbol()))
                    .cell(one.restricted().word())
                    .cell(one.reentryHours() == null ? "not read" : String.valueOf(one.reentryHours()))
                    .cell(one.preHarvestDays() == null ? "not read" : String.valueOf(one.preHarvestDays()))
                    .close("tr");
        }
        html.endTable();
        RecordFact.of(kept.record()).stream()
                .collect(Collectors.groupingBy(RecordFact::group, LinkedHashMap::new, Collectors.toList()))
                .forEach((group, facts) -> html.open("p")
                        .element("strong", group + ". ")
                        .words(facts.stream()
                                        .map(fact -> fact.label() + ": " + fact.text())
                                        .map(text -> text.endsWith(".") ? text.substring(0, text.length() - 1) : text)
                                        .collect(Collectors.joining("; "))
                                + ".")
                        .close("p"));
        html.element("p", Reentry.of(kept.record()).sentence());
        RecordCheck check = RecordCheck.of(export.season(), kept);
        html.element(
                "p",
                check.sentence()
                        + (check.keepUntil() == null ? "" : " Keep it until " + check.keepUntil() + " at least."));
        html.element(
                "p",
                "quiet",
                "Written down by " + kept.who() + ", " + kept.writtenAt().truncatedTo(ChronoUnit.SECONDS)
                        + " (UTC). Lines of the log: "
                        + kept.lines().stream().map(String::valueOf).collect(Collectors.joining(", ")) + ".");
        html.close("div");
    }

    private static String style() {
        try (InputStream in = RecordPaper.class.getResourceAsStream("records.css")) {
            if (in == null) {
                throw new IllegalStateException("records.css is missing from this installation");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
