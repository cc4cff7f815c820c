package plumbrow.documents.label.part;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Route;

/** First aid by the way the product got into or onto someone. */
final class AidPart implements Part {
    private static final Pattern ROUTE = Pattern.compile(
            "(?i)^\\W{0,2}if\\s+(?:product is\\s+)?(?<route>swallowed|ingested|inhaled|breathed in|(?:in|on)\\s+(?:the\\s+)?(?:eyes?|skin)(?:\\s+(?:or|and)\\s+(?:on\\s+)?(?:clothing|skin))?|(?:in|on)\\s+clothing)\\b\\s*[:.–-]?\\s*");
    /** Another way within a line: "… an unconscious person. If on skin: take off …". */
    private static final Pattern INSIDE = Pattern.compile(
            "(?i)(?<=[.!)])\\s+(?:[•·▪■●]\\s*)?(?<lead>if\\s+(?:swallowed|ingested|inhaled|breathed in|(?:in|on)\\s+(?:the\\s+)?(?:eyes?|skin|clothing)(?:\\s+(?:or|and)\\s+(?:on\\s+)?(?:clothing|skin))?)\\s*:)");

    private static final Pattern AFTER = Pattern.compile(
            "(?i)^\\W{0,2}(?:hot ?-?line|note to physicians?|have the product container|in case of emergency|for (?:medical )?emergenc|you may also|antidote|symptoms).*");
    private static final Pattern LABEL =
            Pattern.compile("(?i)(?:(?:or|and|if|in|on|the|skin|eyes?|clothing|inhaled|swallowed)\\s?){1,4}[:.]?");
    private static final double UNDER = 30;
    private @Nullable Route route;
    private @Nullable Cell label;
    private double texts = Double.NaN;
    private double right = Double.NaN;
    private Passage.Builder text = new Passage.Builder();

    @Override
    public void read(LabelText label, Readings readings) {
        AidPart fresh = new AidPart();
        for (LabelText.Line line : label.lines()) {
            if (line.topic() == Topic.FIRST_AID) {
                fresh.row(line.row(), readings);
            }
        }
        fresh.close(readings);
    }

    private void row(Row row, Readings readings) {
        for (int i = 0; i < row.cells().size(); i++) {
            Cell cell = row.cells().get(i);
            Passage passage = Passage.of(row.page(), cell);
            Matcher found = ROUTE.matcher(passage.text());
            if (route != null && goesOnWithLabel(cell)) {
                continue;
            }
            if (found.find()) {
                close(readings);
                route = route(found.group("route"));
                passage = passage.from(found.end());
                if (LABEL.matcher(passage.text()).matches()) {
                    passage = passage.from(passage.text().length());
                }
                label = passage.isEmpty() ? cell : null;
                right = passage.isEmpty() ? Double.NaN : cell.right();
                texts = i + 1 < row.cells().size() ? row.cells().get(i + 1).left() : Double.NaN;
            } else if (AFTER.matcher(passage.text()).matches()) {
                close(readings);
            }
            if (route != null && beside(row, i)) {
                continue;
            }
            right = Double.isNaN(right) ? cell.right() : Math.max(right, cell.right());
            Matcher inside = INSIDE.matcher(passage.text());
            while (route != null && inside.find()) {
                text.line(passage.part(0, inside.start()));
                close(readings);
                Passage rest = passage.from(inside.start("lead"));
                Matcher next = ROUTE.matcher(rest.text());
                if (!next.find()) {
                    break;
                }
                route = route(next.group("route"));
                passage = rest.from(next.end());
                inside = INSIDE.matcher(passage.text());
            }
            if (route != null && !passage.isEmpty()) {
                text.line(passage);
            }
        }
        text.endLine();
    }

    /** "If on skin", and under it, beside the second line of the text, "or clothing". */
    private boolean goesOnWithLabel(Cell cell) {
        return label != null
                && cell.right() < texts
                && Math.abs(cell.left() - label.left()) < UNDER
                && !ROUTE.matcher(cell.text()).find()
                && LABEL.matcher(cell.text()).matches();
    }

    /** A cell right of the text so far, beside another of the same line, belongs to what stands beside. */
    private boolean beside(Row row, int at) {
        Cell cell = row.cells().get(at);
        boolean afterLabel = at > 0 && row.cells().get(at - 1).right() <= texts && cell.left() >= texts - 1;
        return at > 0 && !afterLabel && !Double.isNaN(right) && cell.left() > right + 1;
    }

    private static Route route(String words) {
        String plain = words.toLowerCase(Locale.ROOT);
        if (plain.contains("eye")) {
            return Route.EYES;
        }
        if (plain.contains("skin") || plain.contains("clothing")) {
            return Route.SKIN;
        }
        return plain.contains("inhal") || plain.contains("breath") ? Route.INHALED : Route.SWALLOWED;
    }

    private void close(Readings readings) {
        if (route != null && !text.isEmpty()) {
            Passage passage = text.build();
            String words = passage.text()
                    .replaceAll("(?:^|(?<=\\s))[•·▪■●](?=\\s|$)", " ")
                    .replaceAll("\\s+", " ")
                    .strip();
            Optional<String> doubt = AidSentences.doubt(route, words);
            if (doubt.isPresent()) {
                readings.unclear(LabelKind.FIRST_AID, route.word() + ": " + doubt.get(), passage.quote());
            } else {
                readings.state(LabelKind.FIRST_AID, new LabelContent.FirstAid(route, words), passage.quote());
            }
        }
        route = null;
        text = new Passage.Builder();
    }
}
