package plumbrow.app.desk.check;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Standing;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.desk.shown.Shown;

/**
 * What the check of the whole farm shows: a page of its fields, those on which nothing may be done yet first.
 *
 * @param sentence the answer in one sentence
 * @param find part of the name of a field or farm that is looked for; empty for all
 * @param part the fields of which something comes through the sieve
 */
public record FarmView(FarmChecks.Checked checked, String sentence, Sieve sieve, String find, Part<Field> part) {
    /** Shown at once; the others are folded away. */
    public static final int FIRST_LOOK_UPS = 10;

    /** Shown at all; when they are looked up the next ones come. */
    public static final int MOST_LOOK_UPS = 100;

    /** Lines of what stands in the way that are shown of a large farm; each field has its own page. */
    public static final int MOST_MATTERS = 200;

    /** Places of one line, and fields of one thing to look up, that are named. */
    public static final int MOST_NAMED = 12;

    static FarmView of(FarmChecks.Checked checked, Sieve sieve, String find, int page) {
        Predicate<String> holds = Part.holding(find);
        List<Field> fields = checked.check().season().fields().stream()
                .filter(field -> holds.test(field.name()) || holds.test(field.farm()))
                .filter(field -> programs(checked, field).stream().anyMatch(sieve::shows))
                .sorted(Comparator.comparingInt(field -> rank(programs(checked, field))))
                .toList();
        return new FarmView(checked, checked.check().sentence(), sieve, find, Part.of(fields, page));
    }

    /** No program may be advised, one of them waits for an answer, all is known. */
    private static int rank(List<ProgramCheck> programs) {
        return programs.stream().noneMatch(program -> program.standing().advisable())
                ? 0
                : programs.stream().anyMatch(program -> program.standing() == Standing.UNKNOWN) ? 1 : 2;
    }

    private static List<ProgramCheck> programs(FarmChecks.Checked checked, Field field) {
        return checked.programs().getOrDefault(field.name(), List.of());
    }

    public SeasonCheck check() {
        return checked.check();
    }

    public List<ProgramCheck> programs(Field field) {
        return programs(checked, field).stream().filter(sieve::shows).toList();
    }

    /** The matters of the farm, of many the most pressing. */
    public List<Matter> matters() {
        return checked.matters()
                .subList(0, Math.min(MOST_MATTERS, checked.matters().size()));
    }

    public List<LookUp> lookUps() {
        return checked.lookUps()
                .subList(0, Math.min(MOST_LOOK_UPS, checked.lookUps().size()));
    }

    /** Things to look up that are not shown. */
    public int moreLookUps() {
        return checked.lookUps().size() - lookUps().size();
    }

    public List<AcrossLine> acrossLines() {
        return checked.acrossLines();
    }

    /** Names with commas between; of many the first and how many more. */
    public static String named(List<String> names) {
        return names.size() <= MOST_NAMED
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, MOST_NAMED)) + " and "
                        + Shown.count(names.size() - MOST_NAMED, "more", "more");
    }

    /** The address of another page of the list. */
    public String address(int page) {
        return "/check?" + sieve.query() + (find.isBlank() ? "" : "find=" + Shown.part(find) + "&") + "page=" + page;
    }
}
