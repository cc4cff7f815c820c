package plumbrow.app.desk.rows;

import jakarta.servlet.http.HttpServletResponse;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import plumbrow.advice.text.TextRule;

/** Who is at the desk, remembered by his own browser so that nobody types his name twice. It proves nothing. */
public final class Remembered {
    public static final String WHO = "plumbrow-who";

    private Remembered() {}

    public static void write(HttpServletResponse response, String who) {
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                ResponseCookie.from(WHO, URLEncoder.encode(who, StandardCharsets.UTF_8))
                        .path("/")
                        .httpOnly(true)
                        .sameSite("Strict")
                        .maxAge(Duration.ofDays(180))
                        .build()
                        .toString());
    }

    public static Optional<String> read(String cookie) {
        try {
            String who = URLDecoder.decode(cookie, StandardCharsets.UTF_8).strip();
            return who.isEmpty() || TextRule.NAME.objection(who).isPresent() ? Optional.empty() : Optional.of(who);
        } catch (IllegalArgumentException broken) {
            return Optional.empty();
        }
    }
}
