package plumbrow.documents.sheet.made;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import plumbrow.documents.sheet.SheetSection;

/** Sets a draft by hand: in two columns with broken words, on a typewriter with leaders, or beside its Spanish. */
final class ColumnPress {
    private static final int HEAD_GAP = 5;

    private final Draft draft;
    private final Galley galley;
    private final boolean typewriter;

    private ColumnPress(Draft draft, Galley galley) {
        this.draft = draft;
        this.galley = galley;
        this.typewriter = draft.house.press() == House.Press.TYPEWRITER;
    }

    static byte[] print(Draft draft) {
        House.Press press = draft.house.press();
        String family = press == House.Press.TYPEWRITER ? "Mono" : "Sans";
        try (PDDocument document = new PDDocument()) {
            PDType0Font regular = PDType0Font.load(document, Faces.open(family, "Regular"), true);
            PDType0Font bold = PDType0Font.load(document, Faces.open(family, "Bold"), true);
            List<Galley.Column> columns = switch (press) {
                case TYPEWRITER -> List.of(new Galley.Column(60, 490));
                default -> List.of(new Galley.Column(48, 248), new Galley.Column(318, 248));
            };
            try (Galley galley = new Galley(
                    document,
                    regular,
                    bold,
                    press == House.Press.TYPEWRITER ? 9.5f : 8.5f,
                    columns,
                    press == House.Press.BESIDE)) {
                galley.title(
                        press == House.Press.TYPEWRITER
                                ? "MATERIAL SAFETY DATA SHEET"
                                : "Safety Data Sheet - " + draft.product.name());
                new ColumnPress(draft, galley).run();
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void run() throws IOException {
        int place = 0;
        for (Block block : draft.blocks) {
            if (block instanceof Block.Heading heading) {
                place++;
                galley.space(HEAD_GAP);
                for (String line : heading.text().split("\n", -1)) {
                    galley.text(line, true, 0);
                }
                beside(place);
            } else if (block instanceof Block.Subheading sub) {
                galley.text(sub.text(), true, 0);
            } else if (block instanceof Block.Paragraph paragraph) {
                galley.text(paragraph.text(), false, 0);
            } else if (block instanceof Block.Pair pair) {
                pair(pair);
            } else if (block instanceof Block.Table table) {
                table(table);
            }
        }
    }

    private void pair(Block.Pair pair) throws IOException {
        if (typewriter && pair.value().length() < 40 && pair.label().length() < 34) {
            galley.leader(pair.label(), pair.value(), 210);
        } else {
            String colon = pair.label().endsWith(", call") ? " " : ": ";
            galley.text(pair.label() + colon + pair.value(), false, 0);
        }
    }

    private void table(Block.Table table) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.heads());
        rows.addAll(table.rows());
        for (List<String> row : rows) {
            galley.row(row, table.columns());
        }
    }

    private void beside(int place) throws IOException {
        if (draft.house.second() != House.Second.SPANISH_BESIDE) {
            return;
        }
        SheetSection section = draft.house.wording().at(place);
        galley.other("SECCIÓN " + place + ": " + Wording.spanish(section), true);
        galley.other("Lea la etiqueta antes de usar el producto y consulte a un médico en caso de duda.", false);
        if (section == SheetSection.PROPERTIES) {
            galley.other("Punto de inflamación: 99 °C", false);
            galley.other("Presión de vapor: 0,5 hPa a 20 °C", false);
        }
        galley.other("Guarde el envase cerrado y fuera del alcance de los niños en un lugar seco y fresco.", false);
    }
}
