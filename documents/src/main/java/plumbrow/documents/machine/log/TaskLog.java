package plumbrow.documents.machine.log;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.ratemap.Metering;
import plumbrow.science.figure.Numbers;

/**
 * Reads what machines wrote into task data: for each task its times, the totals that the machine kept, and its time logs.
 *
 * <p>Acres and amounts are the machine's totals where it kept them, in the task's times or at the end of its log; else they are
 * added up from the log. Where both are there and differ by more than 5 %, a note says so.
 *
 * <p>Source: ISO 11783-10 and the data dictionary of ISO 11783-11: totals 0050 (L), 0051 (kg), 0052 (count), 0074 (m²); actual rates 0002,
 * 0007, 000C; working width 0043 [mm]; work state 008D.
 */
public final class TaskLog {
    private static final String AREA = "0074";
    private static final String WIDTH = "0043";
    private static final String STATE = "008D";
    /** Work state: 0 off, 1 on, 2 error, 3 not known. */
    private static final int ON = 1;

    private static final double FAR_OFF = 0.05;
    private static final double SAME_WIDTH = 0.02;
    private static final int MOST_TASKS = 1000;

    private final LogFiles files;
    private final Map<String, String> names = new HashMap<>();

    private TaskLog(LogFiles files) {
        this.files = files;
    }

    /** All tasks of a zip or folder in which something was done. */
    public static MachineWork.Log read(Path path) {
        return new TaskLog(LogFiles.of(path)).read(String.valueOf(path.getFileName()));
    }

    private MachineWork.Log read(String name) {
        List<Element> all = new ArrayList<>();
        Element main = Element.read("TASKDATA.XML", files.main());
        if (!main.tag().equals("ISO11783_TaskData")) {
            throw new LogTrouble("TASKDATA.XML in " + name + " begins with " + LogFiles.shown(main.tag())
                    + "; expected ISO11783_TaskData.");
        }
        all.addAll(main.children());
        main.all("XFR").forEach(part -> {
            String file = part.at("A") + ".XML";
            if (files.has(file)) {
                all.addAll(Element.read(file, files.file(file)).children());
            }
        });
        for (Element element : all) {
            switch (element.tag()) {
                case "PDT", "WKR" -> names.put(element.at("A"), element.at("B"));
                case "PFD" -> names.put(element.at("A"), element.at("C"));
                default -> {
                    // Of the rest nothing is needed.
                }
            }
        }
        List<Element> tasks =
                all.stream().filter(one -> one.tag().equals("TSK")).toList();
        if (tasks.size() > MOST_TASKS) {
            throw new LogTrouble(name + " holds more than 1,000 tasks; expected those of a season at most.");
        }
        List<MachineWork> works =
                tasks.stream().flatMap(task -> work(task).stream()).toList();
        if (works.isEmpty()) {
            throw new LogTrouble(name + " holds "
                    + (tasks.isEmpty() ? "no task" : tasks.size() == 1 ? "one task" : tasks.size() + " tasks")
                    + (tasks.isEmpty() ? "" : ", and nothing that was done")
                    + "; expected task data that a machine has written times or a log into.");
        }
        return new MachineWork.Log(works);
    }

    private Optional<MachineWork> work(Element task) {
        List<Element> times =
                task.all("TIM").filter(tim -> !tim.at("D").equals("1")).toList();
        List<Element> logs = task.all("TLG").toList();
        if (times.isEmpty() && logs.isEmpty()) {
            return Optional.empty();
        }
        Added added = new Added();
        for (Element log : logs) {
            String file = log.at("A");
            Element header = Element.read(file + ".XML", files.file(file + ".XML"));
            added.log(file, header, files.file(file + ".BIN"));
        }
        List<String> notes = new ArrayList<>();
        Totals kept = totals(task, times, notes);
        added.last.forEach((kind, value) -> kept.offer(kind.ddi(), kind.element(), value, "the end of its log"));
        Double acres = kept.of(AREA).map(total -> total / Metering.M2_PER_ACRE).orElse(null);
        String from = acres == null ? "" : "the machine's total";
        double logged = added.tally.squareMetres() / Metering.M2_PER_ACRE;
        if (acres == null && logged > 0) {
            acres = logged;
            from = "way times working width in its log";
        } else if (acres != null && logged > 0 && Math.abs(logged / acres - 1) > FAR_OFF) {
            notes.add("The machine's total is " + Numbers.fixed(acres, 1) + " ac, and way times width in its log "
                    + Numbers.fixed(logged, 1) + " ac: ask which is right.");
        }
        if (added.tally.gaps() > 0) {
            notes.add(added.tally.gaps() + " gaps of more than a minute or 100 m in the log count as not worked.");
        }
        return Optional.of(new MachineWork(
                task.at("B"),
                names.getOrDefault(task.at("E"), ""),
                names.getOrDefault(task.at("F"), ""),
                moment(times, added, true),
                moment(times, added, false),
                acres,
                from,
                products(task, kept, added, notes),
                added.tally.spots(),
                notes));
    }

