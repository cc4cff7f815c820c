package plumbrow.app.desk.door;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.util.Map;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;

/**
 * Headers that stand on every answer, those of the server itself among them: it speaks for itself where it can't make sense of
 * a request, before any filter has seen it. Filters that know better set them anew.
 */
final class OnEveryAnswer extends ValveBase {
    private final Map<String, String> headers;

    OnEveryAnswer(String contentPolicy) {
        super(true);
        headers = Map.of(
                "Content-Security-Policy", contentPolicy,
                "X-Content-Type-Options", "nosniff",
                "X-Frame-Options", "DENY",
                "Referrer-Policy", "same-origin",
                "Cross-Origin-Opener-Policy", "same-origin",
                "Cross-Origin-Resource-Policy", "same-origin",
                "Cache-Control", "no-cache, no-store, max-age=0, must-revalidate");
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        headers.forEach(response::setHeader);
        getNext().invoke(request, response);
    }
}
