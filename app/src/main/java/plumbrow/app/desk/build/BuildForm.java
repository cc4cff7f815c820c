package plumbrow.app.desk.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.edit.ProgramDraft;
import plumbrow.documents.workbook.edit.ProgramDraft.Trip;

/**
 * A program as it stands in the boxes of the builder.
 *
 * @param name its name; empty where it is to be named by what it does
 * @param baseline whether the others are compared with it
 * @param note a remark
 * @param lines its passes as typed, blank ones among them
 */
public record BuildForm(String name, boolean baseline, String note, List<Line> lines) {
    /** Fewest lines that are offered; one is always blank. */
    private static final int LINES = 2;

    private static final int LONGEST_NAME = 80;

    public BuildForm {
        lines = List.copyOf(lines);
    }

    /**
     * One pass as typed.
     *
     * @param what a product, or work without one after {@link Choices#WORK}; empty for no pass
     * @param with whether it goes out in one tank with the pass above it
     * @param from number of the trip, from 0, of the program this one was made from; -1 for a new one
     */
    public record Line(
            String what, String rate, String unit, String date, String method, boolean with, String charge, int from) {
        static final Line BLANK = new Line("", "", "", "", "", false, "", -1);

        public boolean blank() {
            return what.isEmpty();
        }
    }

    /** The boxes of a program of the season, or of one yet to be. */
    static BuildForm of(@Nullable ProgramDraft draft, String name, boolean baseline) {
        List<Line> lines = new ArrayList<>();
        if (draft != null) {
            String tank = "";
            for (int i = 0; i < draft.trips().size(); i++) {
                Trip trip = draft.trips().get(i);
                String own = trip.spray().getOrDefault("tank", "");
                lines.add(new Line(
                        trip.pass()
                                .getOrDefault(
                                        "product", Choices.WORK + trip.pass().getOrDefault("kind", "")),
                        trip.pass().getOrDefault("rate", ""),
                        trip.pass().getOrDefault("rate_unit", ""),
                        trip.pass().getOrDefault("date", ""),
                        trip.spray().getOrDefault("method", ""),
                        !own.isEmpty() && own.equals(tank),
                        trip.pass().getOrDefault("charge_usd_ac", ""),
                        i));
                tank = own;
            }
        }
        return new BuildForm(
                name, baseline, draft == null ? "" : draft.program().getOrDefault("note", ""), spare(lines));
    }

    private static List<Line> spare(List<Line> lines) {
        List<Line> all =
                new ArrayList<>(lines.stream().filter(line -> !line.blank()).toList());
        do {
            all.add(Line.BLANK);
        } while (all.size() < LINES);
        return all;
    }

    static BuildForm read(Map<String, String> typed) {
        List<Line> lines = new ArrayList<>();
        TreeMap<Integer, Boolean> numbers = new TreeMap<>();
        typed.keySet().stream()
                .filter(key -> key.matches("t\\d{1,2}\\.what"))
                .forEach(key -> numbers.put(Integer.parseInt(key.substring(1, key.indexOf('.'))), true));
        for (int number : numbers.keySet()) {
            String at = "t" + number + ".";
            lines.add(new Line(
                    text(typed, at + "what"),
                    text(typed, at + "rate"),
                    text(typed, at + "unit"),
                    text(typed, at + "date"),
                    text(typed, at + "method"),
                    !text(typed, at + "with").isEmpty(),
                    text(typed, at + "charge"),
                    number(text(typed, at + "from"))));
        }
        return new BuildForm(text(typed, "name"), text(typed, "baseline").equals("yes"), text(typed, "note"), lines);
    }

    /** With blank lines to go on. */
    BuildForm spared() {
        return new BuildForm(name, baseline, note, spare(lines));
    }

    private static String text(Map<String, String> typed, String key) {
        return typed.getOrDefault(key, "").strip();
    }

    private static int number(String text) {
        return text.matches("\\d{1,2}") ? Integer.parseInt(text) : -1;
    }

    /**
     * The program that stands in the boxes.
     *
     * @param draft the program
     * @param lines for each of its trips, the number of the line in which it is typed
     */
    record Made(ProgramDraft draft, List<Integer> lines) {}

    private record Typed(int line, Trip trip) {}

