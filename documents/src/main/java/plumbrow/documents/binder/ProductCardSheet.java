package plumbrow.documents.binder;

import java.util.List;
import plumbrow.documents.card.CardLine;
import plumbrow.documents.card.CardPart;
import plumbrow.documents.card.CardSection;
import plumbrow.documents.card.EverydayScale;
import plumbrow.documents.card.Known;
import plumbrow.documents.card.ProductCard;
import plumbrow.documents.picture.EverydayPicture;

/**
 * A product card on one page of US letter, to hang in the shed.
 *
 * <p>Letters are made smaller, and running text on storing and hauling is cut with a pointer to its page, until all of it
 * stands on one page. What to wear, what to do first and what a spill asks is never cut.
 */
record ProductCardSheet(ProductCard card) implements Sheet {
    private static final List<Setting> SETTINGS = List.of(
            new Setting(8.4, 600),
            new Setting(7.8, 320),
            new Setting(7.2, 200),
            new Setting(6.6, 140),
            new Setting(6, 90));
    private static final List<CardPart> LEFT = List.of(
            CardPart.FIRST_AID, CardPart.WEAR, CardPart.SPILL, CardPart.IDENTITY, CardPart.GROUPS, CardPart.STORAGE);
    private static final List<CardPart> MAY_BE_CUT =
            List.of(CardPart.STORAGE, CardPart.SHIPPING, CardPart.VAPOUR, CardPart.WATER, CardPart.WILDLIFE);

    /**
     * How large it is set.
     *
     * @param letterPt size of the letters [pt]
     * @param mostLetters of a text that may be cut
     */
    private record Setting(double letterPt, int mostLetters) {}

    @Override
    public String name() {
        return "Product card, " + card.product();
    }

    @Override
    public int sizes() {
        return SETTINGS.size();
    }

    @Override
    public String style() {
        return "productcard";
    }

    @Override
    public void write(Html html, int size) {
        Setting setting = SETTINGS.get(size);
        html.markup("<div style=\"font-size:" + setting.letterPt + "pt\">");
        html.element("div", "foot", ProductCard.LABEL_IS_LAW);
        html.element("h1", card.product());
        html.element(
                "p",
                "quiet",
                card.lead() + " As of " + card.asOf()
                        + ". sheet p. = safety sheet, label p. = label, ● (●) ○ = reference data of an ingredient, verified,"
                        + " with reserve, not verified.");
        html.markup("<table class=\"card\"><tr><td class=\"side\">");
        LEFT.forEach(part -> section(html, card, part, setting));
        html.markup("</td><td class=\"side right\">");
        for (CardSection section : card.sections()) {
            if (!LEFT.contains(section.part())) {
                section(html, card, section.part(), setting);
            }
        }
        html.markup("</td></tr></table>");
        html.close("div");
    }

    private static void section(Html html, ProductCard card, CardPart part, Setting setting) {
        CardSection section = card.section(part);
        html.element("h2", part.title());
        if (part == CardPart.EVERYDAY && !card.everyday().entries().isEmpty()) {
            html.open("div", "picture")
                    .picture(EverydayPicture.svg(card.everyday(), 330), EverydayPicture.finding(card.everyday()))
                    .close("div");
            html.element("p", "quiet", EverydayScale.CAUTION);
            return;
        }
        int most = MAY_BE_CUT.contains(part) ? setting.mostLetters : Integer.MAX_VALUE;
        section.lines().forEach(line -> line(html, line, most));
        section.cautions().forEach(caution -> html.element("p", "caution", caution));
    }

    private static void line(Html html, CardLine line, int most) {
        html.open("p", style(line.known()))
                .element("b", line.about() + ": ")
                .words(cut(line.says(), most))
                .words(" ");
        String from = String.join(
                ", ",
                line.origins().stream()
                        .map(origin -> origin.brief().replace("◐", "(●)"))
                        .distinct()
                        .toList());
        if (!from.isEmpty() && line.known() != Known.RULE) {
            html.element("span", "from", from);
        }
        html.close("p");
    }

    private static String style(Known known) {
        return known == Known.UNKNOWN ? "unknown" : known == Known.DIFFERS ? "differs" : "line";
    }

    private static String cut(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        int blank = text.lastIndexOf(' ', most);
        return text.substring(0, blank > most / 2 ? blank : most) + " … (read on there)";
    }
}
