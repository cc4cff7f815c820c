package plumbrow.advice.crew;

/** For whom a licence lets apply (7 U.S.C. 136(e)); states that part work for hire from the rest have all three. */
public enum LicenceKind {
    PRIVATE("private"),
    COMMERCIAL("commercial"),
    FOR_HIRE("for hire");

    private final String word;

    LicenceKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
