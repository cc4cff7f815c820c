package plumbrow.documents.workbook.ground;

/** A shape that cannot be a field's boundary. Carries what was expected, in words that follow "expected". */
public final class NoBoundary extends Exception {
    NoBoundary(String expected) {
        super(expected, null, false, false);
    }

    public String expected() {
        return String.valueOf(getMessage());
    }
}
