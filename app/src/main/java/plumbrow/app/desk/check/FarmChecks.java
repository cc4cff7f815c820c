package plumbrow.app.desk.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;

/**
 * What all gates find of the whole season, worked out when it is first asked for and kept: after a change only the fields it
 * touched are looked at anew. The same finding on many fields is kept once. Safe for several threads.
 */
public final class FarmChecks {
    /**
     * The findings of a season and what follows from all of them.
     *
     * @param programs by the name of the field
     */
    record Checked(
            SeasonCheck check,
            String sentence,
            Map<String, List<ProgramCheck>> programs,
            List<Matter> matters,
            List<LookUp> lookUps,
            List<AcrossLine> acrossLines) {}

    private record Known(Season own, List<ProgramCheck> programs) {}

    private Map<String, Known> known = Map.of();
    private @Nullable Checked last;

    /** The findings of a season; whoever asks while another waits for them, waits too. */
    synchronized Checked of(Season season) {
        Checked checked = last;
        if (checked == null || !checked.check().season().equals(season)) {
            checked = check(season);
            last = checked;
        }
        return checked;
    }

    private Checked check(Season season) {
        Gates gates = Gates.of(season);
        FieldSeasons own = FieldSeasons.of(season);
        Map<Finding, Finding> once = new ConcurrentHashMap<>();
        Map<String, Known> before = known;
        List<Known> answers = season.fields().parallelStream()
                .map(field -> {
                    Season ofField = own.of(field);
                    Known kept = before.get(field.name());
                    return kept != null && kept.own().equals(ofField)
                            ? new Known(ofField, kept.programs())
                            : new Known(ofField, programs(gates, field, ofField, once));
                })
                .toList();
        Map<String, Known> now = new HashMap<>();
        Map<String, List<ProgramCheck>> programs = new HashMap<>();
        for (int i = 0; i < answers.size(); i++) {
            String name = season.fields().get(i).name();
            now.put(name, answers.get(i));
            programs.put(name, answers.get(i).programs());
        }
        known = now;
        SeasonCheck check = new SeasonCheck(
                season,
                answers.stream().flatMap(known -> known.programs().stream()).toList());
        return new Checked(check, check.sentence(), programs, check.matters(), check.lookUps(), check.acrossLines());
    }

    private static List<ProgramCheck> programs(Gates gates, Field field, Season own, Map<Finding, Finding> once) {
        return own.programs().stream()
                .map(program -> new ProgramCheck(
                        field,
                        program,
                        gates.check(field, program).stream()
                                .map(finding -> once.computeIfAbsent(finding, first -> first))
                                .toList()))
                .toList();
    }
}
