package plumbrow.documents.label.part;

import java.util.Locale;
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
    private static final Pattern AFTER = Pattern.compile(
            "(?i)^\\W{0,2}(?:hot ?-?line|note to physicians?|have the product container|in case of emergency|for (?:medical )?emergenc|you may also|antidote|symptoms).*");
    private @Nullable Route route;
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
        for (Cell cell : row.cells()) {
            Passage passage = Passage.of(row.page(), cell);
            Matcher found = ROUTE.matcher(passage.text());
            if (found.find()) {
                close(readings);
                route = route(found.group("route"));
                passage = passage.from(found.end());
            } else if (AFTER.matcher(passage.text()).matches()) {
                close(readings);
            }
            if (route != null && !passage.isEmpty()) {
                text.line(passage);
            }
        }
        text.endLine();
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
            readings.state(LabelKind.FIRST_AID, new LabelContent.FirstAid(route, words), passage.quote());
        }
        route = null;
        text = new Passage.Builder();
    }
}
