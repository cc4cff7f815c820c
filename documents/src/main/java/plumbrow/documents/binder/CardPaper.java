package plumbrow.documents.binder;

import java.nio.file.Path;
import java.util.List;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.WholeFile;
import plumbrow.documents.card.ProductCard;

/** A product card on one page of US letter, to hang in the shed. */
public final class CardPaper {
    private CardPaper() {}

    /**
     * Writes the card as PDF, in place of an older one of that name.
     *
     * @throws FileTrouble if the file can't be written; an older one is then still as it was
     */
    public static void write(ProductCard card, Path pdf) {
        byte[] file = print(card);
        WholeFile.write(pdf, out -> out.write(file));
    }

    /** The card as the bytes of a PDF. */
    public static byte[] print(ProductCard card) {
        return Packet.print(
                "Card: " + card.product(),
                "Product card of " + card.product(),
                "",
                List.of(new ProductCardSheet(card)),
                card.asOf());
    }
}
