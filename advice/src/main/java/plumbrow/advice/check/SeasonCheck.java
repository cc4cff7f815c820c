package plumbrow.advice.check;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;

/** Programs of a season held against every gate: a whole farm in one go. */
public record SeasonCheck(Season season, List<ProgramCheck> programs) {
    public SeasonCheck {
        programs = List.copyOf(programs);
    }

    /** Every program of a season. */
    public static SeasonCheck of(Season season) {
        return of(season, season.fields());
    }

    /** The programs of some of its fields, in the order of the season. */
    public static SeasonCheck of(Season season, List<Field> fields) {
        Gates gates = Gates.of(season);
        FieldSeasons own = FieldSeasons.of(season);
        List<ProgramCheck> checked = new ArrayList<>();
        for (Field field : fields) {
            own.programs(field)
                    .forEach(program -> checked.add(new ProgramCheck(field, program, gates.check(field, program))));
        }
        return new SeasonCheck(season, checked);
    }

    /** Only the programs of one name. */
    public SeasonCheck named(String program) {
        return new SeasonCheck(
                season,
                programs.stream()
                        .filter(check -> check.program().name().equals(program))
                        .toList());
    }

    /** Only the programs of one field. */
    public SeasonCheck of(Field field) {
        return new SeasonCheck(season, programs(field));
    }

    /** The fields that have a program here, in the order of the season. */
    public List<Field> fields() {
        return programs.stream().map(ProgramCheck::field).distinct().toList();
    }

    public List<ProgramCheck> programs(Field field) {
        return programs.stream()
                .filter(check -> check.field().name().equals(field.name()))
                .toList();
    }

    /** How many programs stand so. */
    public int count(Standing standing) {
        return (int)
                programs.stream().filter(check -> check.standing() == standing).count();
    }

    /** All that stands in the way or is to be kept, one line for each matter, in the order of telling. */
    public List<Matter> matters() {
        return Matter.of(programs);
    }

    /** What to look up, and where: that which settles most findings first. */
    public List<LookUp> lookUps() {
        return LookUp.of(programs);
    }

    /** The products that are lawful in one place here and barred in another. */
    public List<AcrossLine> acrossLines() {
        return AcrossLine.of(this);
    }

    /** The answer in one sentence. */
    public String sentence() {
        int all = programs.size();
        if (all == 0) {
            return "No program has been entered, so there is nothing to check.";
        }
        return "Of " + all + (all == 1 ? " program " : " programs ") + "on " + fields().size()
                + (fields().size() == 1 ? " field, " : " fields, ") + count(Standing.BARRED) + " barred, "
                + count(Standing.UNKNOWN) + " unknown, " + count(Standing.CONDITIONAL) + " conditional, "
                + count(Standing.CLEAR) + " clear"
                + (count(Standing.NOTHING_ASKED) == 0
                        ? "."
                        : ", of " + count(Standing.NOTHING_ASKED) + " nothing was asked.");
    }
}
