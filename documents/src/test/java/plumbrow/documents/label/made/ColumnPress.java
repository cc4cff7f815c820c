package plumbrow.documents.label.made;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import plumbrow.documents.sheet.made.Faces;
import plumbrow.documents.sheet.made.Galley;

/** Sets a draft by hand: a booklet in two columns with broken words, or on a typewriter with leaders. */
final class ColumnPress {
    private final Galley galley;
    private final boolean typewriter;
    private final boolean panels;
    private int current = FRONT;
    private int spanish;
    private static final int FRONT = 2;

    private ColumnPress(Galley galley, boolean typewriter, boolean panels) {
        this.galley = galley;
        this.typewriter = typewriter;
        this.panels = panels;
        if (panels) {
            galley.in(FRONT);
        }
    }

    private static List<Galley.Column> columns(Layout.Press press) {
        return switch (press) {
            case TYPEWRITER -> List.of(new Galley.Column(60, 490));
            case THREE_COLUMNS ->
                List.of(new Galley.Column(30, 178), new Galley.Column(214, 178), new Galley.Column(398, 178));
            case FOUR_COLUMNS ->
                List.of(
                        new Galley.Column(24, 136),
                        new Galley.Column(165, 136),
                        new Galley.Column(306, 136),
                        new Galley.Column(447, 136));
            case PANELS ->
                List.of(new Galley.Column(222, 172), new Galley.Column(398.5f, 172), new Galley.Column(24, 180));
            default -> List.of(new Galley.Column(48, 248), new Galley.Column(318, 248));
        };
    }

    /** What the Spanish panel says beside each paragraph; it holds numbers that nobody must take for the label's. */
    private static final List<String> SPANISH = List.of(
            "Lea toda la etiqueta antes de usar este producto y guarde el envase en un lugar fresco y seco.",
            "No permita que las personas ni las mascotas entren en las zonas tratadas hasta que el rocío se haya secado.",
            "No lo aplique por tierra a menos de 25 pies de lagos, embalses, ríos y arroyos permanentes.",
            "Evite hacer aplicaciones cuando se espera que llueva antes de que pasen 6 horas.",
            "Llame a un centro de control de envenenamientos o a un médico para recibir instrucciones de tratamiento.");

    static byte[] print(Draft draft) {
        boolean typewriter = draft.layout.press() == Layout.Press.TYPEWRITER;
        String family = typewriter ? "Mono" : "Sans";
        try (PDDocument document = new PDDocument()) {
            PDType0Font regular = PDType0Font.load(document, Faces.open(family, "Regular"), true);
            PDType0Font bold = PDType0Font.load(document, Faces.open(family, "Bold"), true);
            boolean panels = draft.layout.press() == Layout.Press.PANELS;
            float size = switch (draft.layout.press()) {
                case TYPEWRITER -> 9.5f;
                case THREE_COLUMNS, PANELS -> 5.6f;
                case FOUR_COLUMNS -> 5.2f;
                default -> 8.5f;
            };
            try (Galley galley = new Galley(document, regular, bold, size, columns(draft.layout.press()), panels)) {
                ColumnPress press = new ColumnPress(galley, typewriter, panels);
                for (Block block : draft.blocks) {
                    press.block(block);
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The panel in Spanish, which runs at a pace of its own. */
    private void beside() throws IOException {
        galley.in(1);
        galley.text(SPANISH.get(spanish++ % SPANISH.size()), false, 0);
        galley.space(2.7f);
        galley.in(current);
    }

    private void block(Block block) throws IOException {
        if (block instanceof Block.Name name && panels) {
            for (String word : name.text().split(" ", 2)) {
                galley.large(word.toUpperCase(java.util.Locale.ROOT), 26);
            }
        } else if (block instanceof Block.Name name) {
            galley.title(name.text());
        } else if (block instanceof Block.Heading heading) {
            if (panels) {
                current = 0;
                galley.in(current);
            }
            galley.space(5);
            galley.text(heading.text(), true, 0);
        } else if (block instanceof Block.Subheading sub) {
            galley.text(sub.text(), true, 0);
        } else if (block instanceof Block.Paragraph paragraph) {
            galley.text(paragraph.text(), false, 0);
            galley.space(2);
            if (panels) {
                beside();
            }
        } else if (block instanceof Block.Bullets bullets) {
            for (String item : bullets.items()) {
                galley.text("• " + item, false, 0);
            }
        } else if (block instanceof Block.Dotted dotted) {
            galley.leader(dotted.label(), dotted.value(), typewriter ? 260 : 170);
        } else if (block instanceof Block.Boxed boxed) {
            galley.row(boxed.words(), List.of(34, 26, 40));
        } else if (block instanceof Block.Table table) {
            if (!table.heads().isEmpty()) {
                galley.row(table.heads(), table.columns());
            }
            for (List<String> row : table.rows()) {
                galley.row(row, table.columns());
            }
        }
    }
}
