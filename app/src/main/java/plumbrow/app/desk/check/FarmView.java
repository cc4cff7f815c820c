package plumbrow.app.desk.check;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.desk.shown.Shown;

/**
 * What the check of the whole farm shows: what stands in the way of its programs, and its fields, those on which nothing may be
 * done yet first; of each a page.
 *
 * @param sentence the answer in one sentence, for the whole season
 * @param find part of the name of a field, farm or grower that is looked for; empty for all
 * @param part the fields of which something comes through the sieve
 * @param matters what stands in the way on the fields looked for; of too many fields nothing
 * @param counts how many matters there are of each kind
 * @param lookUps what to look up for the fields looked for, what settles most first
 */
public record FarmView(
        FarmChecks.Checked checked,
        String sentence,
        Sieve sieve,
        String find,
        Part<Field> part,
        Part<Matter> matters,
        Map<MatterKind, Long> counts,
        List<LookUp> lookUps) {
    /** Shown at once; the others are folded away. */
    public static final int FIRST_LOOK_UPS = 10;

    /** Shown at all; when they are looked up the next ones come. */
    public static final int MOST_LOOK_UPS = 100;

    /** Places of one line, and fields of one thing to look up, that are named. */
    public static final int MOST_NAMED = 12;

    /** Fields on a page where each has its findings below it. */
    private static final int SIFTED = 15;

    /** Matters on a page: each has its findings folded behind it. */
    private static final int MATTERS = 25;

    /** Findings of one matter that are shown here; the page of each field has all of its own. */
    public static final int MOST_FINDINGS = 5;

    /** Fields looked for of which all findings are put together for one page. */
    private static final int MOST_FOUND = 400;

    static FarmView of(FarmChecks.Checked checked, Sieve sieve, String find, int page, int mattersPage) {
        Season season = checked.check().season();
        List<Field> found = Part.found(season, find);
        List<Field> fields = found.stream()
                .filter(field -> programs(checked, field).stream().anyMatch(sieve::shows))
                .sorted(Comparator.comparingInt(field -> rank(programs(checked, field))))
                .toList();
        List<Matter> matters = checked.matters();
        List<LookUp> lookUps = checked.lookUps();
        if (found.size() < season.fields().size()) {
            SeasonCheck own = new SeasonCheck(
                    season,
                    found.size() > MOST_FOUND
                            ? List.of()
                            : found.stream()
                                    .flatMap(field -> programs(checked, field).stream())
                                    .toList());
            matters = own.matters();
            lookUps = own.lookUps();
        }
        return new FarmView(
                checked,
                checked.sentence(),
                sieve,
                find,
                Part.of(fields, page, sieve.open() ? Part.LINES : SIFTED),
                Part.of(matters, mattersPage, MATTERS),
                matters.stream().collect(Collectors.groupingBy(Matter::kind, Collectors.counting())),
                lookUps);
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

    /** The things to look up that are shown. */
    public List<LookUp> shownLookUps() {
        return lookUps.subList(0, Math.min(MOST_LOOK_UPS, lookUps.size()));
    }

    /** Things to look up that are not shown. */
    public int moreLookUps() {
        return lookUps.size() - shownLookUps().size();
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

    /** The address of another page of the list of fields. */
    public String address(int page) {
        return "/check?" + asked() + "page=" + page;
    }

    /** The address of another page of what stands in the way. */
    public String mattersAddress(int page) {
        return "/check?" + asked() + "matters=" + page + "#matters";
    }

    private String asked() {
        return sieve.query() + (find.isBlank() ? "" : "find=" + Shown.part(find) + "&");
    }
}
