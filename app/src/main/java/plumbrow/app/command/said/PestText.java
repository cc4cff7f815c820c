package plumbrow.app.command.said;

import java.util.List;
import plumbrow.advice.pestpage.PestName;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.pestpage.PestWords;
import plumbrow.advice.pestpage.Threshold;
import plumbrow.science.figure.Step;

/** A weed or insect said in text. */
public final class PestText {
    private static final String IN = "  ";
    private static final String UNKNOWN = "unknown: ";

    private PestText() {}

    public static String of(PestPage page) {
        Paper paper = new Paper();
        paper.heading(PestWords.capital(page.name()) + ", " + page.year()).prose(page.sentence());
        paper.heading(PestWords.comingTitle(page));
        page.known()
                .forEach(one -> line(
                        paper,
                        one.field(),
                        PestWords.days(one) + " " + String.join(" ", one.reserves()),
                        one.source()));
        page.missing().forEach((lookUp, fields) -> line(paper, String.join(", ", fields), UNKNOWN + lookUp, ""));
        paper.heading("What it costs");
        if (page.pressing().isEmpty()) {
            paper.prose(IN, UNKNOWN + PestWords.NOT_ON_FIELDS);
        }
        page.pressing()
                .forEach(one -> line(paper, one.field(), PestWords.pressing(one) + " " + one.says(), one.source()));
        paper.heading("Scouting");
        page.scouting()
                .forEach(one -> line(
                        paper,
                        "",
                        one.says() + (one.figure() == null ? "" : " Figure: " + one.figure() + "."),
                        one.source()));
        paper.heading("From when on a treatment pays");
        if (page.thresholds().isEmpty()) {
            paper.prose(IN, UNKNOWN + PestWords.NOT_ON_FIELDS);
        }
        page.thresholds().forEach(one -> threshold(paper, one));
        paper.heading("What works on this shelf");
        if (page.works().isEmpty()) {
            paper.prose(IN, UNKNOWN + PestWords.NOTHING_LABELLED);
        }
        page.works().forEach(one -> line(paper, PestWords.product(one), PestWords.control(one), one.source()));
        paper.heading("What fails");
        page.failed().forEach(one -> line(paper, one.field(), PestWords.failed(one), one.source()));
        if (!page.unasked().isEmpty() || page.failed().isEmpty()) {
            paper.prose(IN, UNKNOWN + PestWords.unasked(page));
        }
        paper.heading("Two passes");
        page.plans().forEach(plan -> {
            line(paper, PestWords.capital(plan.crop().word()), plan.says(), "");
            paper.prose("    Before  ", PestWords.choice(plan.before()));
            paper.prose("    After   ", PestWords.choice(plan.after()));
        });
        paper.heading("To borrow from");
        if (page.alike().isEmpty()) {
            paper.prose(IN, PestWords.nobodyAlike(page));
        }
        page.alike().forEach(one -> line(paper, one.name(), one.says(), one.source()));
        paper.gap();
        page.cautions().forEach(caution -> paper.prose("Mind  ", caution));
        return paper.text();
    }

    /** The names that have a page. */
    public static String names(List<PestName> names) {
        Paper paper = new Paper();
        TextTable table = TextTable.empty().words("Pest").words("").words("Fields");
        names.forEach(one -> table.row(
                one.name(), one.kind().word(), one.fields().isEmpty() ? "none" : String.join(", ", one.fields())));
        return paper.table(table).text();
    }

    private static void threshold(Paper paper, Threshold one) {
        String missing = one.lookUp();
        if (missing != null) {
            line(paper, one.field(), UNKNOWN + missing, "");
            return;
        }
        line(paper, one.field(), PestWords.threshold(one) + " Figure: " + one.figure() + ".", one.source());
        one.steps().stream().map(Step::text).forEach(step -> paper.prose("      ", step));
    }

    private static void line(Paper paper, String about, String says, String source) {
        paper.prose(IN, (about.isEmpty() ? "" : about + ": ") + says + (source.isEmpty() ? "" : " [" + source + "]"));
    }
}
