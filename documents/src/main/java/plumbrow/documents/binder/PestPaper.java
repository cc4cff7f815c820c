package plumbrow.documents.binder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.pestpage.Coming;
import plumbrow.advice.pestpage.FailedSite;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.pestpage.PestWords;
import plumbrow.advice.pestpage.Threshold;
import plumbrow.documents.WholeFile;
import plumbrow.documents.picture.Markup;

/**
 * The page of a weed or insect on one sheet of US letter.
 *
 * Letters are made smaller, and of long lists of fields and products the last are left to the screen, until all stands on one
 * page. What fails, the two passes and the cautions are never cut.
 */
public final class PestPaper {
    private static final List<Setting> SETTINGS = List.of(
            new Setting(8.4, 40),
            new Setting(7.8, 40),
            new Setting(7.2, 40),
            new Setting(6.8, 14),
            new Setting(6.5, 8),
            new Setting(6.2, 5),
            new Setting(6, 2));

    /**
     * How large it is set.
     *
     * @param letterPt size of the letters [pt]
     * @param mostLines of a list that may be cut
     */
    private record Setting(double letterPt, int mostLines) {}

    private PestPaper() {}

    /**
     * Writes the page as PDF, in place of an older one of that name.
     *
     * @throws plumbrow.documents.FileTrouble if the file can't be written; an older one is then still as it was
     */
    public static void write(PestPage page, Path pdf) {
        byte[] file = print(page);
        WholeFile.write(pdf, out -> out.write(file));
    }

    /** The page as the bytes of a PDF. */
    public static byte[] print(PestPage page) {
        try {
            PdfPages.Printed printed = null;
            for (Setting setting : SETTINGS) {
                String pages = Typeface.printable(html(page, setting));
                printed = PdfPages.print(pages, page.asOf(), pages.hashCode());
                if (printed.pages() == 1) {
                    return printed.file();
                }
            }
            return Objects.requireNonNull(printed).file();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static String html(PestPage page, Setting setting) {
        Html html = new Html();
        String title = PestWords.capital(page.name());
        html.markup("<html lang=\"en-US\"><head>").element("title", title + ", " + page.year());
        html.markup("<meta name=\"subject\" content=\"" + Markup.escape(title + " on the fields of " + page.year())
                + "\"/>");
        html.open("style")
                .markup(style())
                .markup("body { font-size: " + setting.letterPt + "pt }")
                .close("style");
        html.close("head").open("body");
        html.element("div", "foot", page.cautions().get(0));
        html.element("h1", title);
        html.element("p", page.sentence());
        html.element("p", "quiet", "Season " + page.year() + ", as of " + page.asOf() + ".");
        html.markup("<table class=\"card\"><tr><td class=\"side\">");
        html.element("h2", PestWords.comingTitle(page));
        most(html, page.known(), setting, one -> coming(html, one));
        page.missing().forEach((lookUp, fields) -> unknown(html, String.join(", ", fields), lookUp));
        html.element("h2", "What it costs");
        if (page.pressing().isEmpty()) {
            unknown(html, "", PestWords.NOT_ON_FIELDS);
        }
        most(
                html,
                page.pressing(),
                setting,
                one -> line(html, one.field(), PestWords.pressing(one) + " " + one.says(), one.source()));
        html.element("h2", "Scouting");
        most(html, page.scouting(), setting, one -> line(html, "", one.says(), one.source()));
        html.element("h2", "From when on a treatment pays");
        if (page.thresholds().isEmpty()) {
            unknown(html, "", PestWords.NOT_ON_FIELDS);
        }
        most(html, page.thresholds(), setting, one -> threshold(html, one));
        html.element("h2", "To borrow from");
        if (page.alike().isEmpty()) {
            line(html, "", PestWords.nobodyAlike(page), "");
        }
        most(html, page.alike(), setting, one -> line(html, one.name(), one.says(), one.source()));
        html.markup("</td><td class=\"side right\">");
        html.element("h2", "Two passes");
        page.plans().forEach(plan -> {
            line(html, PestWords.capital(plan.crop().word()), plan.says(), "");
            line(html, "Before", PestWords.choice(plan.before()), "");
            line(html, "After", PestWords.choice(plan.after()), "");
        });
        html.element("h2", "What fails");
        page.failed().forEach(one -> failed(html, one));
        if (!page.unasked().isEmpty() || page.failed().isEmpty()) {
            unknown(html, "", PestWords.unasked(page));
        }
        html.element("h2", "What works on this shelf");
        if (page.works().isEmpty()) {
            unknown(html, "", PestWords.NOTHING_LABELLED);
        }
        most(html, page.works(), setting, one -> {
            if (one.meanPct() == null) {
                unknown(html, PestWords.product(one), one.source());
            } else {
                line(html, PestWords.product(one), PestWords.control(one), one.source());
            }
        });
        page.cautions().stream().skip(1).forEach(caution -> html.element("p", "caution", caution));
        html.markup("</td></tr></table>");
        return html.close("body").close("html").toString();
    }

    private static <T> void most(Html html, List<T> all, Setting setting, Consumer<T> each) {
        all.stream().limit(setting.mostLines).forEach(each);
        if (all.size() > setting.mostLines) {
            html.element("p", "quiet", "… and " + (all.size() - setting.mostLines) + " more on the screen.");
        }
    }

    private static void coming(Html html, Coming one) {
        line(html, one.field(), PestWords.days(one) + " " + String.join(" ", one.reserves()), one.source());
    }

    private static void threshold(Html html, Threshold one) {
        String missing = one.lookUp();
        if (missing != null) {
            unknown(html, one.field(), missing);
        } else {
            line(html, one.field(), PestWords.threshold(one), one.figure() + "; " + one.source());
        }
    }

    private static void failed(Html html, FailedSite one) {
        line(html, one.field(), PestWords.failed(one), one.source());
    }

    private static void line(Html html, String about, String says, String source) {
        paragraph(html, "line", about, says, source);
    }

    private static void unknown(Html html, String about, String says) {
        paragraph(html, "unknown", about.isEmpty() ? "Unknown" : about + ", unknown", says, null);
    }

    private static void paragraph(Html html, String style, String about, String says, @Nullable String source) {
        html.open("p", style);
        if (!about.isEmpty()) {
            html.element("b", about + ": ");
        }
        html.words(says);
        if (source != null && !source.isEmpty()) {
            html.words(" ").element("span", "from", source);
        }
        html.close("p");
    }

    private static String style() {
        try (InputStream in = PestPaper.class.getResourceAsStream("pest.css")) {
            if (in == null) {
                throw new IllegalStateException("pest.css is missing from this installation");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
