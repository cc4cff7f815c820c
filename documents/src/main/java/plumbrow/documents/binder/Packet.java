package plumbrow.documents.binder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import plumbrow.documents.picture.Markup;

/**
 * Sheets printed as one tagged PDF, with language, title, bookmarks and page numbers. What must stand on one page is set smaller
 * until it does.
 */
final class Packet {
    /** Sheets that are set together to see whether they fit. */
    private static final int AT_ONCE = 16;

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

    /** The largest size in which each sheet stands on one page. Only those that don't yet are set again, some at a time. */
    private static int[] fitted(String title, List<? extends Sheet> sheets, LocalDate day) {
        int[] sizes = new int[sheets.size()];
        List<Integer> open = IntStream.range(0, sizes.length)
                .filter(i -> sheets.get(i).sizes() > 1)
                .boxed()
                .toList();
        while (!open.isEmpty()) {
            List<Integer> all = open;
            List<Integer> over = IntStream.range(0, (all.size() + AT_ONCE - 1) / AT_ONCE)
                    .parallel()
                    .mapToObj(part -> all.subList(part * AT_ONCE, Math.min(all.size(), (part + 1) * AT_ONCE)))
                    .flatMap(part -> over(title, part, sheets, sizes, day).stream())
                    .toList();
            List<Integer> again = new ArrayList<>();
            for (int sheet : over) {
                if (sizes[sheet] < sheets.get(sheet).sizes() - 1) {
                    sizes[sheet]++;
                    again.add(sheet);
                } else {
                    sizes[sheet] = sheets.get(sheet).sizeOver();
                }
            }
            open = again;
        }
        return sizes;
    }

    /** Those of some sheets that run over their page in the size they have. */
    private static List<Integer> over(
            String title, List<Integer> part, List<? extends Sheet> sheets, int[] sizes, LocalDate day) {
        PdfPages.Printed printed = printed(
                html(
                        title,
                        "",
                        "",
                        part.stream().map(sheets::get).toList(),
                        part.stream().mapToInt(sheet -> sizes[sheet]).toArray()),
                day);
        List<Integer> over = new ArrayList<>();
        for (int k = 0; k < part.size(); k++) {
            int next = k + 1 < part.size() ? printed.starts().get(k + 1) : printed.pages();
            if (next - printed.starts().get(k) > 1) {
                over.add(part.get(k));
            }
        }
        return over;
    }

    private static PdfPages.Printed printed(String html, LocalDate day) {
        String pages = Typeface.printable(html);
        try {
            return PdfPages.print(pages, day, Objects.hash(day, pages.hashCode()));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static String html(String title, String subject, String author, List<? extends Sheet> sheets, int[] sizes) {
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
