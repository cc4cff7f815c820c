package plumbrow.app.command;

/** Exit codes: what a script that called may build on. */
final class Exit {
    /** All went well. */
    static final int GOOD = 0;
    /** Nothing can be advised, something is barred, or a check found something. */
    static final int NOT_ADVISED = 1;
    /** What was asked or given can't be used. */
    static final int BAD_INPUT = 2;

    private Exit() {}
}
