package plumbrow.advice.weighing;

/** Hears how far a long weighing has come. May be called from several threads at once. */
@FunctionalInterface
public interface Progress {
    /** Nobody listens. */
    Progress SILENT = (fields, of) -> {};

    void done(int fields, int of);
}
