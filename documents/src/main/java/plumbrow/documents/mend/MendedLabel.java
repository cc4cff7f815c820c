package plumbrow.documents.mend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.paper.Quote;

/** A label with what people put right on it. */
public final class MendedLabel {
    private MendedLabel() {}

    /**
     * The label as it counts: on a card, what was made out by OCR is unclear until a person confirms it.
     *
     * @param read as it was read
     * @param byOcr numbers of the pages that were made out by OCR
     * @param mends about this paper, in the order in which they were made
     */
    public static LabelPaper of(LabelPaper read, List<Integer> byOcr, List<Mend> mends) {
        return mended(read, byOcr, mends);
    }

    /** The label as it proposes values for the shelf: each of them waits for a person anyhow. */
    public static LabelPaper proposing(LabelPaper read, List<Mend> mends) {
        return mended(read, List.of(), mends);
    }

    private static LabelPaper mended(LabelPaper read, List<Integer> byOcr, List<Mend> mends) {
        if (mends.isEmpty() && byOcr.isEmpty()) {
            return read;
        }
        Map<Mend.Key, Mend> last = Mend.last(mends);
        Set<Mend.Key> used = new HashSet<>();
        List<LabelReading.OnPaper> readings = new ArrayList<>();
        for (LabelReading.OnPaper reading : read.readings()) {
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
                Arrays.stream(LabelKind.values())
                        .filter(kind -> kind.title().equals(mend.about()))
                        .findFirst()
                        .ifPresent(kind -> state(kind, mend, MendedPaper.nowhere(mend), readings));
            }
        });
        readings.sort(Comparator.comparing(LabelReading::kind));
        return new LabelPaper(read.file(), read.pages(), read.needsTyping(), readings, read.notices());
    }

    private static LabelReading.OnPaper open(LabelReading.OnPaper reading, List<Integer> byOcr) {
        return reading instanceof LabelReading.Stated && MendedPaper.byOcr(reading.quote(), byOcr)
                ? new LabelReading.Unclear(reading.kind(), MendedPaper.unconfirmed(reading.words()), reading.quote())
                : reading;
    }

    private static void state(LabelKind kind, Mend mend, Quote quote, List<LabelReading.OnPaper> readings) {
        for (LabelContent content : LabelText.read(kind, mend.value())) {
            readings.add(new LabelReading.Stated(kind, content, quote));
        }
    }
}
