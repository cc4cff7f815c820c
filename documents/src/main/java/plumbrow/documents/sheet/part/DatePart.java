package plumbrow.documents.sheet.part;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.DateText;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Label;

/** When the sheet was revised, issued, and what it takes the place of; in running heads too. */
final class DatePart implements Part {
    private static final int NEAR = 8;
    private static final int LONG_DATE = 40;
    private static final Map<ValueKind, Label> LABELS = new EnumMap<>(Map.of(
            ValueKind.REVISION_DATE, Label.REVISION_DATE,
            ValueKind.ISSUE_DATE, Label.ISSUE_DATE,
            ValueKind.SUPERSEDED_DATE, Label.SUPERSEDES));
    private static final Map<ValueKind, Pattern> WORDS = new EnumMap<>(
            Map.of(
                    ValueKind.REVISION_DATE,
                    Pattern.compile(
                            "(?i)\\b(?:date of (?:last |latest |this )?revision|(?:last |latest )?revision date|(?:last |date )?revised(?: on| date)?|date revised|last updated?|revision)\\b"),
                    ValueKind.ISSUE_DATE,
                    Pattern.compile(
                            "(?i)\\b(?:date of (?:issue|preparation|first issue)|issu(?:e|ed|ing)(?: date| on)?|date (?:issued|prepared)|(?:preparation|effective|version|creation) date|prepared(?: on)?|(?:msds|sds) date)\\b"),
                    ValueKind.SUPERSEDED_DATE,
                    Pattern.compile(
                            "(?i)\\b(?:(?:supersedes|replaces)(?: (?:the )?(?:sds|msds|date|version|sheet|issue|revision))*(?: (?:of|dated|from))?|(?:date of )?previous (?:revision|version|issue)(?: date)?)\\b")));

    @Override
    public void read(SheetText sheet, Readings readings) {
        WORDS.forEach((kind, words) -> {
            for (Row row : sheet.everything()) {
                inRow(kind, words, Passage.of(row), sheet.dates(), readings);
            }
        });
        LABELS.forEach((kind, label) -> {
            for (Item item : sheet.items(label, SheetSection.IDENTIFICATION, SheetSection.OTHER)) {
                keep(kind, item.value(), 0, sheet.dates(), readings);
            }
        });
    }

    private static void inRow(ValueKind kind, Pattern words, Passage row, DateText.Order order, Readings readings) {
        Matcher found = words.matcher(row.text());
        while (found.find()) {
            if (kind != ValueKind.SUPERSEDED_DATE && earlier(row.text(), found.start())) {
                continue;
            }
            keep(kind, row, found.end(), order, readings);
        }
    }

    /** "Date of previous revision", "Supersedes version": the words speak of the sheet before. */
    private static boolean earlier(String text, int at) {
        return text.substring(Math.max(0, at - LONG_DATE), at)
                .matches("(?is).*\\b(?:previous|supersedes|replaces|of|first)\\s*");
    }

    private static void keep(ValueKind kind, Passage passage, int from, DateText.Order order, Readings readings) {
        String rest = passage.text().substring(from, Math.min(passage.text().length(), from + LONG_DATE));
        DateText date = DateText.first(rest, order);
        if (date == null || date.from() > NEAR) {
            return;
        }
        @Nullable LocalDate day = date.date();
        if (day == null) {
            if (!readings.has(kind)) {
                readings.unclear(kind, date.doubt(), passage.quote(from + date.from(), from + date.to()));
            }
        } else {
            readings.state(kind, new Content.Day(day), passage.quote(from + date.from(), from + date.to()));
        }
    }
}
