package plumbrow.documents.card;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;

/** How old the sheet is, what it leaves out, and what the reading could not make out. */
final class PapersPart {
    private PapersPart() {}

    static CardSection of(CardInput input) {
        List<CardLine> lines = new ArrayList<>();
        lines.add(age(input));
        var missing = input.sheet().missingSections();
        if (missing.isEmpty()) {
            lines.add(new CardLine("Sections", "all sixteen are there", Known.READ, List.of()));
        } else {
            lines.add(new CardLine(
                    "Sections left out",
                    missing.stream()
                            .map(section -> section.number() + " " + section.title())
                            .collect(Collectors.joining("; ")),
                    Known.UNKNOWN,
                    List.of()));
        }
        input.sheet()
                .notices()
                .forEach(notice -> lines.add(new CardLine("The file", notice, Known.UNKNOWN, List.of())));
        List<LabelSaid.Value> dates = input.label(LabelSaid.Topic.DATE);
        if (input.label().isEmpty()) {
            lines.add(CardLine.unknown("Label", "the label itself; none was read beside this sheet"));
        } else if (dates.isEmpty()) {
            lines.add(CardLine.unknown("Date of the label", "the foot of the label"));
        } else {
            dates.forEach(value -> lines.add(Said.line(value, "Date of the label")));
        }
        return new CardSection(CardPart.PAPERS, lines);
    }

    private static CardLine age(CardInput input) {
        for (ValueKind kind : List.of(ValueKind.REVISION_DATE, ValueKind.ISSUE_DATE)) {
            if (input.sheet().of(kind) instanceof Reading.Stated stated
                    && stated.content() instanceof Content.Day day) {
                return age(day.date(), input.today(), Said.origin(stated.quote()), kind.title());
            }
        }
        CardLine revision = Said.once(input.sheet(), ValueKind.REVISION_DATE);
        return new CardLine("Age of the sheet", revision.says(), Known.UNKNOWN, revision.origins());
    }

    private static CardLine age(LocalDate date, LocalDate today, Origin origin, String of) {
        if (date.isAfter(today)) {
            return new CardLine(
                    "Age of the sheet",
                    of.toLowerCase(java.util.Locale.ROOT) + " " + date + " lies ahead of " + today,
                    Known.DIFFERS,
                    List.of(origin));
        }
        Period age = Period.between(date, today);
        String says = of.toLowerCase(java.util.Locale.ROOT) + " " + date + ", "
                + (ChronoUnit.MONTHS.between(date, today) < 24
                        ? ChronoUnit.MONTHS.between(date, today) + " months old"
                        : age.getYears() + " years old");
        return SheetAge.old(date, today)
                ? new CardLine(
                        "Age of the sheet",
                        says + ": older than " + SheetAge.YEARS + " years, ask the seller for the current one",
                        Known.DIFFERS,
                        List.of(origin, new Origin.Source(SheetAge.SOURCE)))
                : new CardLine("Age of the sheet", says, Known.READ, List.of(origin));
    }
}
