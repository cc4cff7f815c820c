package plumbrow.documents.paper;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** Remembers what was made out, page by page, for whoever reads the same file a second time in the same order. */
public final class ReadOnce implements OpticalReader {
    private final OpticalReader reader;
    private final List<List<OpticalWord>> read = new ArrayList<>();
    private final List<Integer> pages = new ArrayList<>();
    private final List<Integer> sizes = new ArrayList<>();
    private int page;

    public ReadOnce(OpticalReader reader) {
        this.reader = reader;
    }

    @Override
    public boolean ready() {
        return reader.ready();
    }

    @Override
    public String lacking() {
        return reader.lacking();
    }

    @Override
    public void page(int number) {
        page = number;
        reader.page(number);
    }

    @Override
    public List<OpticalWord> words(BufferedImage drawn, int dotsPerInch) {
        for (int i = 0; i < read.size(); i++) {
            if (pages.get(i) == page && sizes.get(i) == dotsPerInch) {
                return read.get(i);
            }
        }
        List<OpticalWord> words = reader.words(drawn, dotsPerInch);
        read.add(words);
        pages.add(page);
        sizes.add(dotsPerInch);
        return words;
    }
}
