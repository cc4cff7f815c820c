package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import plumbrow.app.desk.shown.Shown;

/** Who gets in, asked over the network through the whole server. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DoorTest {
    private OpenDesk desk;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(DeskSeason.of(2027)).weighed();
    }

    @AfterAll
    void close() {
        desk.close();
    }

    @Test
    void only_this_machine_is_listened_to() throws IOException {
        int port = URI.create(desk.address()).getPort();
        List<InetAddress> others = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> !address.isLoopbackAddress())
                .toList();
        for (InetAddress address : others) {
            try (Socket socket = new Socket()) {
                socket.connect(new InetSocketAddress(address, port), 2000);
                throw new AssertionError("the desk answers at " + address);
            } catch (IOException refused) {
                assertThat(refused).isNotNull();
            }
        }
        assertThat(Plain.get("http://localhost:" + port + "/")).startsWith("200 ");
    }

    @Test
    void a_foreign_name_gets_a_sentence_and_no_page() throws IOException {
        assertThat(raw("GET / HTTP/1.1\r\nHost: rebound.example:8040\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400")
                .contains("on this machine only");
    }

    @Test
    void a_slash_in_the_name_of_a_field_stays_in_the_name() {
        assertThat(Plain.get(desk.address() + "/fields/" + Shown.part(DeskSeason.AWKWARD) + "/weighing"))
                .startsWith("200 ");
    }

    @Test
    void nonsense_gets_no_trace() throws IOException {
        assertThat(raw("GET /%zz HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400")
                .doesNotContain("Exception", "at org.");
        assertThat(raw("DELETE / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .doesNotContain("Exception", "at org.");
        assertThat(Plain.get(desk.address() + "/figures/../WEB-INF")).startsWith("404 ");
    }

    @Test
    void what_a_page_asks_wrongly_leaves_nothing_in_the_log_of_faults() throws IOException {
        Path log = Path.of(System.getProperty("plumbrow.log", ""));
        long before = Files.exists(log) ? Files.size(log) : 0;
        for (int i = 0; i < 20; i++) {
            for (String wrong : List.of("/log?x=%", "/check?standing=%zz", "/figures?q=%E0%", "/api/log/x/strike")) {
                assertThat(raw("GET " + wrong + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                        .startsWith("HTTP/1.1 4");
            }
        }
        assertThat(raw("POST /figures/pert HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type:"
                        + " application/x-www-form-urlencoded\r\nContent-Length: 3\r\n\r\na=%"))
                .startsWith("HTTP/1.1 4");
        assertThat(Files.exists(log) ? Files.size(log) : 0).isEqualTo(before);
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(
                InetAddress.getLoopbackAddress(), URI.create(desk.address()).getPort())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
