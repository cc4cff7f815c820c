package plumbrow.advice.gates;

/** A gate by its name, whom it protects, and what it asks. */
abstract class Question implements Gate {
    private final String id;
    private final Protects protects;
    private final String question;

    Question(String id, Protects protects, String question) {
        this.id = id;
        this.protects = protects;
        this.question = question;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final Protects protects() {
        return protects;
    }

    @Override
    public final String question() {
        return question;
    }

    final Finding unknown(String subject, String says, String lookUp) {
        return Finding.of(this, Standing.UNKNOWN, subject, says).clearedBy(lookUp);
    }

    final Finding barred(String subject, String says, String change) {
        return Finding.of(this, Standing.BARRED, subject, says).clearedBy(change);
    }

    final Finding conditional(String subject, String says, String condition) {
        return Finding.of(this, Standing.CONDITIONAL, subject, says).clearedBy(condition);
    }

    final Finding clear(String subject, String says) {
        return Finding.of(this, Standing.CLEAR, subject, says);
    }
}
