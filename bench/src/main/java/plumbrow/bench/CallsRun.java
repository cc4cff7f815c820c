package plumbrow.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import plumbrow.app.json.Json;
import plumbrow.science.Figures;
import plumbrow.science.figure.Figure;

/**
 * Asks the desk figures over REST, fifty at a time, and compares what a call costs the desk with the same question
 * answered and written as JSON in one thread of this process. Each answer from the desk is held against ours.
 */
public final class CallsRun {
    private static final double TARGET = 3;
    private static final int CALLS = 10_000;
    private static final int AT_A_TIME = 50;
    private static final int WARM_UP_ROUNDS = 8;
    private static final int ROUNDS = 5;

    private final List<Question> questions = questions();
    private final String desk;
    private final ProcessHandle process;
    private final HttpClient client;

    private record Question(Figure figure, Map<String, String> inputs, String path, String answer) {
        String ask() {
            return Json.of(figure.answer(inputs));
        }
    }

    /** What one call costs, in microseconds. */
    private record Cost(double wall, double processor) {
        static Cost of(long wallNs, long processorNs) {
            return new Cost(wallNs / 1e3 / CALLS, processorNs / 1e3 / CALLS);
        }
    }

    private CallsRun(String desk, ProcessHandle process, HttpClient client) {
        this.desk = desk;
        this.process = process;
        this.client = client;
    }

    /** Runs it; arguments: the address of an open desk, its process, the file to write the section to. */
    public static void main(String[] arguments) throws IOException, InterruptedException, ExecutionException {
        ProcessHandle process = ProcessHandle.of(Long.parseLong(arguments[1])).orElseThrow();
        ExecutorService callers = Executors.newFixedThreadPool(AT_A_TIME);
        try {
            HttpClient client = HttpClient.newBuilder()
                    .version(HttpClient.Version.HTTP_1_1)
                    .connectTimeout(Duration.ofSeconds(10))
                    .build();
            CallsRun run = new CallsRun(arguments[0], process, client);
            List<Cost> direct = new ArrayList<>();
            List<Cost> over = new ArrayList<>();
            for (int round = 0; round < WARM_UP_ROUNDS + ROUNDS; round++) {
                Cost ours = run.direct();
                Cost theirs = run.over(callers);
                if (round >= WARM_UP_ROUNDS) {
                    direct.add(ours);
                    over.add(theirs);
                }
            }
            Files.writeString(Path.of(arguments[2]), run.section(direct, over));
        } finally {
            callers.shutdownNow();
        }
    }

    /** Every worked example of every figure. */
    private static List<Question> questions() {
        return Figures.all().stream()
                .flatMap(figure -> figure.examples().stream().map(example -> question(figure, example.inputs())))
                .toList();
    }

    private static Question question(Figure figure, Map<String, String> inputs) {
        String query = inputs.entrySet().stream()
                .map(input -> input.getKey() + "=" + URLEncoder.encode(input.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&", "?", ""));
        return new Question(figure, inputs, "/api/figures/" + figure.id() + query, Json.of(figure.answer(inputs)));
    }

    private Cost direct() {
        long wall = System.nanoTime();
        long processor = thisThreadNs();
        long length = 0;
        for (int call = 0; call < CALLS; call++) {
            length += questions.get(call % questions.size()).ask().length();
        }
        Cost cost = Cost.of(System.nanoTime() - wall, thisThreadNs() - processor);
        if (length == 0) {
            throw new IllegalStateException("nothing was answered");
        }
        return cost;
    }

    private Cost over(ExecutorService callers) throws InterruptedException, ExecutionException {
        AtomicInteger next = new AtomicInteger();
        long wall = System.nanoTime();
        long processor = processorNs();
        List<Future<?>> all = new ArrayList<>();
        for (int caller = 0; caller < AT_A_TIME; caller++) {
            all.add(callers.submit(() -> {
                for (int call = next.getAndIncrement(); call < CALLS; call = next.getAndIncrement()) {
                    ask(questions.get(call % questions.size()));
                }
                return null;
            }));
        }
        for (Future<?> caller : all) {
            caller.get();
        }
        return Cost.of(System.nanoTime() - wall, processorNs() - processor);
    }

    private void ask(Question question) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(desk + question.path())).build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        if (answer.statusCode() != 200 || !answer.body().equals(question.answer())) {
            throw new IOException(question.path() + " was answered " + answer.statusCode() + ": " + answer.body());
        }
    }

    private static long thisThreadNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private long processorNs() {
        return process.info().totalCpuDuration().orElseThrow().toNanos();
    }

    private String section(List<Cost> direct, List<Cost> over) {
        double ours = median(direct.stream().map(Cost::processor).toList());
        double theirs = median(over.stream().map(Cost::processor).toList());
        return "| | µs of processor time per call | µs of the wall clock per call |\n|---|--:|--:|\n"
                + row(
                        "answered and written as JSON, one thread",
                        ours,
                        median(direct.stream().map(Cost::wall).toList()))
                + row(
                        "asked over REST, " + AT_A_TIME + " at a time",
                        theirs,
                        median(over.stream().map(Cost::wall).toList()))
                + String.format(
                        Locale.ROOT,
                        "%n- %,d calls a round, %d rounds after warm-up, %d questions (every worked example): no error, every"
                                + " answer the same to the letter.%n- A call over REST costs the desk **%.1f** times what the"
                                + " answer and its JSON cost; target at most %.0f: %s.%n",
                        CALLS,
                        ROUNDS,
                        questions.size(),
                        theirs / ours,
                        TARGET,
                        theirs <= TARGET * ours ? "met" : "missed");
    }

    private static String row(String what, double processor, double wall) {
        return String.format(Locale.ROOT, "| %s | %.0f | %.0f |%n", what, processor, wall);
    }

    private static double median(List<Double> values) {
        return Times.of(values).median();
    }
}
