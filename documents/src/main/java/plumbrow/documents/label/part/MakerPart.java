package plumbrow.documents.label.part;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;

/** Who makes or sells the product and where: what stands behind "distributed by" up to the postal code. */
final class MakerPart implements Part {
    private static final Pattern LEAD = Pattern.compile(
            "(?i)(?:^|(?<=[.•©|]\\s))\\W{0,2}(?:manufactured|made|produced|distributed|formulated|packaged|sold|marketed|registered)(?:\\s+(?:and|&)\\s+\\p{L}+)?\\s+(?:by|for)\\b\\s*:?\\s*|^\\W{0,2}registrant\\s?:\\s*");
    private static final Pattern POSTAL = Pattern.compile("\\b[A-Z]{2},?\\s+\\d{5}(?:-\\d{4})?(?!\\d)");
    private static final Pattern NOT_HERE = Pattern.compile("(?i).*\\b(?:license|trademark|EPA (?:Reg|Est))\\b.*");
    private static final int MOST_LINES = 6;
    private static final double UNDER = 40;

    @Override
    public void read(LabelText label, Readings readings) {
        List<LabelText.Line> lines = label.lines();
        for (int i = 0; i < lines.size(); i++) {
            Row row = lines.get(i).row();
            for (Cell cell : row.cells()) {
                Passage passage = Passage.of(row.page(), cell);
                Matcher lead = LEAD.matcher(passage.text());
                if (lead.find()) {
                    maker(lines, i, cell, passage.from(lead.end()), readings);
                }
            }
        }
    }

    private static void maker(List<LabelText.Line> lines, int at, Cell lead, Passage first, Readings readings) {
        Passage.Builder all = new Passage.Builder();
        Passage part = first;
        Row row = lines.get(at).row();
        for (int i = at; ; ) {
            if (NOT_HERE.matcher(part.text()).matches()) {
                return;
            }
            if (!part.isEmpty()) {
                all.line(part).endLine();
            }
            Passage whole = all.build();
            Matcher postal = POSTAL.matcher(whole.text());
            if (postal.find()) {
                Passage maker = whole.part(0, postal.end());
                readings.text(
                        LabelKind.MAKER, maker.text().replaceAll("\\s+", " ").strip(), maker.quote());
                return;
            }
            i++;
            if (i >= lines.size() || i - at > MOST_LINES || lines.get(i).row().page() != row.page()) {
                return;
            }
            part = under(lines.get(i).row(), lead);
        }
    }

    /** The cells of a row that stand under the lead. */
    private static Passage under(Row row, Cell lead) {
        Passage.Builder all = new Passage.Builder();
        boolean far = true;
        for (Cell cell : row.cells()) {
            boolean below = cell.left() < lead.right() && cell.right() > lead.left();
            if (below || (!far && cell.left() - lead.right() < UNDER)) {
                all.cell(Passage.of(row.page(), cell));
                far = false;
            }
        }
        return all.build();
    }
}
