package plumbrow.app.serving;

import java.util.logging.Level;
import java.util.logging.Logger;
import org.slf4j.bridge.SLF4JBridgeHandler;

/**
 * Keeps what the web server has to say out of the window in which the desk runs; it goes where the rest of the log goes.
 */
final class DeskLog {
    /** The server logs each fault of a page a second time under this name; kept, lest its level be forgotten. */
    private static final Logger SERVER_FAULTS = Logger.getLogger("org.apache.catalina.core.ContainerBase");

    private DeskLog() {}

    static void quiet() {
        System.setProperty("org.springframework.boot.logging.LoggingSystem", "none");
        SERVER_FAULTS.setLevel(Level.OFF);
        if (!SLF4JBridgeHandler.isInstalled()) {
            SLF4JBridgeHandler.removeHandlersForRootLogger();
            SLF4JBridgeHandler.install();
        }
    }
}
