package plumbrow.app.desk.door;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.time.Duration;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;

/**
 * By when the body of a request must be here, whoever reads it: forms, JSON, map files and the parts of an upload alike. A sender who
 * trickles holds a place no longer than that, and what he has not sent is not waited for afterwards.
 *
 *   deadline = patience + received ÷ {@value #BYTES_A_SECOND} bytes a second
 *
 * <p>So a large file on a slow line has its time, as long as it keeps coming.
 */
final class Deadline extends ValveBase {
    /** Slower than this for long nobody sends a file to his own machine. */
    private static final int BYTES_A_SECOND = 128 * 1024;

    private final Duration patience;

    Deadline(Duration patience) {
        super(true);
        this.patience = patience;
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        if (!Body.expected(request)) {
            getNext().invoke(request, response);
            return;
        }
        org.apache.coyote.Request received = request.getCoyoteRequest();
        InputBuffer body = received.getInputBuffer();
        Watched watched = new Watched(body, System.nanoTime() + patience.toNanos());
        received.setInputBuffer(watched);
        try {
            getNext().invoke(request, response);
        } finally {
            received.setInputBuffer(body);
            if (!watched.ended && response.getStatus() >= 400) {
                received.action(ActionCode.DISABLE_SWALLOW_INPUT, null);
            }
        }
    }

    private static final class Watched implements InputBuffer {
        private final InputBuffer body;
        private long until;
        private boolean ended;

        private Watched(InputBuffer body, long until) {
            this.body = body;
            this.until = until;
        }

        @Override
        public int doRead(ApplicationBufferHandler handler) throws IOException {
            if (System.nanoTime() > until) {
                throw new SocketTimeoutException("the body did not come in time");
            }
            int read = body.doRead(handler);
            if (read > 0) {
                until += read * 1_000_000_000L / BYTES_A_SECOND;
            }
            ended |= read < 0;
            return read;
        }

        @Override
        public int available() {
            return body.available();
        }
    }
}
