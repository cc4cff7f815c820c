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
    /** Services that answer when something has happened, and the word itself. */
    private static final Pattern EMERGENCY = Pattern.compile(
            "(?i)(?<!non-)(?<!non )(?:emergenc|chemtrec|infotrac|chem-?tel\\b|poison (?:control|cent))");

    private static final Pattern NOT_EMERGENCY = Pattern.compile(
            "(?i)\\b(?:non-?\\s?emergency|routine|customer|product|information|office|general|sales|technical|fax|telefax|web|business|regulatory|questions|requests)\\b");
    /** "Outside the United States call collect", below the number for those inside. */
    private static final Pattern ELSEWHERE =
            Pattern.compile("(?i)^\\W*(?:\\(?outside|international|usa?:|mexico|canada)");

    /** A number of three, three and four digits is whole before what stands behind it. */
    private static final Pattern WHOLE_NUMBER =
            Pattern.compile("^(\\+?(?:1[-. ]{1,2})?\\(?\\d{3}\\)?[-. /]{1,3}\\d{3}[-. ]\\d{4})[\\s(]+\\d.*");

    private static final Pattern UNCLOSED = Pattern.compile("\\s*\\([^)]*$");
    private static final Pattern POSTAL_CODE = Pattern.compile("\\d{5}[-–]\\d{4}");
    private static final int FEWEST_DIGITS = 7;
    private static final int MOST_DIGITS = 15;

    @Override
    public void read(SheetText sheet, Readings readings) {
        name(sheet, readings);
        registration(sheet, readings);
        phones(sheet.items(SheetSection.IDENTIFICATION), readings);
        phones(sheet.frontItems(), readings);
        List<Row> rows = new java.util.ArrayList<>(sheet.front());
        rows.addAll(sheet.rows(SheetSection.IDENTIFICATION));
        inRows(rows, readings);
    }

    /** Numbers behind the word or the name of a service on their own line, whatever stands before the line. */
    private static void inRows(List<Row> rows, Readings readings) {
        boolean before = false;
        for (Row row : rows) {
            Passage passage = Passage.of(row);
            Matcher found = PHONE.matcher(passage.text());
            int from = 0;
            boolean any = false;
            boolean elsewhere = before && ELSEWHERE.matcher(passage.text()).find();
            while (found.find()) {
                String words = passage.text().substring(from, found.start());
                boolean named = EMERGENCY.matcher(words).find()
                        && !NOT_EMERGENCY
                                .matcher(words.substring(Math.max(words.lastIndexOf('\t'), 0)))
                                .find();
                if (named || elsewhere || (any && from > 0)) {
                    keepPhone(Prose.of(words), passage, found, readings);
                    any = true;
                }
                from = found.end();
            }
            before = any;
        }
    }

    private static void name(SheetText sheet, Readings readings) {
        List<Item> items = sheet.items(Label.PRODUCT_NAME, SheetSection.IDENTIFICATION);
        boolean named = items.stream().anyMatch(IdentityPart::saysName);
        for (Item item : items) {
            if (named && !saysName(item)) {
                continue;
            }
            Passage value = item.value();
            int column = value.text().indexOf('\t');
            boolean other = column >= 0 && value.text().substring(column).contains(":");
            Passage name = other ? value.part(0, column) : item.table() || column >= 0 ? value : value.firstLine();
            String words = UNCLOSED.matcher(Prose.of(name)).replaceFirst("").replaceAll("^[\\s:]+", "");
            if (NoDataWords.end(words) < 0 && !words.isEmpty()) {
                readings.state(ValueKind.PRODUCT_NAME, new Content.Text(words), name.quote());
            }
        }
    }

    /** A trade name or a trademark beside it is another name of the same product. */
    private static boolean saysName(Item item) {
        return !item.head().text().toLowerCase(java.util.Locale.ROOT).contains("trade")
                && !item.value().isEmpty();
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
            } else if (item.label().isPresent()
                    || NOT_EMERGENCY.matcher(item.head().text()).find()) {
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
            boolean fax =
                    OTHER_LINE.matcher(value.text().substring(0, found.start())).find();
            if (!fax) {
                keepPhone(purpose, value, found, readings);
            }
        }
    }

    private static void keepPhone(String purpose, Passage value, Matcher found, Readings readings) {
        String printed = found.group().replaceAll("\\s+", " ");
        Matcher whole = WHOLE_NUMBER.matcher(printed);
        printed = whole.matches() ? whole.group(1) : printed;
        String number = printed.indexOf('(') >= 0 && printed.indexOf(')') < 0 ? printed.replace("(", "") : printed;
        long digits = number.chars().filter(Character::isDigit).count();
        boolean closed = number.indexOf(')') >= 0 && number.indexOf('(') < 0;
        if (!closed
                && digits >= FEWEST_DIGITS
                && digits <= MOST_DIGITS
                && !POSTAL_CODE.matcher(number).matches()) {
            readings.state(
                    ValueKind.EMERGENCY_PHONE,
                    new Content.Phone(purpose.replaceAll("^\\W+|[\\s:=(]+$", ""), number),
                    value.quote(found.start(), found.end()));
        }
    }
}
