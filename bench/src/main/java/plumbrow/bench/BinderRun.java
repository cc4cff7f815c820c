package plumbrow.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.fieldplan.FieldPlans;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.demo.DemoBook;
import plumbrow.documents.binder.Binder;
import plumbrow.documents.workbook.WorkbookReader;

/** Times the binder of a farm of 60 fields: a farm of the demo whose fields stand there ten times, each with all its rows. */
public final class BinderRun {
    private static final String FARM = "Millrace";
    private static final int FIELDS = 60;
    private static final double TARGET_S = 30;
    private static final int NEXT_DRAWS = 4_000;

    private BinderRun() {}

    /** Runs it all; the one argument is the file to write the section to. */
    public static void main(String[] arguments) throws IOException {
        Season season = season();
        List<Field> fields = season.fields().stream()
                .filter(field -> field.farm().equals(FARM))
                .limit(FIELDS)
                .toList();
        long start = System.nanoTime();
        Advice advice = Adviser.advise(season.withFields(fields), WeighingOptions.DEFAULT, (done, all) -> {});
        double weighed = seconds(start);
        double busy = processor();
        start = System.nanoTime();
        List<FieldPlan> plans = plans(season, advice);
        double planned = seconds(start);
        start = System.nanoTime();
        byte[] pdf = Binder.print(new Binder.Contents(season, plans, List.of(), null, ""));
        double printed = seconds(start);
        busy = processor() - busy;
        int pages;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            pages = document.getNumberOfPages();
        }
        double binder = planned + printed;
        Files.writeString(
                Path.of(arguments[0]),
                String.format(
                        Locale.ROOT,
                        """
                        | fields | pages | kB | weighed, s | plans, s | printed, s |
                        |--:|--:|--:|--:|--:|--:|
                        | %d | %d | %,d | %.1f | %.1f | %.1f |

                        - Target: the binder of a weighed farm of %d fields, without annex, within %.0f s: **%s** (%.1f s, of them %.1f s of
                          processor time over all threads).
                        """,
                        plans.size(),
                        pages,
                        pdf.length / 1000,
                        weighed,
                        planned,
                        printed,
                        FIELDS,
                        TARGET_S,
                        binder < TARGET_S ? "met" : "missed",
                        binder,
                        busy));
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    /** Processor time of the whole process so far [s]. */
    private static double processor() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime() / 1e9;
    }

    private static List<FieldPlan> plans(Season season, Advice advice) {
        FieldPlans plans = new FieldPlans(season);
        OwnSeasons own = OwnSeasons.of(season);
        WeighingOptions few = WeighingOptions.DEFAULT.withDraws(NEXT_DRAWS);
        DrawSource drawn = new DrawSource(few.draws(), few.seed());
        return advice.fields().parallelStream()
                .map(of ->
                        plans.of(of.field(), null, of, "", Optional.of(Adviser.next(own.of(of.field()), few, drawn))))
                .toList();
    }

    /** The demo with the farm's fields ten times: "Levee", "Levee 2" to "Levee 10", with every row that names them. */
    private static Season season() throws IOException {
        Path folder = Files.createTempDirectory("plumbrow-bench");
        DemoBook.copyTo(folder);
        Season demo = WorkbookReader.read(folder);
        List<String> names = demo.fields().stream()
                .filter(field -> field.farm().equals(FARM))
                .map(Field::name)
                .toList();
        String any = names.stream().map(Pattern::quote).collect(Collectors.joining("|"));
        Pattern cell = Pattern.compile("(?<=^|,)(?:" + any + ")(?=,|$)");
        Pattern property = Pattern.compile("(?<=\"field\": \")(?:" + any + ")(?=\")");
        int copies = FIELDS / names.size();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                boolean map = file.toString().endsWith(".geojson");
                List<String> lines = new ArrayList<>();
                for (String line : Files.readAllLines(file)) {
                    Matcher found = (map ? property : cell).matcher(line);
                    lines.add(line);
                    for (int copy = 2; copy <= copies && found.find(0); copy++) {
                        String other = found.replaceFirst(Matcher.quoteReplacement(found.group() + " " + copy));
                        lines.add(
                                map ? lines.size() - 1 : lines.size(),
                                map && !other.endsWith(",") ? other + "," : other);
                    }
                }
                Files.write(file, lines);
            }
        }
        return WorkbookReader.read(folder);
    }
}
