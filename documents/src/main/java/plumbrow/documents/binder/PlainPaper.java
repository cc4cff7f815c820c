package plumbrow.documents.binder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Locale;

/**
 * Sets plain text as a PDF: the first line as a title, lines that begin with "SECTION" or stand in capitals as headings, lines
 * with tabs as rows of a table, everything else as paragraphs. For the invented papers of the demo.
 */
public final class PlainPaper {
    private static final String STYLE = """
            @page { size: letter; margin: 20mm 18mm }
            html, body { font-family: 'Liberation Sans'; font-size: 10pt; line-height: 1.35; margin: 0 }
            h1 { font-size: 17pt; margin: 0 0 8pt 0 } h2 { font-size: 11pt; margin: 10pt 0 3pt 0; page-break-after: avoid }
            p { margin: 0 0 3pt 0 } table { border-collapse: collapse; margin: 3pt 0 }
            td { padding: 1pt 22pt 1pt 0 }
            """;

    private PlainPaper() {}

    /** The text as a PDF with this day in it. */
    public static byte[] print(String text, LocalDate day) {
        Html html = new Html();
        String[] lines = text.strip().split("\\R", -1);
        html.markup("<html lang=\"en-US\"><head>").element("title", lines[0]);
        html.markup("<meta name=\"subject\" content=\"An invented paper\"/>");
        html.open("style").markup(STYLE).close("style").close("head").open("body");
        html.element("h1", lines[0]);
        boolean table = false;
        for (int i = 1; i < lines.length; i++) {
            boolean row = lines[i].contains("\t");
            if (row != table) {
                html.markup(row ? "<table>" : "</table>");
                table = row;
            }
            if (row) {
                html.open("tr");
                for (String cell : lines[i].split("\t", -1)) {
                    html.cell(cell);
                }
                html.close("tr");
            } else if (!lines[i].isBlank()) {
                html.element(heading(lines[i]) ? "h2" : "p", lines[i]);
            }
        }
        html.markup(table ? "</table>" : "").close("body").close("html");
        try {
            String pages = Typeface.printable(html.toString());
            return PdfPages.print(pages, day, pages.hashCode()).file();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static boolean heading(String line) {
        return line.startsWith("SECTION ")
                || (line.length() > 3 && line.equals(line.toUpperCase(Locale.ROOT)) && line.matches("[A-Z ,&()]+"));
    }
}
