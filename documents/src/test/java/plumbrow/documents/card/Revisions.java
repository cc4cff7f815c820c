package plumbrow.documents.card;

import plumbrow.documents.sheet.SafetySheet;

/** Two revisions of one sheet. */
public final class Revisions {
    private Revisions() {}

    public static SafetySheet first() {
        return TypedSheet.furrowgate().read();
    }

    /** Goggles have become a face shield, the dose by mouth is lower, section 13 is left out, blanks are more. */
    public static SafetySheet second() {
        return TypedSheet.furrowgate()
                .change(8, "Goggles.", "Face shield and goggles.")
                .change(11, "500 mg/kg", "480 mg/kg")
                .change(7, "Keep locked up, cool", "Keep  locked up, cool")
                .change(16, "March 4, 2025", "June 1, 2026")
                .set(13, "")
                .read();
    }
}