    /** The program; trips are put in the order of their days, those without a day stay where they stand. */
    Made made(Choices choices, @Nullable ProgramDraft from) {
        List<Typed> trips = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            if (!line.blank()) {
                Trip before = from == null
                                || line.from() < 0
                                || line.from() >= from.trips().size()
                        ? new Trip(Map.of(), Map.of(), Map.of())
                        : from.trips().get(line.from());
                Trip above =
                        trips.isEmpty() ? null : trips.get(trips.size() - 1).trip();
                Trip trip = trip(line, choices, before);
                if (line.with() && above != null) {
                    trip = inTank(trip, above, "tank " + trips.size());
                    if (above.spray().getOrDefault("tank", "").isEmpty()) {
                        trips.set(
                                trips.size() - 1,
                                new Typed(
                                        trips.get(trips.size() - 1).line(),
                                        above.withSpray("tank", trip.spray().getOrDefault("tank", ""))));
                    }
                } else if (!line.with() && above != null && sameTank(trip, above)) {
                    trip = trip.withSpray("tank", "");
                }
                trips.add(new Typed(i, trip));
            }
        }
        List<Typed> ordered = inOrderOfDays(trips);
        Map<String, String> program = new LinkedHashMap<>(from == null ? Map.of() : from.program());
        program.put("baseline", baseline ? "yes" : "no");
        program.remove("note");
        if (!note.isEmpty()) {
            program.put("note", note);
        }
        return new Made(
                new ProgramDraft(program, ordered.stream().map(Typed::trip).toList()),
                ordered.stream().map(Typed::line).toList());
    }

    private static boolean sameTank(Trip trip, Trip above) {
        String tank = trip.spray().getOrDefault("tank", "");
        return !tank.isEmpty() && tank.equals(above.spray().getOrDefault("tank", ""));
    }

    private static List<Typed> inOrderOfDays(List<Typed> trips) {
        List<String> days = trips.stream()
                .map(one -> one.trip().pass().getOrDefault("date", ""))
                .filter(day -> !day.isEmpty())
                .toList();
        if (days.equals(days.stream().sorted().toList())) {
            return trips;
        }
        List<Typed> dated = new ArrayList<>(trips);
        dated.removeIf(one -> one.trip().pass().getOrDefault("date", "").isEmpty());
        dated.sort(Comparator.comparing(one -> one.trip().pass().getOrDefault("date", "")));
        List<Typed> ordered = new ArrayList<>();
        for (Typed one : trips) {
            ordered.add(one.trip().pass().getOrDefault("date", "").isEmpty() ? one : dated.remove(0));
        }
        return ordered;
    }

    private static Trip trip(Line line, Choices choices, Trip before) {
        if (line.what().startsWith(Choices.WORK)) {
            String kind = line.what().substring(Choices.WORK.length());
            boolean same = kind.equals(before.pass().get("kind"));
            Map<String, String> pass = new LinkedHashMap<>(same ? before.pass() : Map.of());
            put(pass, "kind", kind);
            put(pass, "date", line.date());
            put(pass, "charge_usd_ac", line.charge());
            return new Trip(pass, Map.of(), same ? before.tillage() : Map.of());
        }
        boolean same = line.what().equals(before.pass().get("product"));
        Map<String, String> pass = new LinkedHashMap<>(same ? before.pass() : Map.of());
        if (!same) {
            put(
                    pass,
                    "kind",
                    choices.find(line.what()).map(one -> one.kind().word()).orElse(PassKind.SPRAY.word()));
        }
        put(pass, "product", line.what());
        put(pass, "date", line.date());
        put(pass, "rate", line.rate());
        put(
                pass,
                "rate_unit",
                line.unit().isEmpty()
                        ? choices.find(line.what()).map(Choices.Choice::unit).orElse("")
                        : line.unit());
        put(pass, "charge_usd_ac", line.charge());
        Map<String, String> spray = new LinkedHashMap<>(before.spray());
        put(spray, "method", line.method());
        return new Trip(pass, spray, Map.of());
    }

    /** A tank partner goes out on the day of the pass above it, by the same way, in the same trip. */
    private static Trip inTank(Trip trip, Trip above, String fresh) {
        String tank = above.spray().getOrDefault("tank", fresh);
        Map<String, String> spray = new LinkedHashMap<>(trip.spray());
        above.spray().forEach((key, text) -> {
            if (!key.equals("weed_height_in")) {
                spray.putIfAbsent(key, text);
            }
        });
        spray.put("tank", tank);
        Map<String, String> pass = new LinkedHashMap<>(trip.pass());
        String day = above.pass().getOrDefault("date", "");
        if (!day.isEmpty()) {
            pass.put("date", day);
        }
        return new Trip(pass, spray, Map.of());
    }

    private static void put(Map<String, String> row, String key, String text) {
        if (text.isEmpty()) {
            row.remove(key);
        } else {
            row.put(key, text);
        }
    }

    /** The name as typed; else what the program does, told apart from those the field has. */
    String named(Season season, String field, @Nullable String own) {
        String wanted = name;
        if (wanted.isEmpty()) {
            List<String> words = new ArrayList<>();
            for (Line line : lines) {
                if (!line.blank() && !line.what().equals(Choices.WORK + PassKind.HARVEST.word())) {
                    words.add(
                            line.what().startsWith(Choices.WORK)
                                    ? line.what().substring(Choices.WORK.length())
                                    : line.what());
                }
            }
            wanted = words.isEmpty()
                    ? "nothing"
                    : words.size() == 1 ? words.get(0) + " alone" : String.join(", ", words);
            wanted = wanted.length() > LONGEST_NAME - 4 ? wanted.substring(0, LONGEST_NAME - 4) : wanted;
            return free(season, field, own, wanted);
        }
        return wanted;
    }

    /** The name, with a number behind it where the field has a program of that name. */
    static String free(Season season, String field, @Nullable String own, String wanted) {
        List<String> there = season.programs(field).stream()
                .map(Program::name)
                .filter(one -> !one.equals(own))
                .toList();
        String free = wanted;
        for (int i = 2; there.contains(free); i++) {
            free = wanted + " " + i;
        }
        return free;
    }
}
