package plumbrow.app.desk.door;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.SocketTimeoutException;
import java.net.URLDecoder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.map.MapFile;

/**
 * A request whose body was received whole, of a size and within a time that are bounded, before anybody works on it. The boxes
 * of a form are read from it as the server would read them.
 */
final class Body extends HttpServletRequestWrapper {
    /** Longest body of a form or of JSON: a thousand times what a person types. */
    static final int MOST_BYTES = 1 << 20;

    /** A map file comes as it is. */
    private static final int MOST_MAP_BYTES = MapFile.MOST_BYTES + 1;

    private static final int MOST_BOXES = 10_000;

    private final byte[] content;
    private final Map<String, String[]> parameters;

    /** The body was not taken. */
    static final class Refused extends IOException {
        private static final long serialVersionUID = 1L;

        private final int status;

        Refused(int status, String sentence) {
            super(sentence);
            this.status = status;
        }

        int status() {
            return status;
        }

        String sentence() {
            return String.valueOf(getMessage());
        }
    }

    private Body(HttpServletRequest request, byte[] content) throws Refused {
        super(request);
        this.content = content;
        this.parameters = form(request) ? boxes(request, content) : request.getParameterMap();
    }

    /** Whether a request brings a body. */
    static boolean expected(HttpServletRequest request) {
        return request.getContentLengthLong() > 0 || request.getHeader("Transfer-Encoding") != null;
    }

    static Body receive(HttpServletRequest request) throws IOException {
        int most = request.getRequestURI().equals("/api/map") ? MOST_MAP_BYTES : MOST_BYTES;
        if (request.getContentLengthLong() > most) {
            throw tooLarge(most);
        }
        ByteArrayOutputStream received = new ByteArrayOutputStream();
        byte[] piece = new byte[16 * 1024];
        try {
            InputStream body = request.getInputStream();
            for (int length = body.read(piece); length >= 0; length = body.read(piece)) {
                received.write(piece, 0, length);
                if (received.size() > most) {
                    throw tooLarge(most);
                }
            }
        } catch (IOException fault) {
            throw late(fault) ? tooSlow() : fault;
        }
        return new Body(request, received.toByteArray());
    }

    private static Refused tooLarge(int most) {
        return new Refused(
                413,
                "What was sent is larger than the desk takes here, " + (most >> 20)
                        + " MB at most. Nothing was recorded.");
    }

    /** Whether it is for its {@link Deadline} that a body was not received. */
    static boolean late(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof SocketTimeoutException) {
                return true;
            }
        }
        return false;
    }

    static Refused tooSlow() {
        return new Refused(
                408,
                "What was sent did not come within " + Doors.patience().toSeconds()
                        + " s, or too slowly after. Nothing was recorded.");
    }

    private static boolean form(HttpServletRequest request) {
        String type = request.getContentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith("application/x-www-form-urlencoded");
    }

    private static Map<String, String[]> boxes(HttpServletRequest request, byte[] content) throws Refused {
        Map<String, List<String>> boxes = new LinkedHashMap<>();
        request.getParameterMap().forEach((name, values) -> boxes.put(name, new ArrayList<>(List.of(values))));
        int count = 0;
        try {
            for (String box : new String(content, UTF_8).split("&", -1)) {
                if (++count > MOST_BOXES) {
                    throw tooLarge(MOST_BYTES);
                }
                int equals = box.indexOf('=');
                if (!box.isEmpty()) {
                    boxes.computeIfAbsent(
                                    URLDecoder.decode(equals < 0 ? box : box.substring(0, equals), UTF_8),
                                    first -> new ArrayList<>())
                            .add(equals < 0 ? "" : URLDecoder.decode(box.substring(equals + 1), UTF_8));
                }
            }
        } catch (IllegalArgumentException undecodable) {
            throw new Refused(400, "The browser sent something the desk doesn't understand. Nothing was recorded.");
        }
        Map<String, String[]> parameters = new LinkedHashMap<>();
        boxes.forEach((name, values) -> parameters.put(name, values.toArray(String[]::new)));
        return parameters;
    }

    @Override
    public ServletInputStream getInputStream() {
        ByteArrayInputStream bytes = new ByteArrayInputStream(content);
        return new ServletInputStream() {
            @Override
            public int read() {
                return bytes.read();
            }

            @Override
            public int read(byte[] to, int from, int length) {
                return bytes.read(to, from, length);
            }

            @Override
            public boolean isFinished() {
                return bytes.available() == 0;
            }

            @Override
            public boolean isReady() {
                return true;
            }

            @Override
            public void setReadListener(ReadListener listener) {
                throw new UnsupportedOperationException("The body is here already.");
            }
        };
    }

    @Override
    public BufferedReader getReader() {
        return new BufferedReader(new InputStreamReader(getInputStream(), UTF_8));
    }

    @Override
    public @Nullable String getParameter(String name) {
        String[] values = parameters.get(name);
        return values == null || values.length == 0 ? null : values[0];
    }

    @Override
    public Map<String, String[]> getParameterMap() {
        return Collections.unmodifiableMap(parameters);
    }

    @Override
    public Enumeration<String> getParameterNames() {
        return Collections.enumeration(parameters.keySet());
    }

    @Override
    public String @Nullable [] getParameterValues(String name) {
        String[] values = parameters.get(name);
        return values == null ? null : values.clone();
    }
}
