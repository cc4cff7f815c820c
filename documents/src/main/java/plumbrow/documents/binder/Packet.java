package plumbrow.documents.binder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import plumbrow.documents.picture.Markup;

/**
 * Sheets printed as one tagged PDF, with language, title, bookmarks and page numbers. What must stand on one page is set smaller
 * until it does.
 */
final class Packet {
    private Packet() {}

    /**
     * Prints.
     *
     * @param subject what it is, for whoever looks at the file's properties
     * @param day the day in the file; the same sheets and day give the same file
     */
    static byte[] print(String title, String subject, String author, List<? extends Sheet> sheets, LocalDate day) {
        int[] sizes = new int[sheets.size()];
        try {
            while (true) {
                String pages = Typeface.printable(html(title, subject, author, sheets, sizes));
                PdfPages.Printed printed = PdfPages.print(pages, day, Objects.hash(day, pages.hashCode()));
                if (!smaller(sheets, sizes, printed)) {
                    return printed.file();
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Sets smaller what runs over its page and can be; whether there was any. */
    private static boolean smaller(List<? extends Sheet> sheets, int[] sizes, PdfPages.Printed printed) {
        boolean changed = false;
        for (int i = 0; i < sizes.length; i++) {
            int next = i + 1 < sizes.length ? printed.starts().get(i + 1) : printed.pages();
            boolean over = next - printed.starts().get(i) > 1;
            if (over && sizes[i] < sheets.get(i).sizes() - 1) {
                sizes[i]++;
                changed = true;
            }
        }
        return changed;
    }

    private static String html(
            String title, String subject, String author, List<? extends Sheet> sheets, int[] sizes) {
        Html html = new Html();
        html.markup("<html lang=\"en-US\">").open("head").element("title", title);
        meta(html, "subject", subject);
        meta(html, "author", author);
        html.open("style").markup(style()).close("style").open("bookmarks");
        for (int i = 0; i < sheets.size(); i++) {
            html.markup("<bookmark name=\"" + Markup.escape(sheets.get(i).name()) + "\" href=\"#" + id(i) + "\"/>");
        }
        html.close("bookmarks").close("head").open("body");
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            html.markup("<div id=\"" + id(i) + "\" class=\"sheet " + sheet.style() + (i == 0 ? " front" : "") + "\">");
            sheet.write(html, sizes[i]);
            html.close("div");
        }
        return html.close("body").close("html").toString();
    }

    /** The anchor of a sheet, for references to its page. */
    static String id(int sheet) {
        return "sheet-" + (sheet + 1);
    }

    private static void meta(Html html, String name, String content) {
        html.markup("<meta name=\"" + name + "\" content=\"" + Markup.escape(content) + "\"/>");
    }

    private static String style() {
        try (InputStream in = Packet.class.getResourceAsStream("packet.css")) {
            if (in == null) {
                throw new IllegalStateException("packet.css is missing from this installation");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
