package plumbrow.app.desk.door;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.springframework.web.filter.OncePerRequestFilter;
import plumbrow.app.json.Json;

/**
 * How much the desk does at once. What it can't do soon it refuses with 503 while it still can, and pages to be read have
 * room that nobody can take by sending slowly.
 */
final class Load extends OncePerRequestFilter {
    /** Threads of the server; more than all that is let in together, so that a refusal never waits. */
    static final int THREADS = 160;

    /** Requests at work at once. */
    private static final int MOST_AT_WORK = 128;

    /** Bodies being received at once. */
    static final int MOST_BODIES = 48;

    /** Files being received at once. */
    static final int MOST_UPLOADS = 8;

    /** Papers, plans and searches made at once: each takes seconds of a processor and tens of megabytes. */
    private static final int MOST_HEAVY = 4;

    private static final int PATIENCE_S = 20;

    private static final Pattern HEAVY = Pattern.compile(
            "/(?:.*\\.(?:pdf|xlsx)|plan|map|fields/[^/]+/(?:search|years)|api/(?:advice|check|map|plan|fields/[^/]+/(?:search|years)))");

    private final Semaphore atWork = new Semaphore(MOST_AT_WORK);
    private final Semaphore bodies = new Semaphore(MOST_BODIES);
    private final Semaphore uploads = new Semaphore(MOST_UPLOADS);
    private final Semaphore heavy = new Semaphore(MOST_HEAVY, true);

    private interface Rest {
        void run() throws ServletException, IOException;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        within(atWork, 0, request, response, () -> {
            if (!Body.expected(request)) {
                work(request, response, chain);
            } else if (upload(request)) {
                within(uploads, 0, request, response, () -> uploaded(request, response, chain));
            } else {
                received(request, response, chain);
            }
        });
    }

    /** The body is received before anything else is begun, and holds its place no longer than that. */
    private void received(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (!bodies.tryAcquire()) {
            busy(request, response);
            return;
        }
        Body body;
        try {
            body = Body.receive(request);
        } catch (Body.Refused refused) {
            say(request, response, refused.status(), refused.sentence());
            return;
        } finally {
            bodies.release();
        }
        work(body, response, chain);
    }

    /** Files are received whole before anything else is begun; what is wrong with them the pages say. */
    private void uploaded(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            request.getParts();
        } catch (IOException | ServletException | IllegalStateException fault) {
            if (Body.late(fault)) {
                Body.Refused late = Body.tooSlow();
                say(request, response, late.status(), late.sentence());
                return;
            }
        }
        work(request, response, chain);
    }

    private void work(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (HEAVY.matcher(request.getRequestURI()).matches()) {
            within(heavy, PATIENCE_S, request, response, () -> chain.doFilter(request, response));
        } else {
            chain.doFilter(request, response);
        }
    }

    private static void within(
            Semaphore places, int patienceSeconds, HttpServletRequest request, HttpServletResponse response, Rest rest)
            throws ServletException, IOException {
        try {
            if (!places.tryAcquire(patienceSeconds, TimeUnit.SECONDS)) {
                busy(request, response);
                return;
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            busy(request, response);
            return;
        }
        try {
            rest.run();
        } finally {
            places.release();
        }
    }

    private static boolean upload(HttpServletRequest request) {
        String type = request.getContentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/");
    }

    private static void busy(HttpServletRequest request, HttpServletResponse response) throws IOException {
        response.setHeader("Retry-After", "2");
        say(
                request,
                response,
                HttpServletResponse.SC_SERVICE_UNAVAILABLE,
                "The desk has more to do just now than it can do at once. Nothing was recorded; try again in a moment.");
    }

    private record Fault(String error) {}

    /** In few words, without a page, which would be more work. What was not received is not waited for. */
    private static void say(HttpServletRequest request, HttpServletResponse response, int status, String sentence)
            throws IOException {
        boolean program = request.getRequestURI().startsWith("/api/");
        response.setStatus(status);
        response.setHeader("Connection", "close");
        response.setContentType(program ? "application/json" : "text/plain;charset=UTF-8");
        response.getOutputStream().write((program ? Json.of(new Fault(sentence)) : sentence + "\n").getBytes(UTF_8));
    }
}