    // ---- when ----

    private static MachineWork.@Nullable Moment moment(List<Element> times, Added added, boolean first) {
        List<Element> effective =
                times.stream().filter(tim -> tim.at("D").equals("4")).toList();
        LocalDateTime found = null;
        for (Element tim : effective.isEmpty() ? times : effective) {
            LocalDateTime start = time(tim.at("A"));
            LocalDateTime stop = time(tim.at("B"));
            if (stop == null && start != null) {
                Long seconds = whole(tim.at("C"));
                stop = seconds == null ? null : start.plusSeconds(Math.max(0, Math.min(seconds, 366L * 86_400)));
            }
            LocalDateTime one = first ? start : stop;
            if (one != null && (found == null || (first ? one.isBefore(found) : one.isAfter(found)))) {
                found = one;
            }
        }
        LocalDateTime logged = first ? added.begun : added.ended;
        LocalDateTime time = found == null ? logged : found;
        return time == null ? null : MachineWork.Moment.of(time);
    }

    private static @Nullable LocalDateTime time(String written) {
        try {
            return LocalDateTime.parse(written);
        } catch (DateTimeException withOffset) {
            try {
                return OffsetDateTime.parse(written).toLocalDateTime();
            } catch (DateTimeException none) {
                return null;
            }
        }
    }

    private static @Nullable Long whole(String written) {
        try {
            return Long.parseLong(written);
        } catch (NumberFormatException none) {
            return null;
        }
    }

    // ---- totals that the machine kept ----

    /** Totals by dictionary entry and device element; what is offered first counts. */
    private static final class Totals {
        private final Map<TimeLog.Kind, Double> values = new LinkedHashMap<>();
        private final Map<TimeLog.Kind, String> from = new HashMap<>();

        void offer(String ddi, String element, double value, String where) {
            if (!isTotal(ddi)) {
                return;
            }
            boolean other = values.keySet().stream().anyMatch(kind -> kind.ddi().equals(ddi))
                    && from.entrySet().stream()
                            .anyMatch(entry -> entry.getKey().ddi().equals(ddi)
                                    && !entry.getValue().equals(where));
            if (!other) {
                TimeLog.Kind kind = new TimeLog.Kind(ddi, element);
                values.put(kind, value);
                from.put(kind, where);
            }
        }

        /** All elements together. */
        Optional<Double> of(String ddi) {
            return values.keySet().stream().noneMatch(kind -> kind.ddi().equals(ddi))
                    ? Optional.empty()
                    : Optional.of(values.entrySet().stream()
                            .filter(entry -> entry.getKey().ddi().equals(ddi))
                            .mapToDouble(Map.Entry::getValue)
                            .sum());
        }

        private static boolean isTotal(String ddi) {
            return ddi.equals(AREA) || metering(ddi) != null;
        }
    }

    /** What a total of an entry is of; null for others. */
    private static @Nullable Metering metering(String ddi) {
        return switch (ddi) {
            case "0050" -> Metering.VOLUME;
            case "0051" -> Metering.MASS;
            case "0052" -> Metering.COUNT;
            default -> null;
        };
    }

