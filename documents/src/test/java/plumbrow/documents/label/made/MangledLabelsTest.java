package plumbrow.documents.label.made;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbrow.documents.label.proposal.LabelProposals;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.reading.LabelReader;

/** Labels with letters lost, doubled and strewn in are read as far as they go, without any fault of the reader's own. */
class MangledLabelsTest {
    private static final int RUNS = 120;
    private static final long SEED = 20_260_401;
    private static final List<String> STREWN = List.of(
            " lb ",
            " per acre ",
            " within 3 feet ",
            "sandy loam, ",
            "GROUP ",
            "corn, ",
            "(",
            "a.i. ",
            " to ",
            "1/0 ",
            "%",
            "½");

    @Test
    void noneBreaksTheReader() {
        Random random = new Random(SEED);
        List<Layout> layouts = Layout.ALL.stream()
                .filter(layout -> layout.press() == Layout.Press.TEXT || layout.press() == Layout.Press.WEB_PAGE)
                .toList();
        for (int run = 0; run < RUNS; run++) {
            Layout layout = layouts.get(run % layouts.size());
            String text =
                    mangled(new String(LabelMaker.make(layout, 1 + run % 5).file(), StandardCharsets.UTF_8), random);
            assertThatCode(() -> read(text))
                    .as("run %d of %s", run, layout.name())
                    .doesNotThrowAnyException();
        }
    }

    private static void read(String text) {
        try {
            LabelProposals.of(LabelReader.read(text.getBytes(StandardCharsets.UTF_8), "mangled"), "Quarrywick 4L");
        } catch (PaperTrouble said) {
            // one sentence for the person; as good as a reading
        }
    }

    private static String mangled(String text, Random random) {
        StringBuilder mangled = new StringBuilder(text);
        int times = 1 + random.nextInt(40);
        for (int i = 0; i < times && mangled.length() > 400; i++) {
            int at = random.nextInt(mangled.length() - 300);
            switch (random.nextInt(4)) {
                case 0 -> mangled.delete(at, at + 1 + random.nextInt(200));
                case 1 ->
                    mangled.insert(random.nextInt(mangled.length()), mangled.substring(at, at + random.nextInt(300)));
                case 2 -> mangled.insert(at, "9".repeat(random.nextInt(30)));
                default ->
                    mangled.insert(at, STREWN.get(random.nextInt(STREWN.size())).repeat(1 + random.nextInt(20)));
            }
        }
        return mangled.toString();
    }
}
