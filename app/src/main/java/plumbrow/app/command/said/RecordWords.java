package plumbrow.app.command.said;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumbrow.advice.records.DutyAnswer;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordCheck;
import plumbrow.advice.records.RecordFact;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.records.Reentry;
import plumbrow.advice.season.Season;
import plumbrow.app.records.RecordAnswer;

/** Application records in words. */
public final class RecordWords {
    private RecordWords() {}

    public static String list(Season season, List<KeptRecord> records) {
        if (records.isEmpty()) {
            return "No record.";
        }
        Paper paper = new Paper();
        for (KeptRecord kept : records) {
            RecordCheck check = RecordCheck.of(season, kept);
            paper.prose(
                    "  " + kept.number() + "  ",
                    line(kept)
                            + (kept.counts() ? "" : " DOES NOT COUNT: " + RecordFact.state(kept) + ".")
                            + (kept.counts() && check.incomplete() ? " " + check.sentence() : ""));
        }
        return paper.text();
    }

    /** "2026-05-04, South Slough: Ironweir 4L, 1 qt/ac; 15 gal in all, by S. Lind." */
    public static String line(KeptRecord kept) {
        List<String> products = new ArrayList<>();
        for (RecordedProduct one : kept.record().products()) {
            products.add(one.product() + ", " + RecordFact.amounts(one));
        }
        String applicator = kept.record().byKey().get("applicator");
        return kept.record().date() + ", " + kept.record().field() + ": " + String.join(" + ", products)
                + (applicator == null ? "" : ", by " + applicator) + ".";
    }

    public static String one(RecordAnswer answer, KeptRecord kept) {
        Paper paper = new Paper();
        paper.heading("Record " + kept.number() + ". " + line(kept));
        if (!kept.counts()) {
            paper.prose("It does not count: " + RecordFact.state(kept) + ".");
        }
        if (kept.corrects() != null) {
            paper.prose("It corrects record " + kept.corrects() + ": " + kept.why());
        }
        paper.gap();
        Map<String, List<RecordFact>> groups = RecordFact.of(kept.record()).stream()
                .collect(Collectors.groupingBy(RecordFact::group, LinkedHashMap::new, Collectors.toList()));
        for (RecordedProduct one : kept.record().products()) {
            paper.prose(
                    "  ",
                    one.product() + ", EPA Reg. No. "
                            + (one.registration() == null ? "not written down" : one.registration()) + ": "
                            + RecordFact.amounts(one));
        }
        groups.forEach((group, facts) -> paper.prose(
                "  ",
                group + ". "
                        + facts.stream()
                                .map(fact -> fact.label() + ": " + fact.text())
                                .map(text -> text.endsWith(".") ? text.substring(0, text.length() - 1) : text)
                                .collect(Collectors.joining("; "))
                        + "."));
        paper.gap().prose(answer.reentrySays());
        answer.reentry().duties().forEach(duty -> paper.prose("  ", duty));
        paper.prose("  ", "Sign: " + String.join(" / ", Reentry.sign()));
        paper.gap().prose(answer.check().sentence());
        duties(paper, answer.check());
        return paper.text();
    }

    public static String checks(List<KeptRecord> records, List<RecordCheck> checks) {
        if (records.isEmpty()) {
            return "No record that counts.";
        }
        Paper paper = new Paper();
        for (int i = 0; i < records.size(); i++) {
            paper.gap().prose("  " + records.get(i).number() + "  ", line(records.get(i)));
            paper.prose("     ", checks.get(i).sentence());
            duties(paper, checks.get(i));
        }
        paper.gap().prose("The label and the state's agency decide. Rules, sources and their status: docs/records.md.");
        return paper.text();
    }

    private static void duties(Paper paper, RecordCheck check) {
        for (DutyAnswer duty : check.duties()) {
            paper.prose(
                    "     - ",
                    duty.state() + ", " + duty.who() + " (" + duty.rule()
                            + (duty.status().isEmpty() ? "" : "; " + duty.status())
                            + "): "
                            + (duty.applies() == DutyAnswer.Applies.CANNOT_TELL
                                    ? "cannot tell whether it binds"
                                            + (duty.why().isEmpty() ? "" : ", " + duty.why()) + ". If it does: "
                                    : "")
                            + duty.words()
                            + (duty.writeBy().isEmpty() ? "" : "; to be written: " + duty.writeBy())
                            + (duty.due() == null
                                    ? ""
                                    : " (by " + duty.due().toString().replace('T', ' ') + ")")
                            + (duty.keepUntil() == null ? "" : "; keep it until " + duty.keepUntil())
                            + (duty.note().isEmpty() ? "" : ". " + duty.note()) + ".");
        }
        if (check.duties().isEmpty()) {
            paper.prose("     - ", "No rule in the sources used speaks of it.");
        }
    }
}
