package plumbrow.documents.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;

/**
 * How two revisions of a sheet differ, kind by kind. Blanks, capitals and hyphens make no difference; numbers do, to the
 * last digit.
 *
 * @param changes in the order of the sections
 * @param sectionsGone sections of the first that the second leaves out
 * @param sectionsNew the other way round
 */
public record SheetChanges(List<SheetChange> changes, List<SheetSection> sectionsGone, List<SheetSection> sectionsNew) {

    public SheetChanges {
        changes = List.copyOf(changes);
        sectionsGone = List.copyOf(sectionsGone);
        sectionsNew = List.copyOf(sectionsNew);
    }

    public static SheetChanges between(SafetySheet before, SafetySheet after) {
        List<SheetChange> changes = new ArrayList<>();
        for (ValueKind kind : ValueKind.values()) {
            List<Reading.OnPaper> gone = only(kind, before, after);
            List<Reading.OnPaper> come = only(kind, after, before);
            if (!gone.isEmpty() || !come.isEmpty()) {
                changes.add(new SheetChange(kind, gone, come));
            }
        }
        return new SheetChanges(
                changes,
                minus(after.missingSections(), before.missingSections()),
                minus(before.missingSections(), after.missingSections()));
    }

    public boolean none() {
        return changes.isEmpty() && sectionsGone.isEmpty() && sectionsNew.isEmpty();
    }

    private static List<Reading.OnPaper> only(ValueKind kind, SafetySheet here, SafetySheet there) {
        var others = there.readings().stream()
                .filter(reading -> reading.kind() == kind)
                .map(SheetChanges::plain)
                .collect(Collectors.toSet());
        return here.readings().stream()
                .filter(reading -> reading.kind() == kind && !others.contains(plain(reading)))
                .toList();
    }

    private static List<SheetSection> minus(List<SheetSection> all, List<SheetSection> others) {
        return all.stream().filter(section -> !others.contains(section)).toList();
    }

    private static String plain(Reading reading) {
        return reading.words().toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00AD‐‑-]+", "");
    }
}
