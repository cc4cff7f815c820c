package plumbrow.app.faults;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.Configurator;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.AppenderBase;
import ch.qos.logback.core.spi.ContextAwareBase;
import java.util.List;

/**
 * Keeps what libraries have to say off the screen; warnings go to the {@link FaultFile}. The desk sets its own logging
 * when it opens. Found by logback through {@code META-INF/services}.
 */
public final class QuietLogging extends ContextAwareBase implements Configurator {
    /** They warn of requests that can't be understood: the fault of whoever sent them, who is told so. */
    private static final List<String> OF_THE_OTHER_SIDE = List.of(
            "org.springframework.web.servlet.mvc.support.DefaultHandlerExceptionResolver",
            "org.springframework.web.servlet.PageNotFound");

    @Override
    public ExecutionStatus configure(LoggerContext context) {
        AppenderBase<ILoggingEvent> file = new AppenderBase<>() {
            @Override
            protected void append(ILoggingEvent event) {
                FaultFile.addText(event.getLevel() + " " + event.getLoggerName() + ": " + event.getFormattedMessage()
                        + (event.getThrowableProxy() == null
                                ? ""
                                : "\n" + ThrowableProxyUtil.asString(event.getThrowableProxy())));
            }
        };
        file.setContext(context);
        file.start();
        Logger root = context.getLogger(Logger.ROOT_LOGGER_NAME);
        root.setLevel(Level.WARN);
        root.addAppender(file);
        OF_THE_OTHER_SIDE.forEach(name -> context.getLogger(name).setLevel(Level.ERROR));
        return ExecutionStatus.DO_NOT_INVOKE_NEXT_IF_ANY;
    }
}
