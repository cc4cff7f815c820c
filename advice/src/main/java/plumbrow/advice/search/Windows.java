package plumbrow.advice.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Season;

/**
 * Reads the windows of a field from its programs: one for each trip of a day. What goes out in one tank is one trip, whatever
 * heights its labels ask for, and its charge is that of all its passes together: a tank mate that rides along is charged
 * nothing, but no trip is free for that.
 */
final class Windows {
    private final Season season;
    private final Map<Day, List<Way>> ways = new LinkedHashMap<>();
    private final Map<Day, Double> charges = new LinkedHashMap<>();
    private final Map<Day, Integer> trips = new LinkedHashMap<>();

    private record Day(PassKind kind, @Nullable LocalDate date) {}

    private Windows(Season season) {
        this.season = season;
    }

    /** The windows, earliest first. */
    static List<Window> of(Season season, Field field) {
        Windows read = new Windows(season);
        season.programs(field.name()).forEach(read::read);
        return read.windows();
    }

    private List<Window> windows() {
        List<Window> windows = new ArrayList<>();
        ways.forEach((day, some) -> {
            for (int trip = 0; trip < trips.getOrDefault(day, 1); trip++) {
                windows.add(new Window(day.kind(), day.date(), trip, some, charges.getOrDefault(day, 0.0)));
            }
        });
        windows.sort(Comparator.comparing(Window::date, Comparator.nullsLast(Comparator.naturalOrder())));
        return List.copyOf(windows);
    }

    private void read(Program program) {
        Map<Day, List<Pass>> days = program.passes().stream()
                .filter(pass -> Pairings.searched(season, pass) && pass.trigger() == null)
                .collect(Collectors.groupingBy(
                        pass -> new Day(pass.kind(), pass.date()), LinkedHashMap::new, Collectors.toList()));
        days.forEach((day, passes) -> {
            passes.forEach(pass -> add(day, way(program, pass)));
            Map<String, Double> priced = passes.stream()
                    .collect(Collectors.groupingBy(
                            pass -> tank(program, pass), Collectors.summingDouble(Pass::chargeUsdPerAcre)));
            priced.values().forEach(charge -> charges.merge(day, charge, Math::max));
            int charged =
                    (int) priced.values().stream().filter(charge -> charge > 0).count();
            trips.merge(day, Math.max(1, charged), Math::max);
        });
    }

    private String tank(Program program, Pass pass) {
        return season.work()
                .sprayPlan(program, pass)
                .map(SprayPlan::tank)
                .map(word -> "tank " + word)
                .orElse("pass " + pass.number());
    }

    private Way way(Program program, Pass pass) {
        SprayPlan plan = season.work().sprayPlan(program, pass).orElse(null);
        Double height = plan == null ? null : plan.weedHeightIn();
        return new Way(
                plan == null ? null : plan.forPass(program.field(), "", 0, null).overWeeds(null),
                height == null ? Map.of() : Map.of(String.valueOf(pass.product()), height),
                height,
                Set.of(planted(program.passes())));
    }

    private void add(Day day, Way way) {
        List<Way> known = ways.computeIfAbsent(day, one -> new ArrayList<>());
        for (int i = 0; i < known.size(); i++) {
            if (known.get(i).sameAs(way)) {
                known.set(i, known.get(i).and(way));
                return;
            }
        }
        known.add(way);
    }

    /** The first day on which seed goes in; empty where no day is planned. */
    static Optional<LocalDate> planted(List<Pass> passes) {
        return passes.stream()
                .filter(pass -> pass.kind() == PassKind.SEED)
                .map(Pass::date)
                .filter(Objects::nonNull)
                .min(Comparator.comparing(Function.<LocalDate>identity()));
    }
}
