package plumbrow.app.command.said;

import java.util.ArrayList;
import java.util.List;
import plumbrow.app.json.DataSummary;
import plumbrow.app.json.SubstanceSummary;
import plumbrow.app.json.SubstanceSummary.Kept;
import plumbrow.app.json.SubstanceSummary.PropertySummary;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Trouble;

/** Reference data said in text: what a check found, and all that is kept of one active ingredient. */
public final class DataWords {
    private DataWords() {}

    /** Rows by set and status, where sources disagree, and every trouble. */
    public static String checked(DataSummary data) {
        Paper paper = new Paper()
                .heading(
                        data.clean()
                                ? "Nothing is wrong with the data."
                                : data.troubles().size() == 1
                                        ? "One thing is wrong with the data."
                                        : data.troubles().size() + " things are wrong with the data.")
                .gap();
        TextTable table = TextTable.empty()
                .words("Set")
                .numbers("rows", "")
                .numbers("verified", "")
                .numbers("with reserve", "")
                .numbers("computed", "")
                .numbers("practice", "")
                .numbers("from memory", "");
        data.sets()
                .forEach(set -> table.row(
                        set.set(),
                        count(set.rows()),
                        count(set.verified()),
                        count(set.verifiedWithReserve()),
                        count(set.computed()),
                        count(set.practice()),
                        count(set.memory())));
        paper.table(table);
        if (!data.contested().isEmpty()) {
            paper.heading("Sources disagree; both are kept");
            data.contested()
                    .forEach(thing -> paper.prose(
                            "  ", thing.about() + ": " + String.join(" and ", thing.values()) + " in " + thing.file()));
        }
        if (!data.clean()) {
            paper.heading("To be put right");
            data.troubles().stream().map(Trouble::sentence).forEach(sentence -> paper.prose("  ", sentence));
        }
        return paper.text();
    }

    /** Every value of one active ingredient; what is not verified is marked and said. */
    public static String substance(SubstanceSummary substance) {
        Paper paper = new Paper()
                .heading(substance.name() + ", " + substance.kind() + ", CAS " + substance.cas())
                .gap()
                .prose("The current label and safety sheet override all of this.")
                .prose("Words of toxicity to birds, water life and bees follow limits that are values from memory.")
                .prose("● verified   ◐ verified with a reserve   ○ not verified: confirm before you rely on it");
        for (PropertySummary property : substance.properties()) {
            paper.heading(capital(property.words()));
            paper.prose("  ", property.toWorkWith());
            property.values().forEach(value -> kept(paper, value));
        }
        paper.heading("Reportable quantity, federal lists");
        if (substance.reportable().isEmpty()) {
            paper.prose(
                    "  ",
                    "None is kept under this name and number. That does not say that a loss need not be reported: forms"
                            + " may be listed otherwise, and states ask for less.");
        }
        substance.reportable().forEach(value -> kept(paper, value));
        if (!substance.movement().isEmpty()) {
            paper.heading("Movement in soil");
            substance.movement().forEach(value -> kept(paper, value));
        }
        if (!substance.unknown().isEmpty()) {
            paper.heading("Unknown here").prose("  ", String.join(", ", substance.unknown()) + ".");
        }
        return paper.text();
    }

    private static void kept(Paper paper, Kept value) {
        List<String> parts = new ArrayList<>();
        parts.add((Numbers.printed(value.value()) + " " + value.unit()).strip());
        if (!value.conditions().isEmpty()) {
            parts.add(value.conditions());
        }
        parts.add(value.source());
        parts.add(value.status());
        if (!value.seenAt().isEmpty()) {
            parts.add(value.seenAt());
        }
        paper.prose("  " + value.mark() + " ", String.join(" · ", parts));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String count(int rows) {
        return Numbers.fixed(rows, 0);
    }
}
