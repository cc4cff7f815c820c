package plumbrow.documents.binder;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.documents.WholeFile;

/** The load card on one page of paper. */
public final class LoadCardPaper {
    private LoadCardPaper() {}

    /** Writes the card as PDF, in place of an older one of that name. */
    public static void write(LoadCard card, LocalDate day, Path pdf) {
        byte[] file = pdf(card, day);
        WholeFile.write(pdf, out -> out.write(file));
    }

    /** The card as PDF. */
    public static byte[] pdf(LoadCard card, LocalDate day) {
        LoadCardSheet sheet = new LoadCardSheet(card);
        return Packet.print(sheet.name(), "What goes into the tank, load by load", "", List.of(sheet), day);
    }
}
