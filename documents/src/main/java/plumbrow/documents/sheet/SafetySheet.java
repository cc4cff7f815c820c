package plumbrow.documents.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumbrow.documents.paper.Paper;

/**
 * A safety data sheet as read.
 *
 * @param sections those found, in the order of the paper
 * @param readings everything read, in the order of the kinds
 * @param notices what a person should know about the file or the reading, one sentence each
 */
public record SafetySheet(
        Paper.Kind file,
        int pages,
        boolean needsTyping,
        List<FoundSection> sections,
        List<Reading.OnPaper> readings,
        List<String> notices) {

    public SafetySheet {
        sections = List.copyOf(sections);
        readings = List.copyOf(readings);
        notices = List.copyOf(notices);
    }

    /** What the sheet says of one thing that is stated once: a value, or why there is none. */
    public Reading of(ValueKind kind) {
        List<Reading.Stated> stated = all(kind);
        List<Reading.OnPaper> others = readings.stream()
                .filter(reading -> reading.kind() == kind && !(reading instanceof Reading.Stated))
                .toList();
        Optional<Reading.OnPaper> unclear = others.stream()
                .filter(reading -> reading instanceof Reading.Unclear)
                .findFirst();
        if (stated.size() > 1 && kind.statedOnce()) {
            return new Reading.Differing(kind, stated);
        }
        if (unclear.isPresent() && (stated.isEmpty() || kind.statedOnce())) {
            return unclear.get();
        }
        if (!stated.isEmpty()) {
            return stated.get(0);
        }
        return others.isEmpty() ? new Reading.NotStated(kind) : others.get(0);
    }

    /** All that the sheet clearly states of a kind, each once. */
    public List<Reading.Stated> all(ValueKind kind) {
        List<Reading.Stated> stated = new ArrayList<>();
        for (Reading.OnPaper reading : readings) {
            if (reading.kind() == kind && reading instanceof Reading.Stated one) {
                stated.add(one);
            }
        }
        return stated;
    }

    /**
     * The whole account, kind by kind: what is stated once as {@link #of} has it, even where it is not stated; of the others
     * everything found.
     */
    public List<Reading> account() {
        List<Reading> account = new ArrayList<>();
        for (ValueKind kind : ValueKind.values()) {
            List<Reading.OnPaper> found =
                    readings.stream().filter(reading -> reading.kind() == kind).toList();
            if (kind.statedOnce() || found.isEmpty()) {
                account.add(of(kind));
            } else {
                account.addAll(found);
            }
        }
        return account;
    }

    /** Of the sixteen, those that the sheet leaves out. */
    public List<SheetSection> missingSections() {
        return Arrays.stream(SheetSection.values())
                .filter(section -> sections.stream().noneMatch(found -> found.section() == section))
                .toList();
    }
}
