package plumbrow.documents.sheet.made;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import plumbrow.documents.mend.TypedText;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;

/** A value offered in the box to be typed over is the same value when nothing is changed in it. */
class TypedBackTest {
    @Test
    void whatIsOfferedToBeTypedOverReadsBack() {
        Map<String, int[]> byKind = new TreeMap<>();
        StringBuilder lost = new StringBuilder();
        for (House house : Houses.ALL.subList(0, 6)) {
            MadeSheet made = SheetMaker.make(house, 3);
            for (Reading.OnPaper reading :
                    SheetReader.read(made.file(), made.fileName()).readings()) {
                if (reading instanceof Reading.Stated stated) {
                    int[] count = byKind.computeIfAbsent(stated.kind().name(), kind -> new int[2]);
                    count[0]++;
                    String written = TypedText.written(stated.content());
                    List<Content> back = TypedText.read(stated.kind(), written);
                    boolean same = back.size() == 1
                            && Fact.of(stated.kind(), back.get(0)).equals(Fact.of(stated.kind(), stated.content()));
                    count[1] += same ? 1 : 0;
                    if (!same) {
                        lost.append(stated.kind())
                                .append(" | ")
                                .append(written)
                                .append(" | ")
                                .append(back)
                                .append('\n');
                    }
                }
            }
        }
        assertThat(lost.toString()).isEmpty();
    }
}
