package plumbrow.bench;

import java.io.IOException;
import java.net.ConnectException;
import java.net.HttpURLConnection;
import java.net.ServerSocket;
import java.net.SocketException;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A web application that can be started.
 *
 * @param name as the results call it
 * @param command what is run; {@value #PORT} in it is a free port
 * @param page what has to be answered
 */
record Starter(String name, List<String> command, String page) {
    static final String PORT = "{port}";
    private static final long PATIENCE_NS = Duration.ofSeconds(60).toNanos();

    /** Milliseconds from spawning the process to the page answered; it is stopped again. */
    double startMs() throws IOException, InterruptedException {
        int port = freePort();
        List<String> filled = command.stream()
                .map(word -> word.replace(PORT, String.valueOf(port)))
                .toList();
        ProcessBuilder builder = new ProcessBuilder(filled)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT);
        long begun = System.nanoTime();
        Process process = builder.start();
        try {
            while (!answers(port)) {
                if (!process.isAlive() || System.nanoTime() - begun > PATIENCE_NS) {
                    throw new IOException(name + " did not open: " + String.join(" ", filled));
                }
                TimeUnit.MILLISECONDS.sleep(2);
            }
            return (System.nanoTime() - begun) / 1e6;
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    private boolean answers(int port) throws IOException {
        HttpURLConnection connection = (HttpURLConnection)
                URI.create("http://127.0.0.1:" + port + page).toURL().openConnection();
        try {
            if (connection.getResponseCode() != HttpURLConnection.HTTP_OK) {
                return false;
            }
            connection.getInputStream().readAllBytes();
            return true;
        } catch (ConnectException notYet) {
            return false;
        } catch (SocketException closed) {
            return false;
        } finally {
            connection.disconnect();
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
