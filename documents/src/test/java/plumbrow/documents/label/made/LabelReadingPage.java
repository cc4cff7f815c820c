package plumbrow.documents.label.made;

import java.util.Locale;

/** The manual's page on how well labels are read. */
final class LabelReadingPage {
    private LabelReadingPage() {}

    static String markdown(Score score) {
        StringBuilder page = new StringBuilder("# How well labels are read\n\n");
        page.append(String.format(
                        Locale.US,
                        "Measured on %d labels (%,d pages) of invented products in %d layouts: booklets in two columns, small print in three and%n"
                                + "four, panels with Spanish beside, tables of rates by crop or by soil, directions in sentences and in lists, boxes, web%n"
                                + "pages and plain text. What stands on them is known, because it was put there; no maker's own label is among them. Maker%n"
                                + "and reader come from the same desk, and real labels are longer and untidier: read these figures as a ceiling, and those%n"
                                + "of real labels in [reading-real.md](reading-real.md#labels). Rates and limits are proposals; a person holds each against%n"
                                + "the page before any gate believes it.%n%n",
                        score.labels,
                        score.pages,
                        score.byLayout.size()))
                .append(
                        "A value counts as right when all of it is: number, unit, sign, range, crop, soil, timing, basis, feature, way, or the\n")
                .append(
                        "whole text but for blanks, capitals and hyphens. *Precision* is the share of what was read that is right, *recall* the\n")
                .append("share of what stands there that was read right.\n\n")
                .append("Written by `reading/run`; do not edit. Safety sheets: [reading.md](reading.md).\n\n")
                .append("## By layout\n\n| layout | values | precision | recall |\n|---|--:|--:|--:|\n");
        score.byLayout.forEach((layout, count) -> page.append(row(layout, count)));
        page.append(row("**all**", score.all))
                .append("\n## By kind of value\n\n| value | values | precision | recall |\n|---|--:|--:|--:|\n");
        score.byKind.forEach((kind, count) -> page.append(row(kind.title(), count)));
        return page.toString();
    }

    private static String row(String name, Score.Count count) {
        return String.format(
                Locale.US,
                "| %s | %,d | %.1f %% | %.1f %% |%n",
                name,
                count.right + count.missed,
                count.precision() * 100,
                count.recall() * 100);
    }
}
