package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.shown.Shown;

/** What others may try over the network, each tried on a whole server of its own. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AttackTest {
    /** Two dots, slashes of both kinds and a space: a part of an address that wants to climb. */
    private static final String CLIMBER = ".. /..\\../x";

    private static final int WAIT_MS = 60_000;
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final Pattern COOKIE = Pattern.compile("XSRF-TOKEN=([^;]+);");

    private OpenDesk desk;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(withClimber(DeskSeason.of(2027))).weighed();
    }

    @AfterAll
    void close() {
        desk.close();
    }

    /** A server of somebody else on another port of this machine gets our cookies from the browser, and so the token. */
    @Test
    void another_origin_changes_nothing_even_with_a_token() throws IOException {
        String page = raw("GET /log HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n");
        String token = found(TOKEN, page);
        String cookie = found(COOKIE, page);
        String form = "_csrf=" + token + "&field=nowhere";
        String post = "POST /log HTTP/1.1\r\n" + host() + "Connection: close\r\nCookie: XSRF-TOKEN=" + cookie
                + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + form.length() + "\r\n";
        String own = URI.create(desk.address()).getAuthority();
        for (String foreign : List.of(
                "Origin: http://127.0.0.1:9\r\n",
                "Origin: http://localhost\r\n",
                "Origin: https://" + own + "\r\n",
                "Origin: null\r\n",
                "Origin: http://evil.example\r\n",
                "Sec-Fetch-Site: cross-site\r\n",
                "Sec-Fetch-Site: same-site\r\n")) {
            assertThat(raw(post + foreign + "\r\n" + form)).as(foreign).startsWith("HTTP/1.1 403");
        }
        String json = "{\"field\": \"nowhere\"}";
        assertThat(raw("POST /api/log HTTP/1.1\r\n" + host() + "Connection: close\r\nContent-Type: application/json\r\n"
                        + "Sec-Fetch-Site: cross-site\r\nContent-Length: " + json.length() + "\r\n\r\n" + json))
                .startsWith("HTTP/1.1 403");
        assertThat(raw(post + "Origin: http://" + own + "\r\nSec-Fetch-Site: same-origin\r\n\r\n" + form))
                .startsWith("HTTP/1.1 422");
        assertThat(raw(post + "\r\n" + form)).startsWith("HTTP/1.1 422");
    }

    @Test
    void a_body_that_is_too_large_is_refused_before_it_is_read() throws IOException {
        for (String type : List.of("application/json", "application/x-www-form-urlencoded")) {
            assertThat(raw("POST /api/log HTTP/1.1\r\n" + host() + "Content-Type: " + type
                            + "\r\nContent-Length: 1200000000\r\n\r\n{"))
                    .startsWith("HTTP/1.1 413");
        }
    }

    /** A body that does not say how long it is, and does not end. */
    @Test
    void a_body_without_end_is_cut_off() throws IOException {
        byte[] chunk = ("10000\r\n" + " ".repeat(0x10000) + "\r\n").getBytes(StandardCharsets.US_ASCII);
        int sent = 0;
        try (Socket socket = socket()) {
            OutputStream out = socket.getOutputStream();
            out.write(("POST /api/log HTTP/1.1\r\n" + host()
                            + "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            try {
                for (; sent < 2_000; sent++) {
                    out.write(chunk);
                }
            } catch (IOException closed) {
                assertThat(closed).isNotNull();
            }
        }
        assertThat(sent).isLessThan(2_000);
    }

    @Test
    void slow_bodies_keep_nobody_from_reading_and_are_refused_when_they_are_many() throws IOException {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 250; i++) {
                Socket socket = socket();
                slow.add(socket);
                String[] kinds = {"/api/log", "application/json", "/log", "application/x-www-form-urlencoded"};
                int kind = i % 2 * 2;
                socket.getOutputStream()
                        .write(("POST " + kinds[kind] + " HTTP/1.1\r\n" + host() + "Content-Type: " + kinds[kind + 1]
                                        + "\r\nContent-Length: 1000\r\n\r\n{")
                                .getBytes(StandardCharsets.US_ASCII));
            }
            assertThat(raw("GET / HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n"))
                    .startsWith("HTTP/1.1 200");
            String last = new String(slow.get(249).getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(last).startsWith("HTTP/1.1 503").contains("more to do just now", "Retry-After");
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    @Test
    void the_servers_own_errors_carry_the_headers_of_every_page() throws IOException {
        for (String nonsense : List.of(
                "GET /%zz HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n",
                "GET /\\..\\.. HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n",
                "TRACE / HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n",
                "GET /fields/%00 HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: rebound.example\r\nConnection: close\r\n\r\n",
                "GET /log?x=% HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n",
                "POST /api/log HTTP/1.1\r\n" + host() + "Content-Length: 1200000000\r\n\r\n")) {
            assertThat(raw(nonsense))
                    .as(nonsense)
                    .startsWith("HTTP/1.1 4")
                    .contains(
                            "X-Content-Type-Options: nosniff",
                            "X-Frame-Options: DENY",
                            "Content-Security-Policy: default-src 'self'",
                            "Cross-Origin-Opener-Policy: same-origin")
                    .doesNotContain("Apache Tomcat", "Exception");
        }
    }

    @Test
    void a_field_with_a_name_that_climbs_has_all_its_pages() {
        String part = "/fields/" + Shown.part(CLIMBER);
        for (String page : List.of(
                "", "/weighing", "/check", "/map", "/season", "/search", "/years", "/season/try", "/check.pdf")) {
            assertThat(Plain.get(desk.address() + part + page)).as(page).startsWith("200 ");
        }
        for (String page : List.of("/advice", "/check", "/map", "/zones", "/season", "/search", "/years")) {
            assertThat(Plain.get(desk.address() + "/api" + part + page))
                    .as(page)
                    .startsWith("200 ");
        }
        assertThat(Plain.get(desk.address() + "/")).contains("href=\"" + part + "/weighing\"");
    }

    private static Season withClimber(Season season) {
        Field home = season.field(DeskSeason.HOME).orElseThrow();
        Field climber = new Field(
                CLIMBER,
                home.farm(),
                40,
                home.boundary(),
                home.state(),
                home.county(),
                home.crop(),
                home.texture(),
                home.organicMatterPct(),
                home.ph(),
                home.slopePct());
        List<Program> programs = new ArrayList<>(season.programs());
        season.programs(home.name()).stream()
                .filter(program -> !program.name().equals(DeskSeason.BARRED))
                .map(program -> new Program(
                        CLIMBER,
                        program.name(),
                        program.baseline(),
                        program.refuge(),
                        program.note(),
                        program.passes()))
                .forEach(programs::add);
        InsectPressure worm = season.pests().insects().get(0);
        InsectPressure here = new InsectPressure(
                CLIMBER,
                worm.insect(),
                worm.measure(),
                worm.pressure(),
                worm.lossPerUnitPct(),
                worm.neighbourShare(),
                worm.sample(),
                worm.scouted(),
                worm.source());
        return season.withFields(Stream.concat(season.fields().stream(), Stream.of(climber))
                        .toList())
                .withPrograms(programs)
                .withPests(new Pests(
                        Stream.concat(season.pests().insects().stream(), Stream.of(here))
                                .toList(),
                        List.of(),
                        List.of()));
    }

    private String host() {
        return "Host: " + URI.create(desk.address()).getAuthority() + "\r\n";
    }

    private static String found(Pattern pattern, String in) {
        Matcher matcher = pattern.matcher(in);
        assertThat(matcher.find()).as(in).isTrue();
        return matcher.group(1);
    }

    private Socket socket() throws IOException {
        Socket socket = new Socket(
                InetAddress.getLoopbackAddress(), URI.create(desk.address()).getPort());
        socket.setSoTimeout(WAIT_MS);
        return socket;
    }

    private String raw(String request) throws IOException {
        try (Socket socket = socket()) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
