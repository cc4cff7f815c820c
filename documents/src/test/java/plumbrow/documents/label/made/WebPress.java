package plumbrow.documents.label.made;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import plumbrow.documents.sheet.made.Faces;

/** Prints a draft as a web page, or through one as a PDF. */
final class WebPress {
    private WebPress() {}

    static byte[] page(Draft draft) {
        return html(draft, "").getBytes(StandardCharsets.UTF_8);
    }

    static byte[] print(Draft draft, String name) {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        for (String family : List.of("Sans", "Serif")) {
            builder.useFont(() -> Faces.open(family, "Regular"), "L" + family, 400, FontStyle.NORMAL, true);
            builder.useFont(() -> Faces.open(family, "Bold"), "L" + family, 700, FontStyle.NORMAL, true);
        }
        builder.withHtmlContent(html(draft, style(draft.layout.press(), name)), null);
        builder.toStream(out);
        try {
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static String html(Draft draft, String style) {
        StringBuilder html = new StringBuilder("<!DOCTYPE html><html><head><title>Label</title><style>")
                .append(style)
                .append("</style></head><body>");
        draft.blocks.forEach(block -> block(block, html));
        return html.append("</body></html>").toString();
    }

    private static void block(Block block, StringBuilder html) {
        if (block instanceof Block.Name name) {
            html.append("<h1>").append(text(name.text())).append("</h1>");
        } else if (block instanceof Block.Heading heading) {
            html.append("<h2>").append(text(heading.text())).append("</h2>");
        } else if (block instanceof Block.Subheading sub) {
            html.append("<h3>").append(text(sub.text())).append("</h3>");
        } else if (block instanceof Block.Paragraph paragraph) {
            html.append("<p>").append(text(paragraph.text())).append("</p>");
        } else if (block instanceof Block.Bullets bullets) {
            html.append("<ul>");
            bullets.items()
                    .forEach(item -> html.append("<li>").append(text(item)).append("</li>"));
            html.append("</ul>");
        } else if (block instanceof Block.Dotted dotted) {
            row(List.of(dotted.label(), dotted.value()), List.of(60, 40), "plain", html);
        } else if (block instanceof Block.Boxed boxed) {
            row(boxed.words(), List.of(30, 30, 40), "group", html);
        } else if (block instanceof Block.Table table) {
            table(table, html);
        }
    }

    private static void row(List<String> cells, List<Integer> widths, String kind, StringBuilder html) {
        html.append("<table class='").append(kind).append("'><tr>");
        for (int i = 0; i < cells.size(); i++) {
            html.append("<td style='width:")
                    .append(widths.get(i))
                    .append("%'>")
                    .append(text(cells.get(i)))
                    .append("</td>");
        }
        html.append("</tr></table>");
    }

    private static void table(Block.Table table, StringBuilder html) {
        html.append("<table class='data'>");
        if (!table.heads().isEmpty()) {
            html.append("<tr>");
            for (int i = 0; i < table.heads().size(); i++) {
                html.append("<th style='width:")
                        .append(table.columns().get(i))
                        .append("%'>")
                        .append(text(table.heads().get(i)))
                        .append("</th>");
            }
            html.append("</tr>");
        }
        for (List<String> row : table.rows()) {
            html.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                html.append("<td style='width:")
                        .append(table.columns().get(i))
                        .append("%'>")
                        .append(text(row.get(i)))
                        .append("</td>");
            }
            html.append("</tr>");
        }
        html.append("</table>");
    }

    private static String style(Layout.Press press, String name) {
        String plain =
                "table{width:100%;border-collapse:collapse} td,th{text-align:left;vertical-align:top;padding:1.5pt 4pt} ul{margin:2pt 0}"
                        + " h1{font-size:22pt;margin:4pt 0} h2{font-size:1.15em;margin:9pt 0 3pt} h3{font-size:1em;margin:4pt 0 1pt} p{margin:2pt 0}";
        return switch (press) {
            case SERIF -> "@page{size:letter;margin:1in} body{font:10pt LSerif} " + plain;
            case BOXED ->
                "@page{size:letter;margin:0.7in} body{font:9.5pt LSans} " + plain
                        + " .data td,.data th{border:0.5pt solid #555;padding:3pt} .group td{border:1pt solid #000;text-align:center}";
            case SMALL -> "@page{size:letter;margin:0.5in} body{font:7pt LSans} " + plain;
            default ->
                "@page{size:letter;margin:1in 0.8in; @top-left{font:9pt LSans;content:'" + name
                        + "'} @bottom-center{font:9pt LSans;content:'Page ' counter(page) ' of ' counter(pages)}} body{font:10pt LSans} "
                        + plain;
        };
    }

    private static String text(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
