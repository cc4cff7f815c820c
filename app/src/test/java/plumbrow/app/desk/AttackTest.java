package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
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

    /** The other side closed while something was under way to it, which loses its answer. */
    private static final String CUT_OFF = "cut off";

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

    /**
     * Files that are sent a few bytes at a time, more of them than there are places for files: those in the places are refused once
     * their time is up although each keeps sending, the others at once; meanwhile pages are read, and afterwards a file comes in.
     */
    @Test
    void trickled_files_keep_nobody_out() throws Exception {
        System.setProperty("plumbrow.patience", "1");
        try (OpenDesk hasty = OpenDesk.over(DeskSeason.of(2027))) {
            int port = URI.create(hasty.address()).getPort();
            String host = "Host: 127.0.0.1:" + port + "\r\n";
            String head = "--x\r\nContent-Disposition: form-data; name=\"papers\"; filename=\"a.pdf\"\r\n\r\n";
            List<Socket> slow = new ArrayList<>();
            List<String> answers = List.of();
            try {
                for (int i = 0; i < 40; i++) {
                    Socket socket = socket(port);
                    slow.add(socket);
                    String length =
                            i % 2 == 0 ? "Content-Length: 1000000\r\n\r\n" : "Transfer-Encoding: chunked\r\n\r\n";
                    socket.getOutputStream()
                            .write(("POST /shelf HTTP/1.1\r\n" + host
                                            + "Content-Type: multipart/form-data; boundary=x\r\n" + length
                                            + (i % 2 == 0
                                                    ? head
                                                    : Integer.toHexString(head.length()) + "\r\n" + head + "\r\n"))
                                    .getBytes(StandardCharsets.US_ASCII));
                }
                assertThat(raw(port, "GET /log HTTP/1.1\r\n" + host + "Connection: close\r\n\r\n"))
                        .startsWith("HTTP/1.1 200");
                answers = trickled(slow, List.of("%", "1\r\n%\r\n"));
            } finally {
                for (Socket socket : slow) {
                    socket.close();
                }
            }
            assertThat(answers)
                    .hasSize(40)
                    .allMatch(answer -> answer.matches("(?s)(HTTP/1.1 (408|503) .*|" + CUT_OFF + ")"));
            assertThat(answers)
                    .filteredOn(answer -> answer.startsWith("HTTP/1.1 408"))
                    .isNotEmpty()
                    .allMatch(answer -> answer.contains("did not come within 1 s"));
            String file = head + "%PDF\r\n--x--\r\n";
            assertThat(raw(
                            port,
                            "POST /shelf HTTP/1.1\r\n" + host
                                    + "Connection: close\r\nContent-Type: multipart/form-data; boundary=x\r\n"
                                    + "Content-Length: " + file.length() + "\r\n\r\n" + file))
                    .as("the places are free again: a file is received, and refused for want of a token")
                    .startsWith("HTTP/1.1 403");
        } finally {
            System.clearProperty("plumbrow.patience");
        }
    }

    /** Sends one piece after another on each of them until the other side has answered all. */
    private static List<String> trickled(List<Socket> slow, List<String> pieces) throws IOException {
        @Nullable String[] answers = new String[slow.size()];
        int open = answers.length;
        for (int round = 0; open > 0 && round < 20_000; round++) {
            for (int i = 0; i < answers.length; i++) {
                if (answers[i] == null) {
                    Socket socket = slow.get(i);
                    socket.setSoTimeout(1);
                    try {
                        int first = socket.getInputStream().read();
                        socket.setSoTimeout(WAIT_MS);
                        answers[i] = first < 0
                                ? ""
                                : (char) first
                                        + new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
                        open--;
                    } catch (SocketTimeoutException stillListening) {
                        answers[i] = sent(socket, pieces.get(i % pieces.size()));
                        open -= answers[i] == null ? 0 : 1;
                    } catch (IOException cutOff) {
                        answers[i] = CUT_OFF;
                        open--;
                    }
                }
            }
        }
        return Stream.of(answers)
                .map(answer -> answer == null ? "never" : answer)
                .toList();
    }

    private static @Nullable String sent(Socket socket, String piece) {
        try {
            socket.getOutputStream().write(piece.getBytes(StandardCharsets.US_ASCII));
            return null;
        } catch (IOException cutOff) {
            return CUT_OFF;
        }
    }

    /** A body that was refused for its time is not received to its end before the connection is closed. */
    @Test
    void what_was_not_received_is_not_waited_for() throws Exception {
        System.setProperty("plumbrow.patience", "1");
        try (OpenDesk hasty = OpenDesk.over(DeskSeason.of(2027))) {
            int port = URI.create(hasty.address()).getPort();
            try (Socket slow = socket(port)) {
                slow.getOutputStream()
                        .write(("POST /api/log HTTP/1.1\r\nHost: 127.0.0.1:" + port
                                        + "\r\nContent-Type: application/json\r\nContent-Length: 100000\r\n\r\n{")
                                .getBytes(StandardCharsets.US_ASCII));
                assertThat(trickled(List.of(slow), List.of(" ")).get(0))
                        .matches("(?s)(HTTP/1.1 408 .*did not come within 1 s.*|" + CUT_OFF + ")");
            }
        } finally {
            System.clearProperty("plumbrow.patience");
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
        return socket(URI.create(desk.address()).getPort());
    }

    private static Socket socket(int port) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setSoTimeout(WAIT_MS);
        return socket;
    }

    private String raw(String request) throws IOException {
        return raw(URI.create(desk.address()).getPort(), request);
    }

    private static String raw(int port, String request) throws IOException {
        try (Socket socket = socket(port)) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
