package plumbrow.documents.mend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;

/** A safety sheet with what people put right on it. */
public final class MendedSheet {
    private MendedSheet() {}

    /**
     * The sheet as it counts.
     *
     * @param read as it was read
     * @param byOcr numbers of the pages that were made out by OCR: what stands there is unclear until a person confirms it
     * @param mends about this paper, in the order in which they were made
     */
    public static SafetySheet of(SafetySheet read, List<Integer> byOcr, List<Mend> mends) {
        if (mends.isEmpty() && byOcr.isEmpty()) {
            return read;
        }
        Map<Mend.Key, Mend> last = Mend.last(mends);
        Set<Mend.Key> used = new HashSet<>();
        List<Reading.OnPaper> readings = new ArrayList<>();
        for (Reading.OnPaper reading : read.readings()) {
            Mend.Key key = MendedPaper.key(reading.kind().title(), reading.words(), reading.quote());
            Mend mend = last.get(key);
            used.add(key);
            if (mend == null) {
                readings.add(open(reading, byOcr));
            } else if (mend.verdict() == Mend.Verdict.CONFIRMED) {
                readings.add(reading);
            } else if (mend.verdict() == Mend.Verdict.TYPED_OVER) {
                state(reading.kind(), mend, reading.quote(), readings);
            }
        }
        last.forEach((key, mend) -> {
            boolean adds = mend.verdict() == Mend.Verdict.ADDED || mend.verdict() == Mend.Verdict.TYPED_OVER;
            if (adds && !used.contains(key)) {
                Arrays.stream(ValueKind.values())
                        .filter(kind -> kind.title().equals(mend.about()))
                        .findFirst()
                        .ifPresent(kind -> state(kind, mend, MendedPaper.nowhere(mend), readings));
            }
        });
        readings.sort(Comparator.comparing(Reading::kind));
        return new SafetySheet(
                read.file(), read.pages(), read.needsTyping(), read.sections(), readings, read.notices());
    }

    private static Reading.OnPaper open(Reading.OnPaper reading, List<Integer> byOcr) {
        return reading instanceof Reading.Stated && MendedPaper.byOcr(reading.quote(), byOcr)
                ? new Reading.Unclear(reading.kind(), MendedPaper.unconfirmed(reading.words()), reading.quote())
                : reading;
    }

    private static void state(ValueKind kind, Mend mend, Quote quote, List<Reading.OnPaper> readings) {
        for (Content content : TypedText.read(kind, mend.value())) {
            readings.add(new Reading.Stated(kind, content, quote));
        }
    }
}
