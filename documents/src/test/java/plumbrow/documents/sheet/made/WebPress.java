package plumbrow.documents.sheet.made;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Prints a draft as a web page, or through one as a PDF. */
final class WebPress {
    private static final Map<String, String> FRENCH = Map.of(
            "Flash point", "Point d'éclair",
            "Vapour pressure", "Pression de vapeur",
            "Boiling point", "Point d'ébullition",
            "Density", "Densité",
            "Product name", "Nom du produit",
            "Packing group", "Groupe d'emballage",
            "Signal word", "Mention d'avertissement",
            "Extinguishing media", "Moyens d'extinction",
            "Eye protection", "Protection des yeux",
            "Inhalation", "Inhalation");

    private WebPress() {}

    static byte[] page(Draft draft) {
        return html(draft, false).getBytes(StandardCharsets.UTF_8);
    }

    static byte[] print(Draft draft) {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        for (String family : List.of("Sans", "Serif")) {
            builder.useFont(() -> Faces.open(family, "Regular"), "L" + family, 400, FontStyle.NORMAL, true);
            builder.useFont(() -> Faces.open(family, "Bold"), "L" + family, 700, FontStyle.NORMAL, true);
        }
        builder.withHtmlContent(html(draft, true), null);
        builder.toStream(out);
        try {
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static String html(Draft draft, boolean printed) {
        StringBuilder html = new StringBuilder("<!DOCTYPE html><html><head><title>Safety data sheet</title><style>")
                .append(printed ? style(draft) : "")
                .append("</style></head><body>");
        if (!printed) {
            html.append("<script>document.title = 'x';</script>");
        }
        html.append("<h1>")
                .append(draft.pick("Safety Data Sheet", "MATERIAL SAFETY DATA SHEET"))
                .append("</h1>");
        boolean open = false;
        for (Block block : draft.blocks) {
            boolean row = block instanceof Block.Pair && pairsInTable(draft);
            if (row != open) {
                html.append(row ? "<table class='pairs'>" : "</table>");
                open = row;
            }
            block(draft, block, html);
        }
        return html.append(open ? "</table>" : "").append("</body></html>").toString();
    }

    private static boolean pairsInTable(Draft draft) {
        return switch (draft.house.press()) {
            case PAIR_TABLE, BOXED, SMALL_TABLES, WEB_PAGE -> true;
            default -> false;
        };
    }

    private static void block(Draft draft, Block block, StringBuilder html) {
        if (block instanceof Block.Heading heading) {
            html.append("<h2>")
                    .append(text(heading.text()).replace("\n", "<br/>"))
                    .append("</h2>");
        } else if (block instanceof Block.Subheading sub) {
            html.append("<h3>").append(text(sub.text())).append("</h3>");
        } else if (block instanceof Block.Paragraph paragraph) {
            html.append("<p>").append(text(paragraph.text())).append("</p>");
        } else if (block instanceof Block.NewPage) {
            html.append("<div style='page-break-before: always'></div>");
        } else if (block instanceof Block.Pair pair) {
            pair(draft, pair, html);
        } else if (block instanceof Block.Table table) {
            table(table, html);
        }
    }

    private static void pair(Draft draft, Block.Pair pair, StringBuilder html) {
        String french = draft.house.second() == House.Second.FRENCH_SLASH ? FRENCH.getOrDefault(pair.label(), "") : "";
        String label = text(french.isEmpty() ? pair.label() : pair.label() + " / " + french);
        String value = text(pair.value());
        boolean ends = pair.label().endsWith(":") || pair.label().endsWith(", call");
        if (pairsInTable(draft)) {
            String colon = draft.house.press() == House.Press.PAIR_TABLE && !ends ? ":" : "";
            html.append("<tr><td class='label'>")
                    .append(label)
                    .append(colon)
                    .append("</td><td>")
                    .append(value)
                    .append("</td></tr>");
        } else if (draft.house.press() == House.Press.STACKED) {
            html.append("<p class='label'>")
                    .append(label)
                    .append("</p><p class='value'>")
                    .append(value)
                    .append("</p>");
        } else {
            html.append("<p><b>")
                    .append(label)
                    .append(ends ? "" : ":")
                    .append("</b> ")
                    .append(value)
                    .append("</p>");
        }
    }

    private static void table(Block.Table table, StringBuilder html) {
        html.append("<table class='data'><tr>");
        for (int i = 0; i < table.heads().size(); i++) {
            html.append("<th style='width:")
                    .append(table.columns().get(i))
                    .append("%'>")
                    .append(text(table.heads().get(i)))
                    .append("</th>");
        }
        html.append("</tr>");
        for (List<String> row : table.rows()) {
            html.append("<tr>");
            row.forEach(cell -> html.append("<td>").append(text(cell)).append("</td>"));
            html.append("</tr>");
        }
        html.append("</table>");
    }

    private static String style(Draft draft) {
        String plain =
                "table{width:100%;border-collapse:collapse} td,th{text-align:left;vertical-align:top;padding:1.5pt 4pt}"
                        + " td.label{width:32%} h1{font-size:15pt} h2{font-size:11pt;margin:9pt 0 3pt} h3{font-size:1em;margin:4pt 0 1pt} p{margin:2pt 0}";
        return switch (draft.house.press()) {
            case COLON_SERIF -> "@page{size:letter;margin:1in} body{font:10.5pt LSerif} " + plain;
            case PAIR_TABLE -> foot(draft) + "body{font:9pt LSans} " + plain;
            case BOXED ->
                foot(draft) + "body{font:9.5pt LSans} " + plain
                        + " td,th{border:0.5pt solid #555;vertical-align:middle;padding:3pt}"
                        + " th{text-align:center;background:#ddd}";
            case STACKED ->
                "@page{size:letter;margin:0.8in} body{font:10pt LSans} " + plain
                        + " p.label{font-weight:700;margin-top:5pt} p.value{margin-bottom:4pt}";
            case SMALL_TABLES ->
                "@page{size:A4;margin:12mm} body{font:7.5pt LSans} " + plain
                        + " .data td,.data th{border-bottom:0.3pt solid #999}";
            case RUNNING_HEADS -> heads(draft) + "body{font:10pt LSerif} " + plain;
            default -> "@page{size:letter;margin:0.75in} body{font:10pt LSans} " + plain;
        };
    }

    private static String foot(Draft draft) {
        return "@page{size:A4;margin:18mm; @bottom-right{font:8pt LSans;content:'Page ' counter(page) ' of ' counter(pages)}"
                + " @bottom-left{font:8pt LSans;content:'" + draft.product.name() + "'}} ";
    }

    private static String heads(Draft draft) {
        return "@page{size:letter;margin:1in 0.8in; @top-left{font:9pt LSerif;content:'" + draft.product.name() + "'}"
                + " @top-right{font:9pt LSerif;content:'Revision date: "
                + IdentityWriter.date(draft.house.dates(), draft.product.revised()) + "'}"
                + " @bottom-center{font:9pt LSerif;content:counter(page) ' / ' counter(pages)}} ";
    }

    static String text(String text) {
        String plain = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        return plain.replaceAll("\\^\\{([^}]*)\\}", "<sup style='font-size:65%'>$1</sup>");
    }
}
