package plumbrow.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.context.ConfigurableApplicationContext;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.serving.Desk;

/**
 * A book of as many fields as asked for, on farms of forty, opened, compared, checked and planned by the desk as a person does
 * it: how large each page is, how long it takes, and how much memory is in use after it.
 */
public final class LargeBookRun {
    private static final int FIELDS_A_FARM = 40;
    private static final String FIELD = "/fields/Field%201";
    private static final List<String> PAGES =
            List.of("/", "/check", "/plan", FIELD + "/weighing", FIELD + "/check", "/log", "/map", "/pests");

    private final HttpClient client = HttpClient.newHttpClient();
    private final StringBuilder rows;
    private final int fields;

    private LargeBookRun(int fields, StringBuilder rows) {
        this.fields = fields;
        this.rows = rows;
    }

    /** The first argument is the file to write the section to, the others are numbers of fields. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        StringBuilder rows = new StringBuilder("""
                | fields | page | kB | first s | again s | MB in use after it |
                |--:|---|--:|--:|--:|--:|
                """);
        for (int i = 1; i < arguments.length; i++) {
            new LargeBookRun(Integer.parseInt(arguments[i]), rows).run();
        }
        Files.writeString(
                Path.of(arguments[0]),
                rows
                        + String.format(
                                Locale.ROOT,
                                "%n- Java may use %,d MB. “In use” is counted after asking for a collection of what is no longer used.%n",
                                Runtime.getRuntime().maxMemory() >> 20));
    }

    private void run() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("plumbrow-large");
        Path file = folder.resolve("large.book");
        long start = System.nanoTime();
        try (Book book = Book.create(file)) {
            book.put(onFarms(BenchSeason.of(fields)));
        }
        row("(the season put into a new book)", Files.size(file), seconds(start), Double.NaN);
        start = System.nanoTime();
        try (ConfigurableApplicationContext desk = Desk.open(file, 0)) {
            String address = "http://127.0.0.1:" + desk.getEnvironment().getProperty("local.server.port");
            row("(the desk opened)", 0, seconds(start), Double.NaN);
            start = System.nanoTime();
            while (get(address + "/").body().contains("Weighing: ")) {
                Thread.sleep(200);
            }
            row("(every field weighed)", 0, seconds(start), Double.NaN);
            for (String page : PAGES) {
                start = System.nanoTime();
                HttpResponse<String> first = get(address + page);
                double took = seconds(start);
                start = System.nanoTime();
                get(address + page);
                row(page, first.body().length(), took, seconds(start));
                if (first.statusCode() != 200) {
                    throw new IllegalStateException(page + " answers " + first.statusCode());
                }
            }
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }

    private HttpResponse<String> get(String address) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private void row(String page, long bytes, double first, double again) {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        String row = String.format(
                Locale.ROOT,
                "| %,d | %s | %s | %.2f | %s | %,d |%n",
                fields,
                page,
                bytes == 0 ? "" : String.format(Locale.ROOT, "%,d", bytes / 1024),
                first,
                Double.isNaN(again) ? "" : String.format(Locale.ROOT, "%.2f", again),
                (runtime.totalMemory() - runtime.freeMemory()) >> 20);
        rows.append(row);
        System.out.print(row);
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    private static Season onFarms(Season season) {
        List<Farm> farms = new ArrayList<>();
        List<Field> fields = new ArrayList<>();
        for (Field field : season.fields()) {
            String farm = "Farm " + (fields.size() / FIELDS_A_FARM + 1);
            if (fields.size() % FIELDS_A_FARM == 0) {
                farms.add(new Farm(farm, "Grower of " + farm, 0.9, 0.95));
            }
            fields.add(new Field(
                    field.name(),
                    farm,
                    field.acres(),
                    field.boundary(),
                    field.state(),
                    field.county(),
                    field.crop(),
                    field.texture(),
                    field.organicMatterPct(),
                    field.ph(),
                    field.slopePct()));
        }
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                farms,
                fields,
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                season.work());
    }
}
