package plumbrow.advice.gates;

import java.util.List;

/** How findings tell what was done already from what is planned. */
final class Logged {
    private Logged() {}

    /** ", 1 of them in the log", or nothing where the log has none of them. */
    static String among(List<Application> applications) {
        long logged = applications.stream().filter(one -> one.pass() == null).count();
        return logged == 0 ? "" : ", " + logged + " of them in the log";
    }
}