    /** Totals in the times of the task: the last where they never fall, for the machine goes on counting; else their sum. */
    private static Totals totals(Element task, List<Element> times, List<String> notes) {
        Map<TimeLog.Kind, List<Double>> series = new LinkedHashMap<>();
        for (Element tim : times) {
            tim.all("DLV").forEach(value -> {
                Long amount = whole(value.at("B"));
                if (amount != null) {
                    series.computeIfAbsent(
                                    new TimeLog.Kind(TimeLog.ddi(value.at("A")), value.at("C")),
                                    none -> new ArrayList<>())
                            .add((double) amount);
                }
            });
        }
        Totals totals = new Totals();
        boolean fell = false;
        for (Map.Entry<TimeLog.Kind, List<Double>> entry : series.entrySet()) {
            List<Double> values = entry.getValue();
            boolean falls = false;
            for (int i = 1; i < values.size(); i++) {
                falls |= values.get(i) < values.get(i - 1);
            }
            fell |= falls && Totals.isTotal(entry.getKey().ddi());
            totals.offer(
                    entry.getKey().ddi(),
                    entry.getKey().element(),
                    falls ? values.stream().mapToDouble(Double::doubleValue).sum() : values.get(values.size() - 1),
                    "the task's times");
        }
        if (fell) {
            notes.add(
                    "Totals of task " + LogFiles.shown(task.at("B"))
                            + " fall from one stretch of time to the next, so each stretch counts for itself: look whether that is so.");
        }
        return totals;
    }

    // ---- products ----

    private List<MachineWork.Total> products(Element task, Totals kept, Added added, List<String> notes) {
        Map<String, String> byElement = new HashMap<>();
        List<String> allocated = new ArrayList<>();
        task.all("PAN").forEach(allocation -> {
            String product = names.getOrDefault(allocation.at("A"), "");
            if (!allocation.at("E").isEmpty()) {
                byElement.put(allocation.at("E"), product);
            }
            if (!allocated.contains(product)) {
                allocated.add(product);
            }
        });
        if (allocated.isEmpty()) {
            task.all("TZN")
                    .flatMap(zone -> zone.all("PDV"))
                    .map(value -> names.getOrDefault(value.at("C"), ""))
                    .filter(product -> !product.isEmpty() && !allocated.contains(product))
                    .forEach(allocated::add);
        }
        String only = allocated.size() == 1 ? allocated.get(0) : "";
        Map<String, Double> sums = new LinkedHashMap<>();
        Map<String, Metering> kinds = new HashMap<>();
        kept.values.forEach((kind, value) -> {
            Metering metering = metering(kind.ddi());
            if (metering != null) {
                String product = byElement.getOrDefault(kind.element(), only);
                String key = product + "\0" + metering;
                sums.merge(key, farm(metering, value), Double::sum);
                kinds.put(key, metering);
            }
        });
        List<MachineWork.Total> totals = new ArrayList<>();
        sums.forEach((key, amount) -> totals.add(new MachineWork.Total(
                key.substring(0, key.indexOf('\0')),
                Objects.requireNonNull(kinds.get(key)),
                amount,
                "the machine's total")));
        for (Metering metering : Metering.values()) {
            double logged = added.amount(metering);
            List<MachineWork.Total> same = totals.stream()
                    .filter(total -> total.metering() == metering)
                    .toList();
            if (logged > 0 && same.isEmpty()) {
                totals.add(new MachineWork.Total(only, metering, logged, "rate times ground in its log"));
            } else if (logged > 0) {
                double total =
                        same.stream().mapToDouble(MachineWork.Total::amount).sum();
                if (total == 0 || Math.abs(logged / total - 1) > FAR_OFF) {
                    String unit = " " + metering.farmUnit().symbol();
                    notes.add("The machine's total is " + Numbers.fixed(total, 1) + unit
                            + ", and rate times ground in its log " + Numbers.fixed(logged, 1) + unit
                            + ": ask which is right.");
                }
            }
        }
        if (totals.stream().anyMatch(total -> total.product().isEmpty())) {
            notes.add("The machine does not say which product an amount is of"
                    + (allocated.size() > 1
                            ? "; the task names " + allocated.stream().collect(Collectors.joining(", "))
                            : "")
                    + ".");
        }
        return totals;
    }

    /** Litres, kilograms or seeds in the farm unit. */
    private static double farm(Metering metering, double metric) {
        return switch (metering) {
            case VOLUME ->
                new Amount(Math.max(0, metric), FarmUnit.L).in(FarmUnit.GAL).value();
            case MASS ->
                new Amount(Math.max(0, metric), FarmUnit.KG).in(FarmUnit.LB).value();
            case COUNT -> Math.max(0, metric);
        };
    }

    // ---- logs ----

    /** What the logs of a task add up to. */
    private static final class Added {
        private final Tally tally = new Tally();
        private final Map<Metering, Double> amounts = new HashMap<>();
        private final Map<TimeLog.Kind, Double> last = new LinkedHashMap<>();
        private @Nullable LocalDateTime begun;
        private @Nullable LocalDateTime ended;

