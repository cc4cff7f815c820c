package plumbrow.documents.binder;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Lines break at blanks only: never inside "bu/ac", "$9/ac" or a telephone number. */
final class WordBreaks implements FSTextBreaker {
    private String text = "";
    private int from;

    @Override
    public void setText(String newText) {
        text = newText;
        from = 0;
    }

    /** Where the next line could begin, or -1 where no break is left. */
    @Override
    public int next() {
        int blank = text.indexOf(' ', from);
        from = blank < 0 ? text.length() : blank + 1;
        return blank < 0 ? -1 : blank + 1;
    }
}
