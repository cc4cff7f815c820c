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

    private ColumnPress(Galley galley, boolean typewriter) {
        this.galley = galley;
        this.typewriter = typewriter;
    }

    static byte[] print(Draft draft) {
        boolean typewriter = draft.layout.press() == Layout.Press.TYPEWRITER;
        String family = typewriter ? "Mono" : "Sans";
        try (PDDocument document = new PDDocument()) {
            PDType0Font regular = PDType0Font.load(document, Faces.open(family, "Regular"), true);
            PDType0Font bold = PDType0Font.load(document, Faces.open(family, "Bold"), true);
            List<Galley.Column> columns = typewriter
                    ? List.of(new Galley.Column(60, 490))
                    : List.of(new Galley.Column(48, 248), new Galley.Column(318, 248));
            try (Galley galley = new Galley(document, regular, bold, typewriter ? 9.5f : 8.5f, columns, false)) {
                ColumnPress press = new ColumnPress(galley, typewriter);
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

    private void block(Block block) throws IOException {
        if (block instanceof Block.Name name) {
            galley.title(name.text());
        } else if (block instanceof Block.Heading heading) {
            galley.space(5);
            galley.text(heading.text(), true, 0);
        } else if (block instanceof Block.Subheading sub) {
            galley.text(sub.text(), true, 0);
        } else if (block instanceof Block.Paragraph paragraph) {
            galley.text(paragraph.text(), false, 0);
            galley.space(2);
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
