package plumbrow.documents.binder;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What the PDF writer has to say goes to the log and not to the person's screen; its chatter only when debugging. */
final class PrinterLog implements XRLogger {
    private static final Logger LOG = LoggerFactory.getLogger(Binder.class);

    static void install() {
        XRLog.setLoggerImpl(new PrinterLog());
    }

    @Override
    public void log(String where, Level level, String message) {
        if (level.intValue() >= Level.WARNING.intValue()) {
            LOG.warn("{}: {}", where, message);
        } else {
            LOG.debug("{}: {}", where, message);
        }
    }

    @Override
    public void log(String where, Level level, String message, Throwable cause) {
        LOG.warn("{}: {}", where, message, cause);
    }

    @Override
    public void setLevel(String where, Level level) {
        // levels are set where the rest of the log is
    }

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
        return diagnostic.getLevel().intValue() >= Level.WARNING.intValue() || LOG.isDebugEnabled();
    }
}
