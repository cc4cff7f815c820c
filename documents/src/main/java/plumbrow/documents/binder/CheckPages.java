package plumbrow.documents.binder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.documents.binder.Html.Column;
import plumbrow.documents.picture.Markup;
import plumbrow.science.figure.Numbers;

/** The pages of a check: the whole farm on the first, then a part for each field. */
final class CheckPages {
    private CheckPages() {}

    static String html(SeasonCheck check) {
        String title = "Check of the " + check.season().year() + " season";
        Html html = new Html();
        html.markup("<html lang=\"en-US\"><head>").element("title", title);
        html.markup("<meta name=\"subject\" content=\"What the checks find, as of "
                + check.season().asOf() + "\"/>");
        html.markup("<meta name=\"author\" content=\""
                + Markup.escape(check.season().adviser()) + "\"/>");
        html.open("style").markup(style()).close("style");
        html.open("bookmarks").markup(bookmark("Whole farm", "whole"));
        for (int i = 0; i < check.fields().size(); i++) {
            html.markup(bookmark(check.fields().get(i).name(), "field-" + (i + 1)));
        }
        html.close("bookmarks").close("head").open("body");
        cover(html, check, title);
        for (int i = 0; i < check.fields().size(); i++) {
            field(html, check, check.fields().get(i), "field-" + (i + 1));
        }
        return html.close("body").close("html").toString();
    }

    private static String bookmark(String name, String id) {
        return "<bookmark name=\"" + Markup.escape(name) + "\" href=\"#" + id + "\"/>";
    }

    private static void cover(Html html, SeasonCheck check, String title) {
        html.element("div", "head", title);
        html.element(
                "div",
                "foot",
                "As of " + check.season().asOf() + ", by " + check.season().adviser());
        html.markup("<div id=\"whole\">").element("h1", title);
        html.element("p", "lead", check.sentence());
        html.element(
                "p",
                "A program stands where its worst finding stands. Unknown means that nobody has looked it up; it is never "
                        + "clear.");
        List<Column> columns = new ArrayList<>(
                List.of(Column.words("field", 20), Column.words("program", 32), Column.words("status", 16)));
        for (Standing standing : Standing.ofFindings()) {
            columns.add(Column.figure(standing.word() + ", findings", 8));
        }
        html.table("plain", columns);
        for (ProgramCheck program : check.programs()) {
            html.open("tr")
                    .cell(program.field().name())
                    .cell(program.program().name())
                    .open("td")
                    .standing(program.standing())
                    .close("td");
            for (Standing standing : Standing.ofFindings()) {
                html.figure(Numbers.fixed(program.count(standing), 0));
            }
            html.close("tr");
        }
        html.endTable();
        matters(html, check.matters());
        acrossLines(html, check.acrossLines());
        lookUps(html, check.lookUps());
        html.element("h2", "Before anything is bought or put on");
        html.list(StandingCautions.WHO_DECIDES);
        html.element("h2", "Who to call");
        html.list(StandingCautions.WHO_TO_CALL);
        html.close("div");
    }

    /** Every matter of the farm in a line, under what it asks. */
    private static void matters(Html html, List<Matter> matters) {
        for (MatterKind kind : MatterKind.values()) {
            List<String> lines = matters.stream()
                    .filter(matter -> matter.kind() == kind)
                    .map(Matter::line)
                    .toList();
            if (!lines.isEmpty()) {
                html.element("h2", kind.words());
                html.list(lines);
            }
        }
    }

    private static void acrossLines(Html html, List<AcrossLine> lines) {
        if (lines.isEmpty()) {
            return;
        }
        html.element("h2", "Lawful on one side of a line, barred on the other");
        html.table(
                "plain",
                List.of(
                        Column.words("product", 18),
                        Column.words("field", 18),
                        Column.words("it lies in", 26),
                        Column.words("status", 13),
                        Column.words("why", 25)));
        for (AcrossLine line : lines) {
            for (AcrossLine.Place place : line.places()) {
                html.open("tr")
                        .cell(line.product())
                        .cell(place.field())
                        .cell(place.lies())
                        .open("td")
                        .standing(place.standing())
                        .close("td")
                        .cell(place.finding().says())
                        .close("tr");
            }
        }
        html.endTable();
    }

    private static void lookUps(Html html, List<LookUp> lookUps) {
        if (lookUps.isEmpty()) {
            return;
        }
        html.element("h2", "What to look up, and where");
        html.table(
                "plain",
                List.of(
                        Column.figure("settles, findings", 10),
                        Column.words("what for", 26),
                        Column.words("where", 18),
                        Column.words("what to do", 46)));
        for (LookUp one : lookUps) {
            html.open("tr")
                    .figure(Numbers.fixed(one.settles(), 0))
                    .cell(one.about())
                    .cell(one.where().words())
                    .cell(one.ask())
                    .close("tr");
        }
        html.endTable();
    }

    private static void field(Html html, SeasonCheck check, Field field, String id) {
        html.markup("<div class=\"part\" id=\"" + id + "\">");
        html.element("div", "head", field.name());
        html.element("h1", field.name());
        html.element(
                "p",
                "quiet",
                Numbers.fixed(field.acres(), 1) + " ac of " + field.crop().word() + ", " + field.county() + " County, "
                        + field.state() + ".");
        check.programs(field).forEach(program -> program(html, program));
        html.close("div");
    }

    private static void program(Html html, ProgramCheck program) {
        html.open("h2")
                .words(program.program().name() + ": ")
                .standing(program.standing())
                .close("h2");
        List<Matter> matters = program.matters();
        for (MatterKind kind : MatterKind.values()) {
            List<Finding> findings = matters.stream()
                    .filter(matter -> matter.kind() == kind)
                    .flatMap(matter -> matter.findings().stream())
                    .toList();
            if (!findings.isEmpty()) {
                html.element("h3", kind.words());
                findings(html, findings);
            }
        }
        String clear = program.findings().stream()
                .filter(finding -> finding.standing() == Standing.CLEAR)
                .map(Finding::gate)
                .distinct()
                .collect(Collectors.joining(", "));
        html.element("p", "quiet", clear.isEmpty() ? "Nothing is clear here." : "Clear: " + clear + ".");
    }

    private static void findings(Html html, List<Finding> findings) {
        html.table(
                "plain",
                List.of(
                        Column.words("status", 13),
                        Column.words("what it says, and what would clear it", 37),
                        Column.figure("found", 10),
                        Column.figure("limit", 10),
                        Column.figure("apart", 10),
                        Column.words("where it stands", 20)));
        for (Finding finding : findings) {
            html.open("tr").open("td").standing(finding.standing()).markup("<br/>");
            html.element("span", "quiet", finding.gate()).close("td");
            html.open("td").words(finding.subject() + ": " + finding.says());
            if (!finding.clears().isBlank()) {
                html.markup("<br/>").element("b", finding.clears());
            }
            Double apart = finding.distance().isPresent() ? finding.distance().getAsDouble() : null;
            html.close("td")
                    .figure(value(finding.measured(), finding.unit()))
                    .figure(value(finding.limit(), finding.unit()))
                    .figure(value(apart, finding.unit()))
                    .cell(finding.source().isBlank() ? "not read yet" : finding.source())
                    .close("tr");
        }
        html.endTable();
    }

    private static String value(@Nullable Double value, String unit) {
        return value == null ? "—" : Numbers.read(value, unit);
    }

    private static String style() {
        try (InputStream in = CheckPages.class.getResourceAsStream("check.css")) {
            if (in == null) {
                throw new IllegalStateException("check.css is missing from this installation");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
