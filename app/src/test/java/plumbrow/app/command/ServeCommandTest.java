package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import plumbrow.app.SmallSeason;

@SuppressWarnings("NullAway.Init")
class ServeCommandTest {
    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SmallSeason.of(2027));
    }

    @Test
    void theDeskIsOpenUntilItIsClosed() throws Exception {
        CompletableFuture<ConfigurableApplicationContext> opened = new CompletableFuture<>();
        DeskDoor watched = (file, port) -> {
            ConfigurableApplicationContext desk = DeskDoor.REAL.open(file, port);
            opened.complete(desk);
            return desk;
        };
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Screen screen = new Screen(new PrintWriter(out), new PrintWriter(err), false);
        String[] typed = {"serve", "--book", book.toString(), "--port", "0"};
        CompletableFuture<Integer> code = CompletableFuture.supplyAsync(() -> Commands.run(typed, screen, watched));
        String address;
        try (ConfigurableApplicationContext desk = opened.get(60, TimeUnit.SECONDS)) {
            String port = Objects.requireNonNull(desk.getEnvironment().getProperty("local.server.port"));
            address = "http://127.0.0.1:" + port;
            HttpRequest request =
                    HttpRequest.newBuilder(URI.create(address + "/")).build();
            String page = HttpClient.newHttpClient()
                    .send(request, BodyHandlers.ofString())
                    .body();
            assertThat(page).contains("North 80");
        }
        assertThat(code.get(60, TimeUnit.SECONDS)).isZero();
        assertThat(out.toString()).isEqualTo("The desk is open: " + address + "\nCtrl-C closes it.\n");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aTakenPortIsSaidSo() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            plumbrow("serve", "--book", book, "--port", taken.getLocalPort())
                    .refused("Port " + taken.getLocalPort() + " is taken by another program");
        }
    }

    @Test
    void badPortsAndBooksAreRefused() {
        plumbrow("serve", "--book", book, "--port", -1).refused("The port is -1; expected 0 to 65535.");
        plumbrow("serve", "--book", book, "--port", "eighty").misused("'eighty'");
        plumbrow("serve", "--book", folder.resolve("none.book")).refused("There is no book");
    }
}
