package plumbrow.documents.paper;

import java.awt.image.BufferedImage;
import java.util.List;

/** Makes out the words of a page that is a picture. */
public interface OpticalReader {
    /** Whether it can read on this machine. */
    boolean ready();

    /** What to do where it can't, in a sentence; empty where it can. */
    String lacking();

    /**
     * The words of a picture.
     *
     * @param page in shades of grey, upright
     * @param dotsPerInch how finely it is drawn
     * @throws PaperTrouble if it can't be read, or not in time; its message is one sentence
     */
    List<OpticalWord> words(BufferedImage page, int dotsPerInch);

    /** Says that another page is about to be read: reading a page takes seconds. */
    void page(int number);
}