        double amount(Metering metering) {
            return amounts.getOrDefault(metering, 0.0);
        }

        void log(String name, Element header, byte[] records) {
            List<TimeLog.Kind> kinds = TimeLog.kinds(header);
            TimeLog.read(
                    name.toUpperCase(Locale.ROOT) + ".BIN",
                    header,
                    records,
                    (at, longitude, latitude, placed, values) -> {
                        boolean works = works(kinds, values);
                        if (works) {
                            begun = begun == null || at.isBefore(begun) ? at : begun;
                            ended = ended == null || at.isAfter(ended) ? at : ended;
                        }
                        for (int i = 0; i < values.length; i++) {
                            Integer value = values[i];
                            if (value != null && Totals.isTotal(kinds.get(i).ddi())) {
                                last.merge(kinds.get(i), (double) value, Math::max);
                            }
                        }
                        if (!placed) {
                            return;
                        }
                        double before = tally.squareMetres();
                        tally.add(new Tally.Point(at, longitude, latitude, works ? width(kinds, values) : 0));
                        double ground = tally.squareMetres() - before;
                        for (Metering metering : Metering.values()) {
                            double steps = highest(kinds, values, metering.actualDdi());
                            if (ground > 0 && steps > 0) {
                                double acres = ground / Metering.M2_PER_ACRE;
                                amounts.merge(metering, metering.perAcre(steps).value() * acres, Double::sum);
                            }
                        }
                    });
        }

        /** By the work state where it is logged; else by whether anything is put on. */
        private static boolean works(List<TimeLog.Kind> kinds, @Nullable Integer[] values) {
            boolean stated = false;
            for (int i = 0; i < values.length; i++) {
                Integer value = values[i];
                if (kinds.get(i).ddi().equals(STATE) && value != null) {
                    stated = true;
                    if (value == ON) {
                        return true;
                    }
                }
            }
            if (stated) {
                return false;
            }
            for (Metering metering : Metering.values()) {
                if (highest(kinds, values, metering.actualDdi()) > 0) {
                    return true;
                }
            }
            return false;
        }

        /** The highest of an entry: that of the part that works, where several say it. */
        private static double highest(List<TimeLog.Kind> kinds, @Nullable Integer[] values, String ddi) {
            double most = 0;
            for (int i = 0; i < values.length; i++) {
                Integer value = values[i];
                if (kinds.get(i).ddi().equals(ddi) && value != null) {
                    most = Math.max(most, value);
                }
            }
            return most;
        }

        /** Working width [m]: of all parts that say by themselves that they work; else the widest. */
        private static double width(List<TimeLog.Kind> kinds, @Nullable Integer[] values) {
            Map<String, Double> widths = new HashMap<>();
            Map<String, Boolean> states = new HashMap<>();
            for (int i = 0; i < values.length; i++) {
                Integer value = values[i];
                if (value == null) {
                    continue;
                }
                if (kinds.get(i).ddi().equals(WIDTH)) {
                    widths.put(kinds.get(i).element(), Math.max(0, value) / 1000.0);
                } else if (kinds.get(i).ddi().equals(STATE)) {
                    states.put(kinds.get(i).element(), value == ON);
                }
            }
            List<String> parts = new ArrayList<>(
                    widths.keySet().stream().filter(states::containsKey).toList());
            if (parts.size() > 2) {
                // A boom that is as wide as its sections together is no section more.
                String widest = parts.stream()
                        .max((one, other) ->
                                Double.compare(widths.getOrDefault(one, 0.0), widths.getOrDefault(other, 0.0)))
                        .orElseThrow();
                double boom = widths.getOrDefault(widest, 0.0);
                double rest = parts.stream()
                                .mapToDouble(part -> widths.getOrDefault(part, 0.0))
                                .sum()
                        - boom;
                if (Math.abs(rest - boom) <= SAME_WIDTH * boom) {
                    parts.remove(widest);
                }
            }
            if (parts.size() > 1) {
                return parts.stream()
                        .filter(part -> states.getOrDefault(part, false))
                        .mapToDouble(part -> widths.getOrDefault(part, 0.0))
                        .sum();
            }
            return widths.values().stream()
                    .mapToDouble(Double::doubleValue)
                    .max()
                    .orElse(0);
        }
    }
}
