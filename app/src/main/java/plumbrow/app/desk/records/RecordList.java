package plumbrow.app.desk.records;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordCheck;
import plumbrow.advice.records.Reentry;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.records.RecordFilter;

/**
 * The list of records.
 *
 * @param part lines, latest first
 * @param all every record of the book, for the boxes
 * @param fault what is wrong with what was asked for; else empty
 */
public record RecordList(
        Season season, Part<Line> part, List<KeptRecord> all, RecordFilter filter, String head, String fault) {
    /** A record with what it lacks and when the field may be entered. */
    public record Line(KeptRecord kept, RecordCheck check, Reentry reentry) {
        static Line of(Season season, KeptRecord kept) {
            return new Line(kept, RecordCheck.of(season, kept), Reentry.of(kept.record()));
        }
    }

    public RecordList {
        all = List.copyOf(all);
    }

    /** Records that count and lack what a rule asks for that binds them. */
    public long incomplete() {
        return checks().filter(check -> !check.missing().isEmpty()).count();
    }

    /** Records that count and lack only what a rule asks for of which it can't be told whether it binds. */
    public long open() {
        return checks().filter(check -> check.missing().isEmpty() && check.incomplete())
                .count();
    }

    private Stream<RecordCheck> checks() {
        return all.stream().filter(KeptRecord::counts).map(kept -> RecordCheck.of(season, kept));
    }

    /** "?field=…&from=…"; empty where all are asked for. */
    public String query() {
        Map<String, String> asked = filter.asked();
        return asked.isEmpty()
                ? ""
                : asked.entrySet().stream()
                        .map(entry -> entry.getKey() + "=" + Shown.part(entry.getValue()))
                        .collect(Collectors.joining("&", "?", ""));
    }

    /** The address of another page of the list. */
    public String page(int number) {
        return "/records" + (query().isEmpty() ? "?" : query() + "&") + "page=" + number + "#lines";
    }
}
