package plumbrow.documents.binder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
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
        int[] sizes = fitted(title, sheets, day);
        return printed(html(title, subject, author, sheets, sizes), day).file();
    }

    /** The largest size in which each sheet stands on one page. Only those that don't yet are set again. */
    private static int[] fitted(String title, List<? extends Sheet> sheets, LocalDate day) {
        int[] sizes = new int[sheets.size()];
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            if (sheets.get(i).sizes() > 1) {
                open.add(i);
            }
        }
        while (!open.isEmpty()) {
            int[] now = open.stream().mapToInt(i -> sizes[i]).toArray();
            List<? extends Sheet> tried = open.stream().map(sheets::get).toList();
            PdfPages.Printed printed = printed(html(title, "", "", tried, now), day);
            List<Integer> over = new ArrayList<>();
            for (int k = 0; k < now.length; k++) {
                int next = k + 1 < now.length ? printed.starts().get(k + 1) : printed.pages();
                int place = open.get(k);
                if (next - printed.starts().get(k) > 1) {
                    if (sizes[place] < sheets.get(place).sizes() - 1) {
                        sizes[place]++;
                        over.add(place);
                    } else {
                        sizes[place] = sheets.get(place).sizeOver();
                    }
                }
            }
            open = over;
        }
        return sizes;
    }

    private static PdfPages.Printed printed(String html, LocalDate day) {
        String pages = Typeface.printable(html);
        try {
            return PdfPages.print(pages, day, Objects.hash(day, pages.hashCode()));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
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
