package plumbrow.documents.workbook.form;

/** A cell that is not what its column asks for. Carries what was expected, in words that follow "expected". */
public final class Misread extends Exception {
    public Misread(String expected) {
        super(expected, null, false, false);
    }

    public String expected() {
        return String.valueOf(getMessage());
    }
}
