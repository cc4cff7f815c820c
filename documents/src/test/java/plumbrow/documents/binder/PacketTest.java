package plumbrow.documents.binder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.fieldplan.FieldPlans;
import plumbrow.documents.SampleSeason;

/** What a packet may hold: sheets are fitted to their page, and no file holds two growers' money. */
class PacketTest {
    private static List<FieldPlan> plans(String... farms) {
        FieldPlans plans = new FieldPlans(SampleSeason.season());
        return SampleSeason.season().fields().stream()
                .filter(field -> List.of(farms).contains(field.farm()))
                .map(field -> plan(plans, field))
                .toList();
    }

    private static FieldPlan plan(FieldPlans plans, Field field) {
        return plans.of(field, null, null, "nothing to weigh", Optional.empty());
    }

    @Test
    void neverTwoGrowersMoneyInOneFile() {
        assertThatThrownBy(() -> new Binder.Contents(
                        SampleSeason.season(), plans("Orchard Hill", "Lower Fork"), List.of(), null, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the money of one grower")
                .hasMessageContaining("Wes Aldane, June Pell");
        assertThatThrownBy(() -> new Binder.Contents(SampleSeason.season(), List.of(), List.of(), null, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("There is no field to make a binder of.");
    }

    /** A sheet of so many lines; the smaller the size, the fewer of them. */
    private record Lines(String name, int lines, int sizes) implements Sheet {
        @Override
        public String style() {
            return "plan";
        }

        @Override
        public int sizeOver() {
            return 0;
        }

        @Override
        public void write(Html html, int size) {
            html.element("p", name + " in size " + size);
            for (int i = 0; i < lines / (size + 1); i++) {
                html.element("p", "line " + i);
            }
        }
    }

    @Test
    void eachSheetIsSetInTheLargestSizeThatFitsItsPage() throws Exception {
        byte[] pdf = Packet.print(
                "Fitted",
                "",
                "",
                List.of(new Lines("short", 10, 4), new Lines("long", 120, 4), new Lines("endless", 2000, 3)),
                SampleSeason.AS_OF);
        try (var document = org.apache.pdfbox.Loader.loadPDF(pdf)) {
            String text = new org.apache.pdfbox.text.PDFTextStripper().getText(document);
            assertThat(text).contains("short in size 0", "endless in size 0").containsPattern("long in size [123]");
            assertThat(document.getDocumentCatalog().getDocumentOutline().children())
                    .extracting(item -> item.getTitle())
                    .containsExactly("short", "long", "endless");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        }
    }
}
