package plumbrow.app.command.said;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.science.figure.Numbers;

/** The advice for a season said in text: all fields at a glance, then field by field, then what holds for all. */
public final class AdviceWords {
    private AdviceWords() {}

    /**
     * The whole advice as text.
     *
     * @param later a sentence on the seasons to come, by field; fields without one say nothing of them
     */
    public static String of(Advice advice, Map<String, String> later) {
        Paper paper = new Paper();
        List<FieldAdvice> fields = advice.fields();
        if (fields.size() > 1) {
            long advised =
                    fields.stream().filter(field -> field.advised() != null).count();
            paper.heading(advised + " of " + fields.size() + " fields have a program to take.")
                    .gap();
            paper.table(glance(fields));
        }
        Set<String> common = common(fields);
        for (FieldAdvice field : fields) {
            FieldWords.add(paper, field, later.getOrDefault(field.field().name(), ""), common);
        }
        paper.gap();
        fields.stream()
                .limit(1)
                .forEach(field -> paper.prose(field.equal().words()).gap());
        common.forEach(caution -> paper.prose("Mind  ", caution));
        return paper.gap()
                .prose(advice.year() + " season as of " + advice.asOf() + ", advised by " + advice.adviser() + ". "
                        + Numbers.fixed(advice.draws(), 0) + " simulated seasons from seed " + advice.seed()
                        + ". All money is the operator's, in $/ac of the field.")
                .text();
    }

    private static TextTable glance(List<FieldAdvice> fields) {
        TextTable table = TextTable.empty()
                .words("Field")
                .words("take")
                .numbers("over baseline", "$/ac")
                .words("beats it in")
                .numbers("margin", "$/ac")
                .words("status");
        for (FieldAdvice field : fields) {
            WeighedProgram program = field.advisedProgram().orElse(null);
            if (program == null) {
                table.row(field.field().name(), "nothing yet", "", "", "", "");
            } else {
                table.row(
                        field.field().name(),
                        String.join(" ≈ ", field.leading()),
                        program.baseline() ? "" : FieldWords.whole(program.meanGainUsdPerAcre()),
                        program.baseline() ? "the baseline" : field.odds(program.chanceBeatsBaseline()),
                        FieldWords.whole(program.meanMarginUsdPerAcre()),
                        program.standing().word());
            }
        }
        return table;
    }

    /** The cautions that stand at every field are said once, at the end. */
    private static Set<String> common(List<FieldAdvice> fields) {
        Set<String> common = new LinkedHashSet<>();
        fields.stream().limit(1).forEach(field -> common.addAll(field.cautions()));
        fields.forEach(field -> common.retainAll(field.cautions()));
        return common;
    }
}
