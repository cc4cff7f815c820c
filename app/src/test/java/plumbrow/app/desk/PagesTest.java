package plumbrow.app.desk;

import java.net.URI;
import java.net.http.*;
import java.nio.file.*;
import org.junit.jupiter.api.Test;
import plumbrow.app.desk.shown.Shown;

class PagesTest {
    @Test
    void look() throws Exception {
        try (OpenDesk desk = OpenDesk.over(DeskSeason.of(2027))) {
            for (String p : new String[] {
                "/",
                "/fields/North%2080",
                "/fields/North%2080/weighing",
                "/fields/" + Shown.part(DeskSeason.AWKWARD) + "/weighing",
                "/fields/" + Shown.part(DeskSeason.STUCK) + "/weighing",
                "/figures",
                "/figures/" + plumbrow.science.Figures.all().get(0).id(),
                "/nothing",
                "/desk.css",
                "/webjars/htmx.org/dist/htmx.min.js"
            }) {
                var r = HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(desk.address() + p))
                                        .build(),
                                HttpResponse.BodyHandlers.ofString());
                System.out.println(p + " " + r.statusCode() + " " + r.body().length() + " "
                        + r.headers().map());
                if (r.statusCode() >= 400)
                    System.out.println(
                            r.body().substring(0, Math.min(3000, r.body().length())));
            }
        }
    }
}
