package plumbrow.app.desk.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * A program as the page showed it, in lines that travel with the form and come back: what was typed beside it is kept only
 * while the program still reads so.
 *
 * @param passes a line for each pass
 * @param rest stands for the rows that hang on the passes and are not shown
 */
record ProgramSeen(List<String> passes, String rest) {
    static ProgramSeen of(Season season, String field, String program) {
        List<String> passes = season.programs(field).stream()
                .filter(one -> one.name().equals(program))
                .findFirst()
                .map(Program::passes)
                .orElse(List.of())
                .stream()
                .map(ProgramSeen::words)
                .toList();
        List<Object> rest = new ArrayList<>();
        season.programs(field).stream()
                .filter(one -> one.name().equals(program))
                .forEach(one -> rest.add(one.refuge() + one.note() + one.baseline() + one.passes()));
        season.work().sprayPlans().stream()
                .filter(plan -> plan.field().equals(field) && plan.program().equals(program))
                .forEach(rest::add);
        season.pests().weedBook().tillage().stream()
                .filter(work -> work.field().equals(field) && work.program().equals(program))
                .forEach(rest::add);
        return new ProgramSeen(
                passes,
                Integer.toHexString(rest.stream()
                        .map(String::valueOf)
                        .collect(Collectors.joining("\n"))
                        .hashCode()));
    }

    /** As it travels with the form. */
    String text() {
        return rest + passes.stream().map(line -> "\n" + line).collect(Collectors.joining());
    }

    /** What came back with a form; browsers break lines in two ways. */
    static ProgramSeen read(String text) {
        List<String> lines = text.replace("\r\n", "\n").lines().toList();
        return lines.isEmpty()
                ? new ProgramSeen(List.of(), "")
                : new ProgramSeen(lines.subList(1, lines.size()), lines.get(0));
    }

    /** What is otherwise now than it was seen, in words. */
    String differs(ProgramSeen now) {
        List<String> differences = new ArrayList<>();
        for (int i = 0; i < Math.max(passes.size(), now.passes().size()); i++) {
            String was = i < passes.size() ? passes.get(i) : "not there";
            String is = i < now.passes().size() ? now.passes().get(i) : "no longer there";
            if (!was.equals(is)) {
                differences.add("pass " + (i + 1) + " was " + was + " and is " + is);
            }
        }
        return differences.isEmpty() ? "how its passes are made was changed" : String.join("; ", differences);
    }

    private static String words(Pass pass) {
        return (pass.date() == null ? "on no day yet" : "on " + pass.date())
                + (pass.product() == null ? "" : ", " + pass.product())
                + (pass.rate() == null ? "" : ", " + pass.rate().text() + "/ac")
                + (pass.trigger() == null ? "" : ", " + pass.trigger().words());
    }
}
