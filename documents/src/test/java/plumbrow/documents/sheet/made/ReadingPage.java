package plumbrow.documents.sheet.made;

import java.util.Locale;

/** The manual's page on how well sheets are read. */
final class ReadingPage {
    private ReadingPage() {}

    static String markdown(Score score) {
        StringBuilder page = new StringBuilder();
        page.append("# How well safety sheets are read\n\n")
                .append("Measured on ")
                .append(score.sheets)
                .append(" sheets (")
                .append(String.format(Locale.US, "%,d", score.pages))
                .append(" pages) of invented products in ")
                .append(score.byHouse.size())
                .append(" house styles:\n")
                .append(
                        "other wordings, numbers of sections, columns, tables, units, faces, running heads and languages beside\n")
                .append(
                        "English. What stands on them is known, because it was put there; no maker's own sheet is among them. The\n")
                .append(
                        "reader was mended on the first ten sheets of each style; the sheets *mixed by lot* draw their style at\n")
                .append(
                        "random and were not looked at before. Real sheets are untidier: read these figures as a ceiling, and look\n")
                .append("at the page beside each value.\n\n")
                .append(
                        "A value counts as right when all of it is: number, unit, sign, range, temperature, hours, method, species,\n")
                .append(
                        "route, substance, or the whole text but for blanks, capitals and hyphens. *Precision* is the share of what was\n")
                .append("read that is right, *recall* the share of what stands there that was read right.\n\n")
                .append("Written by `reading/run`; do not edit.\n\n")
                .append(
                        "## By house style\n\n| style | values | precision | recall | sections |\n|---|--:|--:|--:|--:|\n");
        score.byHouse.forEach((house, count) -> page.append("| ")
                .append(house)
                .append(" | ")
                .append(row(count))
                .append(" | ")
                .append(percent(score.sectionsByHouse
                        .getOrDefault(house, new Score.Count())
                        .recall()))
                .append(" |\n"));
        page.append("| **all** | ")
                .append(row(score.all))
                .append(" | ")
                .append(percent(score.sections.recall()))
                .append(" |\n\n");
        page.append("## By kind of value\n\n| value | values | precision | recall |\n|---|--:|--:|--:|\n");
        score.byKind.forEach((kind, count) -> page.append("| ")
                .append(kind.title())
                .append(" | ")
                .append(row(count))
                .append(" |\n"));
        return page.toString();
    }

    private static String row(Score.Count count) {
        return String.format(Locale.US, "%,d", count.right + count.missed) + " | " + percent(count.precision()) + " | "
                + percent(count.recall());
    }

    private static String percent(double share) {
        return String.format(Locale.US, "%.1f %%", share * 100);
    }
}
