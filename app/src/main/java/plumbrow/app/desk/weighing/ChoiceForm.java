package plumbrow.app.desk.weighing;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.text.TextRule;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.app.book.Choice;
import plumbrow.app.desk.shown.Shown;

/**
 * A decision as it was typed.
 *
 * @param faults what keeps it from being recorded, by the id of the box
 * @param seen stands for the numbers beside which it is decided
 */
public record ChoiceForm(String program, String who, String why, Map<String, String> faults, String seen) {
    private static final String MEANWHILE =
            "The season in the book was changed by somebody else since you saw these programs, so nothing was recorded."
                    + " They are weighed anew above: look at them, then decide once more.";

    private static final TextRule REASON = new TextRule(2000, true);

    /** Nothing typed yet; the advised program stands ready where it leads, and none where several are about equal. */
    public static ChoiceForm blank(FieldAdvice advice, String adviser) {
        String ready = advice.leading().size() > 1 ? "" : Shown.text(advice.advised());
        return new ChoiceForm(ready, adviser, "", Map.of(), seen(advice));
    }

    public static ChoiceForm read(FieldAdvice advice, Map<String, String> typed) {
        String program = typed.getOrDefault("program", "");
        String who = typed.getOrDefault("who", "").strip();
        String why = typed.getOrDefault("why", "").replace("\r\n", "\n").strip();
        Map<String, String> faults = new LinkedHashMap<>();
        String refusal = advice.program(program).map(ChoiceForm::refusal).orElse("Say which program you choose.");
        if (!refusal.isEmpty()) {
            faults.put("choice-program", refusal);
        }
        if (who.isEmpty()) {
            faults.put("choice-who", "Say who decides, in up to " + TextRule.NAME.longest() + " letters.");
        }
        TextRule.NAME.objection(who).ifPresent(expected -> faults.put("choice-who", "Expected " + expected + "."));
        if (why.isEmpty()) {
            faults.put("choice-why", "Say why, in a sentence or two.");
        }
        REASON.objection(why).ifPresent(expected -> faults.put("choice-why", "Expected " + expected + "."));
        String seen = typed.getOrDefault("seen", "");
        if (!seen.isEmpty() && !seen.equals(seen(advice))) {
            faults.put("choice-program", MEANWHILE);
        }
        return new ChoiceForm(program, who, why, faults, seen(advice));
    }

    /** The decision for the log, with what the advice said at the time. */
    Choice decided(int year, FieldAdvice advice, Instant when) {
        Optional<WeighedProgram> weighed = advice.program(program);
        return new Choice(
                year,
                advice.field().name(),
                program,
                who,
                when,
                why,
                weighed.map(WeighedProgram::chanceBeatsBaseline).orElse(null),
                weighed.map(WeighedProgram::meanMarginUsdPerAcre).orElse(null));
    }

    /** The same, as typed, after the season was changed by somebody else before it arrived. */
    ChoiceForm meanwhile(FieldAdvice anew) {
        return new ChoiceForm(program, who, why, Map.of("choice-program", MEANWHILE), seen(anew));
    }

    /** Differs where the programs, their standing or their numbers do. */
    private static String seen(FieldAdvice advice) {
        String numbers = advice.programs().stream()
                .map(one -> one.name() + "|" + one.standing() + "|" + one.meanMarginUsdPerAcre() + "|"
                        + one.chanceBeatsBaseline())
                .collect(Collectors.joining("\n"));
        return Integer.toHexString(numbers.hashCode());
    }

    /** Why a program can't be chosen as it stands; empty where it can. */
    private static String refusal(WeighedProgram program) {
        if (program.standing().advisable()) {
            return "";
        }
        boolean barred = program.standing() == Standing.BARRED;
        String reasons = program.findings().stream()
                .filter(finding -> finding.standing() == program.standing())
                .map(finding -> barred ? barred(finding) : unknown(finding))
                .distinct()
                .collect(Collectors.joining(" "));
        return barred
                ? program.name() + " is barred and can't be chosen. " + reasons
                : program.name() + " can't be chosen until this is looked up and entered in the workbook: " + reasons;
    }

    private static String barred(Finding finding) {
        return sentence(finding.says()) + " (" + finding.source() + ")";
    }

    private static String unknown(Finding finding) {
        return sentence(finding.clears().isEmpty() ? finding.says() : finding.clears());
    }

    private static String sentence(String text) {
        return text.endsWith(".") ? text : text + ".";
    }
}
