package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;

/** What papers say, as lines of a card. */
final class Said {
    private Said() {}

    /** What the sheet says of one thing, or why it is unknown and where to look. */
    static CardLine once(SafetySheet sheet, ValueKind kind) {
        return line(sheet.of(kind), kind.title());
    }

    /** All that the sheet says of a kind; one line that it is unknown where that is nothing. */
    static List<CardLine> all(SafetySheet sheet, ValueKind kind) {
        List<Reading.Stated> stated = sheet.all(kind);
        List<CardLine> lines = new ArrayList<>();
        stated.forEach(one -> lines.add(line(one, about(one))));
        sheet.readings().stream()
                .filter(reading -> reading.kind() == kind && reading instanceof Reading.Unclear)
                .forEach(reading -> lines.add(line(reading, kind.title())));
        if (lines.isEmpty()) {
            lines.add(once(sheet, kind));
        }
        return lines;
    }

    static CardLine line(Reading reading, String about) {
        if (reading instanceof Reading.Stated stated) {
            return new CardLine(about, text(stated.content()), Known.READ, List.of(origin(stated.quote())));
        }
        if (reading instanceof Reading.Differing differing) {
            return new CardLine(
                    about,
                    differing.words(),
                    Known.DIFFERS,
                    differing.statements().stream()
                            .map(one -> origin(one.quote()))
                            .toList());
        }
        if (reading instanceof Reading.NoData none) {
            return new CardLine(
                    about,
                    "unknown; the sheet says: " + none.quote().words(),
                    Known.UNKNOWN,
                    List.of(origin(none.quote())));
        }
        if (reading instanceof Reading.Unclear unclear) {
            return new CardLine(
                    about,
                    "unknown; look at the page: " + unclear.why(),
                    Known.UNKNOWN,
                    List.of(origin(unclear.quote())));
        }
        SheetSection home = reading.kind().home();
        return CardLine.unknown(
                about, "the sheet, section " + home.number() + " (" + home.title() + "), where none was found");
    }

    static CardLine line(LabelSaid.Value value, String about) {
        return new CardLine(
                value.about().isEmpty() ? about : value.about(),
                value.clear() ? value.words() : "unknown; look at the label: " + value.words(),
                value.clear() ? Known.READ : Known.UNKNOWN,
                List.of(origin(value)));
    }

    static Origin origin(Quote quote) {
        return new Origin.OnPaper(Origin.PaperKind.SAFETY_SHEET, quote);
    }

    static Origin origin(LabelSaid.Value value) {
        return new Origin.OnPaper(Origin.PaperKind.LABEL, value.quote());
    }

    private static String about(Reading.Stated stated) {
        Content content = stated.content();
        if (content instanceof Content.FirstAid aid) {
            return aid.route().word();
        }
        if (content instanceof Content.Protection protection) {
            return protection.part().word();
        }
        if (content instanceof Content.Phone phone) {
            return phone.purpose().isEmpty() ? "the company" : phone.purpose();
        }
        return stated.kind().title();
    }

    /** Without what already stands as what it is about. */
    private static String text(Content content) {
        if (content instanceof Content.FirstAid aid) {
            return aid.text();
        }
        if (content instanceof Content.Protection protection) {
            return protection.text();
        }
        if (content instanceof Content.Acute acute) {
            return acute.words().substring(acute.route().word().length()).strip();
        }
        return content instanceof Content.Phone phone ? phone.number() : content.words();
    }
}
