package plumbrow.documents.sheet.part;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.sheet.grammar.NoDataWords;
import plumbrow.documents.sheet.section.Item;
import plumbrow.documents.sheet.section.Label;

/** Product name, registration number, emergency telephones. */
final class IdentityPart implements Part {
    /** Company-product or company-product-distributor, behind its words; the words decide, as a CAS number looks alike. */
    private static final Pattern REGISTRATION = Pattern.compile(
            "(?i)\\b(?:EPA\\s*)?Reg(?:istration|\\.)?\\s*(?:No|Number|#|Nos)?[\\s.:#]*(\\d{1,6}[-–]\\d{1,5}(?:[-–]\\d{1,6})?)(?![\\d–-])");

    private static final Pattern NUMBER_ALONE =
            Pattern.compile("\\s*(\\d{1,6}[-–]\\d{1,5}(?:[-–]\\d{1,6})?)(?![\\d–-]).*");
    private static final Pattern PHONE = Pattern.compile("(?<![\\d-])\\+?\\(?\\d[\\d()./\\s–-]{5,20}\\d(?![\\d-])");
    private static final Pattern OTHER_LINE = Pattern.compile("(?i)\\b(?:fax|telefax)\\b\\W*$");
    private static final int FEWEST_DIGITS = 7;
    private static final int MOST_DIGITS = 15;

    @Override
    public void read(SheetText sheet, Readings readings) {
        name(sheet, readings);
        registration(sheet, readings);
        phones(sheet.items(SheetSection.IDENTIFICATION), readings);
        phones(sheet.frontItems(), readings);
    }

    private static void name(SheetText sheet, Readings readings) {
        for (Item item : sheet.items(Label.PRODUCT_NAME, SheetSection.IDENTIFICATION)) {
            Passage name = item.table() ? item.value() : item.value().firstLine();
            if (NoDataWords.end(name.text()) < 0 && !Prose.of(name).isEmpty()) {
                readings.state(ValueKind.PRODUCT_NAME, new Content.Text(Prose.of(name)), name.quote());
            }
        }
    }

    private static void registration(SheetText sheet, Readings readings) {
        for (Row row : sheet.everything()) {
            Passage passage = Passage.of(row);
            Matcher found = REGISTRATION.matcher(passage.text());
            while (found.find()) {
                keep(passage, found.start(1), found.end(1), readings);
            }
        }
        for (Item item : sheet.items(Label.REGISTRATION, SheetSection.IDENTIFICATION, SheetSection.REGULATION)) {
            Matcher alone = NUMBER_ALONE.matcher(item.value().text());
            if (alone.matches()) {
                keep(item.value(), alone.start(1), alone.end(1), readings);
            }
        }
    }

    private static void keep(Passage passage, int from, int to, Readings readings) {
        String number = passage.text().substring(from, to).replace('–', '-');
        readings.state(ValueKind.REGISTRATION_NUMBER, new Content.Text(number), passage.quote(from, to));
    }

    private static void phones(List<Item> items, Readings readings) {
        String purpose = "";
        for (Item item : items) {
            if (item.is(Label.EMERGENCY_PHONE)) {
                purpose = Prose.of(item.head()).replaceAll("\\s*[:=]$", "");
            } else if (item.label().isPresent()) {
                purpose = "";
            }
            if (!purpose.isEmpty()) {
                boolean own = item.is(Label.EMERGENCY_PHONE);
                phones(own ? purpose : Prose.of(item.head()).replaceAll("\\s*[:=]$", ""), item.value(), readings);
            }
        }
    }

    private static void phones(String purpose, Passage value, Readings readings) {
        Matcher found = PHONE.matcher(value.text());
        while (found.find()) {
            String number = found.group().replaceAll("\\s+", " ");
            long digits = number.chars().filter(Character::isDigit).count();
            boolean fax =
                    OTHER_LINE.matcher(value.text().substring(0, found.start())).find();
            if (digits >= FEWEST_DIGITS && digits <= MOST_DIGITS && !fax) {
                readings.state(
                        ValueKind.EMERGENCY_PHONE,
                        new Content.Phone(purpose, number),
                        value.quote(found.start(), found.end()));
            }
        }
    }
}
