package plumbrow.app.desk;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

/** Asks over the network, through the whole server. */
final class Plain {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private Plain() {}

    /** Status and body. */
    static String get(String address) {
        try {
            HttpResponse<String> answer = CLIENT.send(
                    HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
            return answer.statusCode() + " " + answer.body();
        } catch (IOException fault) {
            throw new AssertionError(fault);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }
}
