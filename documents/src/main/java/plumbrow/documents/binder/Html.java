package plumbrow.documents.binder;

import java.util.List;
import java.util.regex.Matcher;
import plumbrow.advice.gates.Standing;
import plumbrow.documents.picture.Markup;
import plumbrow.documents.picture.StandingMark;

/** XHTML written piece by piece; every text that comes in is escaped. */
final class Html {
    private final StringBuilder text = new StringBuilder();

    Html open(String tag) {
        text.append('<').append(tag).append('>');
        return this;
    }

    Html open(String tag, String style) {
        text.append('<')
                .append(tag)
                .append(" class=\"")
                .append(Markup.escape(style))
                .append("\">");
        return this;
    }

    Html close(String tag) {
        text.append("</").append(tag).append('>');
        return this;
    }

    Html element(String tag, String words) {
        return open(tag).words(words).close(tag);
    }

    Html element(String tag, String style, String words) {
        return open(tag, style).words(words).close(tag);
    }

    Html words(String words) {
        text.append(Markup.escape(words));
        return this;
    }

    /** Markup that is already safe, such as a picture. */
    Html markup(String markup) {
        text.append(markup);
        return this;
    }

    /** Starts a table whose header is repeated on each page it runs over. */
    Html table(String style, List<Column> columns) {
        open("table", style).open("thead").open("tr");
        for (Column column : columns) {
            text.append("<th style=\"width:").append(column.widthPct()).append("%\"");
            text.append(column.figure() ? " class=\"figure\">" : ">");
            head(column.head());
            close("th");
        }
        return close("tr").close("thead").open("tbody");
    }

    /** The unit, after a comma, keeps together on a line of its own. */
    private void head(String head) {
        int comma = head.lastIndexOf(", ");
        if (comma < 0) {
            words(head);
        } else {
            words(head.substring(0, comma + 1)).markup("<br/>").words(head.substring(comma + 2));
        }
    }

    Html endTable() {
        return close("tbody").close("table");
    }

    Html cell(String words) {
        return element("td", words);
    }

    Html figure(String words) {
        return element("td", "figure", words);
    }

    /** A standing with its mark before it. */
    Html standing(Standing standing) {
        open("span", "standing").picture(StandingMark.svg(standing, 11), standing.word());
        return words(" " + StandingMark.word(standing)).close("span");
    }

    /** A picture, with what it shows for whoever cannot see it. */
    Html picture(String svg, String says) {
        text.append(svg.replaceFirst("<svg ", "<svg alt=\"" + Matcher.quoteReplacement(Markup.escape(says)) + "\" "));
        return this;
    }

    /** Sentences under one another. */
    Html list(List<String> sentences) {
        open("ul");
        sentences.forEach(sentence -> element("li", sentence));
        return close("ul");
    }

    /**
     * A column of a table.
     *
     * @param head what stands in it, with its unit
     * @param figure whether it holds numbers, set to the right
     */
    record Column(String head, int widthPct, boolean figure) {
        static Column words(String head, int widthPct) {
            return new Column(head, widthPct, false);
        }

        static Column figure(String head, int widthPct) {
            return new Column(head, widthPct, true);
        }
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
