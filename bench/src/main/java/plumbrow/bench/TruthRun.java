package plumbrow.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.ocr.OcrDoubts;
import plumbrow.documents.ocr.Tesseract;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.reading.LabelReader;
import plumbrow.documents.reading.PaperSort;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;

/**
 * Reads papers from outside and compares with what a person wrote down of them. The truth of x.pdf is x.tsv in the folder of
 * truths; docs/reading.md has the format.
 */
public final class TruthRun {
    /** Kinds whose wrong value may hurt someone. */
    private static final Set<String> GRAVE =
            Set.of("FIRST_AID", "ACUTE_TOXICITY", "FLASH_POINT", "REENTRY", "PRE_HARVEST", "USE_RATE", "SEASON_MAX");

    private static final String SECTION = "SECTION";

    private static final class Count {
        int truths;
        int found;
        int read;
        int right;

        String row(String name) {
            return String.format(
                    Locale.US,
                    "%-22s %5d %5d %5d %5d  %6.1f %%  %6.1f %%%n",
                    name,
                    truths,
                    found,
                    read,
                    right,
                    read == 0 ? 100.0 : 100.0 * right / read,
                    truths == 0 ? 100.0 : 100.0 * found / truths);
        }
    }

    /** A value as read, of either sort of paper. */
    private record Value(String kind, Record content, String words, int page) {}

    private record Section(String number) {}

    private final Set<String> judgedOfSheets;
    private final Set<String> judgedOfLabels;
    private final Map<String, Count> byKind = new TreeMap<>();
    private final Map<String, Count> byPaper = new TreeMap<>();
    private final Count all = new Count();
    private final StringBuilder list = new StringBuilder();
    private int grave;

    private TruthRun(Path truths) throws IOException {
        judgedOfSheets = judged(truths, "sheet");
        judgedOfLabels = judged(truths, "label");
    }

    /**
     * Runs it; arguments: a folder of PDFs, a folder of truths, a pattern for the names of the papers (all where it is left out),
     * and "counts" to show no single values.
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length < 2) {
            System.err.println("A folder of PDFs and a folder of truths (name.tsv for name.pdf) are needed.");
            System.exit(2);
        }
        Path papers = Path.of(arguments[0]);
        Path truths = Path.of(arguments[1]);
        Pattern names = Pattern.compile(arguments.length > 2 ? arguments[2] : ".*");
        boolean counts = Arrays.asList(arguments).contains("counts");
        TruthRun run = new TruthRun(truths);
        List<Path> files;
        try (Stream<Path> all = Files.list(truths)) {
            files = all.filter(file -> file.toString().endsWith(".tsv"))
                    .filter(file -> names.matcher(name(file)).matches())
                    .sorted()
                    .toList();
        }
        for (Path file : files) {
            run.add(papers.resolve(name(file) + ".pdf"), file);
        }
        System.out.print(run.report(!counts));
    }

    private static String name(Path file) {
        return file.getFileName().toString().replaceAll("\\.\\w+$", "");
    }

    /** The kinds that all truths of a sort are complete in, from judged.txt: lines "sheet KIND KIND …" and "label KIND …". */
    private static Set<String> judged(Path truths, String sort) throws IOException {
        try (Stream<String> lines = Files.lines(truths.resolve("judged.txt"))) {
            return lines.filter(line -> line.startsWith(sort + " "))
                    .flatMap(line -> Arrays.stream(line.split("\\s+")).skip(1))
                    .collect(Collectors.toSet());
        }
    }

    private void add(Path pdf, Path truth) throws IOException {
        List<TruthRow> rows = new ArrayList<>();
        for (String line : Files.readAllLines(truth)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                rows.add(TruthRow.of(line));
            }
        }
        boolean label = name(truth).startsWith("label");
        Set<String> judged = label ? judgedOfLabels : judgedOfSheets;
        List<Value> values = new ArrayList<>();
        try {
            values.addAll(values(pdf, label));
        } catch (PaperTrouble trouble) {
            list.append(name(pdf))
                    .append(" trouble ")
                    .append(trouble.getMessage())
                    .append('\n');
        }
        values.removeIf(value -> !judged.contains(value.kind));
        for (Value value : values) {
            boolean right = rows.stream().anyMatch(row -> row.kind().equals(value.kind) && row.fits(value.content));
            for (Count count : counts(value.kind, name(pdf))) {
                count.read++;
                count.right += right ? 1 : 0;
            }
            if (!right) {
                grave += GRAVE.contains(value.kind) ? 1 : 0;
                list.append(name(pdf) + " wrong  " + value.kind + " " + value.words + "  [page " + value.page + "]\n");
            }
        }
        for (TruthRow row : rows) {
            if (row.required() && judged.contains(row.kind())) {
                boolean found =
                        values.stream().anyMatch(value -> row.kind().equals(value.kind) && row.fits(value.content));
                for (Count count : counts(row.kind(), name(pdf))) {
                    count.truths++;
                    count.found += found ? 1 : 0;
                }
                if (!found) {
                    list.append(name(pdf) + " missed " + row.words() + "\n");
                }
            }
        }
    }

    private List<Count> counts(String kind, String paper) {
        return List.of(
                all,
                byKind.computeIfAbsent(kind, each -> new Count()),
                byPaper.computeIfAbsent(paper, each -> new Count()));
    }

    /** All that is stated; what is unclear or without data is not. */
    private List<Value> values(Path pdf, boolean label) {
        Paper paper = PaperSort.read(pdf, PaperLimits.USUAL, new Tesseract());
        List<Value> values = new ArrayList<>();
        if ((PaperSort.of(paper) == PaperSort.LABEL) != label) {
            list.append(name(pdf) + " taken for a " + PaperSort.of(paper) + "\n");
        }
        if (PaperSort.of(paper) == PaperSort.LABEL) {
            LabelPaper read = OcrDoubts.over(LabelReader.read(paper), paper.optical());
            for (LabelReading.OnPaper reading : read.readings()) {
                if (reading instanceof LabelReading.Stated stated) {
                    values.add(new Value(
                            stated.kind().name(),
                            (Record) stated.content(),
                            stated.words(),
                            stated.quote().page()));
                } else if (reading instanceof LabelReading.Unclear) {
                    list.append(name(pdf) + " unclear " + reading.kind() + " " + reading.words() + "\n");
                }
            }
        } else {
            SafetySheet read = OcrDoubts.over(SheetReader.read(paper), paper.optical());
            read.sections()
                    .forEach(section -> values.add(new Value(
                            SECTION,
                            new Section(String.valueOf(section.section().number())),
                            section.section().name(),
                            0)));
            for (Reading.OnPaper reading : read.readings()) {
                if (reading instanceof Reading.Stated stated) {
                    values.add(new Value(
                            stated.kind().name(),
                            (Record) stated.content(),
                            stated.words(),
                            stated.quote().page()));
                } else if (reading instanceof Reading.Unclear) {
                    list.append(name(pdf) + " unclear " + reading.kind() + " " + reading.words() + "\n");
                }
            }
        }
        return values;
    }

    private String report(boolean single) {
        StringBuilder text = new StringBuilder("                       truth found  read right  precision  recall\n");
        byKind.forEach((kind, count) -> text.append(count.row(kind)));
        text.append('\n');
        byPaper.forEach((paper, count) -> text.append(count.row(paper)));
        text.append('\n')
                .append(all.row("all"))
                .append(
                        "wrong among first aid, toxicity with its hours, flash point, re-entry, pre-harvest, rate and season maximum: ")
                .append(grave)
                .append('\n');
        return single ? list.append('\n').append(text).toString() : text.toString();
    }
}
