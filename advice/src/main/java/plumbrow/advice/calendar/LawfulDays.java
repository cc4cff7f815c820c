package plumbrow.advice.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * On which days the gates let a pass be made: every gate is asked anew for every day.
 *
 * What counts against a day is what the gates find with the pass on that day and would not find without the pass at all. So a
 * program that is barred for something else does not bar every day of every pass. Heights and bloom of other days are unknown, and
 * unknown is never clear.
 */
final class LawfulDays {
    private static final Pattern NUMBER = Pattern.compile("pass \\d+");

    private final Season season;
    private final Field field;
    private final ProgramChanges changes;

    LawfulDays(Season season, Field field) {
        this.season = season;
        this.field = field;
        this.changes = new ProgramChanges(season, field);
    }

    /** Windows of every pass that has a day, pass by pass, day after day. */
    List<Window> of(Program program, LocalDate first, LocalDate last) {
        return program.passes().parallelStream()
                .filter(pass -> pass.date() != null)
                .flatMap(pass -> of(program, pass, first, last).stream())
                .toList();
    }

    /** Windows of one pass, day after day. */
    List<Window> of(Program program, Pass pass, LocalDate first, LocalDate last) {
        ChangedProgram kept = changes.of(program, List.of(), program.name());
        Map<String, Integer> without = count(gates(without(kept, pass)));
        List<ChangedProgram> moved = first.datesUntil(last.plusDays(1))
                .map(day -> on(program, pass, day))
                .toList();
        Gates gates = Gates.of(SeasonParts.alone(season, field, moved));
        List<Window> windows = new ArrayList<>();
        int place = 0;
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            ChangedProgram there = moved.get(place++);
            Optional<Finding> against = against(gates.check(field, there.program()), without);
            Standing standing = against.map(Finding::standing).orElse(Standing.CLEAR);
            String gate = against.map(Finding::gate).orElse("");
            Window before = windows.isEmpty() ? null : windows.get(windows.size() - 1);
            if (before != null && before.standing() == standing && before.gate().equals(gate)) {
                windows.set(
                        windows.size() - 1,
                        new Window(before.pass(), before.from(), day, standing, gate, before.reason()));
            } else {
                String reason =
                        against.map(finding -> finding.says() + said(finding)).orElse("");
                windows.add(new Window(pass.number(), day, day, standing, gate, reason));
            }
        }
        return windows;
    }

    private static String said(Finding finding) {
        return finding.source().isEmpty() ? "" : " (" + finding.source() + ")";
    }

    /** The worst that the pass adds on a day, barred before unknown; empty where nothing is. */
    private static Optional<Finding> against(List<Finding> findings, Map<String, Integer> without) {
        Map<String, Integer> seen = new HashMap<>();
        for (Finding finding : findings) {
            boolean stops = finding.standing() == Standing.BARRED || finding.standing() == Standing.UNKNOWN;
            if (stops && seen.merge(key(finding), 1, Integer::sum) > without.getOrDefault(key(finding), 0)) {
                return Optional.of(finding);
            }
        }
        return Optional.empty();
    }

    /** The program with the pass on a day, under a name of its own: so all days stand in one season and are read in once. */
    private ChangedProgram on(Program program, Pass pass, LocalDate day) {
        return changes.of(
                program,
                day.equals(pass.date()) ? List.of() : List.of(new PassChange(pass.number(), day, null)),
                program.name() + " on " + day);
    }

    private List<Finding> gates(ChangedProgram changed) {
        return Gates.of(SeasonParts.alone(season, field, List.of(changed))).check(field, changed.program());
    }

    private static Map<String, Integer> count(List<Finding> findings) {
        Map<String, Integer> count = new HashMap<>();
        findings.forEach(finding -> count.merge(key(finding), 1, Integer::sum));
        return count;
    }

    /** Numbers of passes change as one is moved past another. */
    private static String key(Finding finding) {
        return finding.standing() + "|" + finding.gate() + "|"
                + NUMBER.matcher(finding.subject()).replaceAll("pass");
    }

    /** The program without a pass and what goes out with it in one tank. */
    private ChangedProgram without(ChangedProgram kept, Pass pass) {
        Program program = kept.program();
        Optional<String> tank = tank(kept, pass);
        List<Pass> rest = program.passes().stream()
                .filter(other -> other.number() != pass.number()
                        && !(tank.isPresent()
                                && tank.equals(tank(kept, other))
                                && Objects.equals(other.date(), pass.date())))
                .toList();
        return new ChangedProgram(
                new Program(
                        program.field(), program.name(), program.baseline(), program.refuge(), program.note(), rest),
                kept.plans(),
                kept.tillage(),
                kept.keptNumbers());
    }

    private static Optional<String> tank(ChangedProgram kept, Pass pass) {
        return kept.plans().stream()
                .filter(plan -> plan.pass() == pass.number())
                .findFirst()
                .flatMap(plan -> Optional.ofNullable(plan.tank()));
    }
}
