package plumbrow.documents.sheet.made;

import java.util.List;
import plumbrow.documents.sheet.Amount.Qualifier;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.ValueKind;

/** Sections 14 and 15. */
final class TransportWriter {
    private static final String NAME = "Environmentally hazardous substance, liquid, n.o.s.";

    private TransportWriter() {}

    static void transport(Draft draft) {
        switch (draft.house.transport()) {
            case PAIRS -> pairs(draft);
            case BY_MODE -> byMode(draft);
            case ONE_LINE -> oneLine(draft);
            case PLAIN -> plain(draft, "");
        }
    }

    private static void pairs(Draft draft) {
        if (draft.house.american()) {
            draft.subheading("DOT");
            draft.paragraph("Not regulated");
            ship(draft, ValueKind.UN_NUMBER, "DOT", "not regulated");
            draft.subheading("IMDG");
            plain(draft, "IMDG");
        } else {
            draft.subheading("ADR/RID");
            plain(draft, "ADR");
        }
    }

    private static void plain(Draft draft, String mode) {
        if (!draft.product.regulated()) {
            draft.pair("UN number", "Not regulated");
            ship(draft, ValueKind.UN_NUMBER, mode, "not regulated");
            return;
        }
        draft.pair(draft.pick("UN number", "UN No.", "UN-No."), draft.pick("UN3082", "UN 3082", "3082"));
        draft.pair(
                draft.pick("Proper shipping name", "UN proper shipping name"),
                NAME + " (" + draft.product.ingredients().get(0) + ")");
        ship(
                draft,
                ValueKind.SHIPPING_NAME,
                mode,
                NAME + " (" + draft.product.ingredients().get(0) + ")");
        draft.pair(draft.pick("Class", "Hazard class", "Transport hazard class(es)"), "9");
        draft.pair("Packing group", draft.product.group());
        draft.pair("Marine pollutant", draft.product.pollutant() ? "Yes" : "No");
        all(draft, mode);
    }

    private static void byMode(Draft draft) {
        String group = draft.product.group();
        draft.table(
                List.of(28, 24, 24, 24),
                List.of("", "DOT", "IMDG", "IATA"),
                List.of(
                        List.of("UN number", "Not regulated", "UN3082", "UN3082"),
                        List.of("Proper shipping name", "-", NAME, NAME),
                        List.of("Hazard class", "-", "9", "9"),
                        List.of("Packing group", "-", group, group)));
        ship(draft, ValueKind.UN_NUMBER, "DOT", "not regulated");
        for (String mode : List.of("IMDG", "IATA")) {
            ship(draft, ValueKind.UN_NUMBER, mode, "UN3082");
            ship(draft, ValueKind.SHIPPING_NAME, mode, NAME);
            ship(draft, ValueKind.TRANSPORT_CLASS, mode, "9");
            ship(draft, ValueKind.PACKING_GROUP, mode, group);
        }
        draft.noData(ValueKind.TRANSPORT_CLASS);
        draft.noData(ValueKind.PACKING_GROUP);
    }

    private static void oneLine(Draft draft) {
        boolean pollutant = draft.product.pollutant();
        draft.pair("DOT", draft.pick("Not regulated", "Not regulated for ground shipment"));
        ship(draft, ValueKind.UN_NUMBER, "DOT", "not regulated");
        if (draft.product.regulated()) {
            draft.pair(
                    "IMDG",
                    "UN3082, " + NAME + " (" + draft.product.ingredients().get(0) + "), 9, " + draft.pick("", "PG ")
                            + draft.product.group() + (pollutant ? ", Marine pollutant" : ""));
            ship(draft, ValueKind.UN_NUMBER, "IMDG", "UN3082");
            ship(
                    draft,
                    ValueKind.SHIPPING_NAME,
                    "IMDG",
                    NAME + " (" + draft.product.ingredients().get(0) + ")");
            ship(draft, ValueKind.TRANSPORT_CLASS, "IMDG", "9");
            ship(draft, ValueKind.PACKING_GROUP, "IMDG", draft.product.group());
            if (pollutant) {
                ship(draft, ValueKind.MARINE_POLLUTANT, "IMDG", "yes");
            }
        }
    }

    private static void all(Draft draft, String mode) {
        ship(draft, ValueKind.UN_NUMBER, mode, "UN3082");
        ship(draft, ValueKind.TRANSPORT_CLASS, mode, "9");
        ship(draft, ValueKind.PACKING_GROUP, mode, draft.product.group());
        ship(draft, ValueKind.MARINE_POLLUTANT, mode, draft.product.pollutant() ? "yes" : "no");
    }

    private static void ship(Draft draft, ValueKind kind, String mode, String value) {
        draft.truth(kind, new Content.Shipping(mode, value));
    }

    static void regulation(Draft draft) {
        if (!draft.house.american()) {
            draft.paragraph("A chemical safety assessment according to Regulation (EC) No 1907/2006 is not required.");
            return;
        }
        String signal = draft.pick("CAUTION", "WARNING", "DANGER");
        draft.pair(
                "FIFRA",
                draft.pick(
                        "This product is registered under federal pesticide distribution.",
                        "Registered pesticide; the label differs from this sheet."));
        listed(draft, "FIFRA");
        draft.pair(draft.pick("Signal word", "EPA label signal word: Signal word"), signal);
        draft.truth(ValueKind.LABEL_SIGNAL_WORD, new Content.Text(signal));
        Integer pounds = draft.product.reportableLb();
        if (pounds != null) {
            String substance = draft.product.ingredients().get(0);
            draft.pair(
                    draft.pick("CERCLA reportable quantity", "Reportable quantity (RQ)", "CERCLA RQ"),
                    draft.house.digits().of(pounds) + draft.pick(" lb", " lbs", " pounds") + " (" + substance + ")");
            draft.truth(
                    ValueKind.REPORTABLE_QUANTITY,
                    new Content.Reportable(substance, Draft.amount(Qualifier.EXACTLY, pounds, "lb", null, null)));
        }
        draft.pair(
                draft.pick("SARA 313", "SARA Title III, Section 313"),
                draft.pick(
                        "None of the ingredients is listed",
                        draft.product.ingredients().get(0)));
        listed(draft, "SARA 313");
        draft.pair(
                draft.pick("SARA 311/312 Hazard categories", "SARA 311/312"),
                draft.pick("Acute health hazard", "Immediate (acute), fire"));
        listed(draft, "SARA 311/312");
    }

    /** What the last pair says, under a list. */
    private static void listed(Draft draft, String list) {
        Block.Pair last = (Block.Pair) draft.blocks.get(draft.blocks.size() - 1);
        draft.truth(ValueKind.REGULATORY_LIST, new Content.Listing(list, last.value()));
    }
}
