package plumbrow.documents.sheet.made;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;

/** Section 1, and the dates. */
final class IdentityWriter {
    private IdentityWriter() {}

    static void write(Draft draft) {
        Product product = draft.product;
        boolean european = draft.house.wording() == Wording.EU;
        if (european) {
            draft.subheading("1.1 Product identifier");
        }
        draft.pair(european ? "Trade name" : draft.pick("Product name", "Product Name", "Trade name"), product.name());
        draft.truth(ValueKind.PRODUCT_NAME, new Content.Text(product.name()));
        if (!european) {
            draft.pair(
                    draft.pick("EPA Reg. No.", "EPA Registration Number", "EPA Registration No."),
                    product.registration());
            draft.truth(ValueKind.REGISTRATION_NUMBER, new Content.Text(product.registration()));
            if (draft.chance(3)) {
                draft.pair("EPA Est. No.", "99999-IA-001");
            }
        }
        if (european) {
            draft.subheading("1.2 Relevant identified uses of the substance or mixture and uses advised against");
        }
        draft.pair(draft.pick("Recommended use", "Product use", "Use"), "Crop protection, agricultural use only");
        if (european) {
            draft.subheading("1.3 Details of the supplier of the safety data sheet");
        }
        String town = draft.pick("Plainville, IL 62365", "Plainville, Kansas 67663-1402");
        draft.pair(draft.pick("Company", "Manufacturer", "Supplier"), "Invented Works, 12 Mill Lane, " + town);
        draft.truth(ValueKind.MAKER, new Content.Text("Invented Works"));
        draft.truth(ValueKind.ADDRESS, new Content.Text("12 Mill Lane, " + town));
        draft.pair(
                draft.pick("Telephone", "Phone", "General information"),
                "1-515-555-0" + (100 + draft.random.nextInt(99)));
        if (european) {
            draft.subheading("1.4 Emergency telephone number");
        }
        draft.pair(
                draft.pick(
                        "Emergency telephone",
                        "24-Hour Emergency Phone",
                        "Emergency telephone number",
                        "In case of emergency, call"),
                product.emergency());
        draft.truth(ValueKind.EMERGENCY_PHONE, new Content.Phone("", product.emergency()));
        if (draft.chance(2)) {
            draft.pair(
                    draft.pick("Medical emergency", "Poison Control Center", "Medical emergencies"), product.poison());
            draft.truth(ValueKind.EMERGENCY_PHONE, new Content.Phone("", product.poison()));
        }
    }

    static void dates(Draft draft) {
        draft.truth(ValueKind.REVISION_DATE, new Content.Day(draft.product.revised()));
        if (draft.house.press() != House.Press.RUNNING_HEADS) {
            draft.pair(
                    draft.pick(
                            "Revision date", "Revised", "Date of last revision", "Date revised", "Last revision date"),
                    date(draft.house.dates(), draft.product.revised()));
        }
        if (draft.chance(2)) {
            draft.truth(ValueKind.SUPERSEDED_DATE, new Content.Day(draft.product.superseded()));
            draft.pair(
                    draft.pick("Supersedes", "Replaces", "Supersedes date", "Date of previous issue"),
                    date(draft.house.dates(), draft.product.superseded()));
        }
    }

    static String date(House.Dates form, LocalDate date) {
        String pattern = switch (form) {
            case AMERICAN -> "MM/dd/yyyy";
            case NAMED -> "dd-MMM-yyyy";
            case MONTH_FIRST -> "MMMM d, yyyy";
            case ISO -> "yyyy-MM-dd";
            case GERMAN -> "dd.MM.yyyy";
            case BRITISH -> "dd/MM/yyyy";
        };
        return date.format(DateTimeFormatter.ofPattern(pattern, Locale.US));
    }
}
