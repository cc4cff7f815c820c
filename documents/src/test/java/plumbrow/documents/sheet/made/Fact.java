package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;

/** Something a sheet says, in one spelling for the truth and for what was read; blanks, case and hyphens don't count. */
record Fact(ValueKind kind, String key) {
    private static final String NO_DATA = "(no data)";
    private static final String UNCLEAR = "(unclear)";

    static Fact of(ValueKind kind, Content content) {
        return new Fact(kind, key(content));
    }

    static Fact noData(ValueKind kind) {
        return new Fact(kind, NO_DATA);
    }

    static Fact unclear(ValueKind kind) {
        return new Fact(kind, UNCLEAR);
    }

    /** All that was read, kind by kind; a kind without data counts once. */
    static List<Fact> of(SafetySheet sheet) {
        List<Fact> facts = new ArrayList<>();
        for (Reading.OnPaper reading : sheet.readings()) {
            Fact fact = reading instanceof Reading.Stated stated
                    ? of(stated.kind(), stated.content())
                    : reading instanceof Reading.NoData ? noData(reading.kind()) : unclear(reading.kind());
            if (reading instanceof Reading.Stated || !facts.contains(fact)) {
                facts.add(fact);
            }
        }
        return facts;
    }

    private static String key(Content content) {
        if (content instanceof Content.Text text) {
            return plain(text.words());
        }
        if (content instanceof Content.Day day) {
            return day.date().toString();
        }
        if (content instanceof Content.Measured measured) {
            return amount(measured.amount());
        }
        if (content instanceof Content.Phone phone) {
            return phone.number().replaceAll("\\D", "");
        }
        if (content instanceof Content.Ingredient each) {
            return plain(each.name()) + "|" + each.cas() + "|" + each.casFits() + "|" + amount(each.percent());
        }
        if (content instanceof Content.Statement statement) {
            return statement.code() + "|" + plain(statement.statement()) + "|" + statement.printed();
        }
        if (content instanceof Content.FirstAid aid) {
            return aid.route() + "|" + plain(aid.text());
        }
        if (content instanceof Content.Protection protection) {
            return protection.part() + "|" + plain(protection.text());
        }
        if (content instanceof Content.ExposureLimit limit) {
            return plain(limit.substance()) + "|" + limit.authority() + "|" + limit.basis() + "|"
                    + amount(limit.amount());
        }
        if (content instanceof Content.Acute acute) {
            return plain(acute.substance()) + "|" + acute.route() + "|" + acute.measure() + "|" + acute.species() + "|"
                    + acute.sex() + "|" + amount(acute.amount());
        }
        if (content instanceof Content.Eco eco) {
            return plain(eco.substance()) + "|" + eco.organism() + "|" + eco.measure() + "|" + amount(eco.amount());
        }
        if (content instanceof Content.Reportable reportable) {
            return plain(reportable.substance()) + "|" + amount(reportable.amount());
        }
        if (content instanceof Content.Shipping shipping) {
            return shipping.mode() + "|" + shipping.value();
        }
        Content.Listing listing = (Content.Listing) content;
        return listing.list() + "|" + plain(listing.text());
    }

    private static String amount(@Nullable Amount amount) {
        if (amount == null) {
            return "none";
        }
        Amount.Conditions under = amount.conditions();
        return amount.qualifier() + " " + number(amount.low()) + " " + number(amount.high()) + " " + amount.unit() + " "
                + Objects.toString(under.celsius(), "") + " " + Objects.toString(under.hours(), "") + " "
                + under.method();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6g", value);
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d%<>]+", "");
    }
}
