package plumbrow.documents.sheet.made;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.sheet.Amount.Qualifier;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.LimitBasis;
import plumbrow.documents.sheet.ValueKind;

/** The limits of section 8. */
final class LimitWriter {
    private LimitWriter() {}

    static void write(Draft draft) {
        List<String> names = draft.product
                .ingredients()
                .subList(0, draft.product.ingredients().size() - 1);
        switch (draft.house.limits()) {
            case NONE -> draft.pair("Exposure limits", draft.nothing());
            case BY_AUTHORITY -> byAuthority(draft, names);
            case ROWS -> rows(draft, names);
            case PAIRS -> pairs(draft, names.get(0));
        }
    }

    private static void byAuthority(Draft draft, List<String> names) {
        List<List<String>> rows = new ArrayList<>();
        for (String name : names) {
            double pel = 1 + draft.random.nextInt(15);
            double tlv = (1 + draft.random.nextInt(40)) / 10.0;
            boolean none = draft.chance(3);
            boolean ceiling = draft.chance(3);
            rows.add(List.of(
                    name,
                    none
                            ? draft.pick("Not established", "None established", "N/A")
                            : draft.house.digits().of(pel) + " mg/m3 (TWA)",
                    draft.house.digits().of(tlv) + (ceiling ? " mg/m3 (ceiling)" : " mg/m3 TWA")));
            if (!none) {
                limit(draft, name, "OSHA PEL", LimitBasis.TWA, pel, "mg/m³");
            }
            limit(draft, name, "ACGIH TLV", ceiling ? LimitBasis.CEILING : LimitBasis.TWA, tlv, "mg/m³");
        }
        draft.table(
                List.of(40, 30, 30), List.of(draft.pick("Component", "Chemical name"), "OSHA PEL", "ACGIH TLV"), rows);
    }

    private static void rows(Draft draft, List<String> names) {
        List<List<String>> rows = new ArrayList<>();
        String authority = draft.house.wording() == Wording.EU ? "WEL" : "ACGIH";
        for (String name : names) {
            double twa = 1 + draft.random.nextInt(50);
            double stel = twa * 2;
            rows.add(List.of(name, authority, "TWA", draft.house.digits().of(twa) + " ppm"));
            rows.add(List.of(name, authority, "STEL", draft.house.digits().of(stel) + " ppm"));
            String full = authority.equals("WEL") ? "UK WEL" : "ACGIH TLV";
            limit(draft, name, full, LimitBasis.TWA, twa, "ppm");
            limit(draft, name, full, LimitBasis.STEL, stel, "ppm");
        }
        draft.table(List.of(40, 20, 15, 25), List.of("Component", "Source", "Type of limit", "Value"), rows);
    }

    private static void pairs(Draft draft, String name) {
        double pel = 1 + draft.random.nextInt(15);
        double stel = pel * 2;
        draft.subheading("Exposure guidelines for " + name);
        draft.pair("OSHA PEL", draft.house.digits().of(pel) + " mg/m3 TWA");
        draft.pair(
                "ACGIH TLV",
                draft.house.digits().of(pel) + " mg/m3 TWA; "
                        + draft.house.digits().of(stel) + " mg/m3 STEL");
        limit(draft, name, "OSHA PEL", LimitBasis.TWA, pel, "mg/m³");
        limit(draft, name, "ACGIH TLV", LimitBasis.TWA, pel, "mg/m³");
        limit(draft, name, "ACGIH TLV", LimitBasis.STEL, stel, "mg/m³");
    }

    private static void limit(Draft draft, String name, String authority, LimitBasis basis, double value, String unit) {
        draft.truth(
                ValueKind.EXPOSURE_LIMIT,
                new Content.ExposureLimit(
                        name, authority, basis, Draft.amount(Qualifier.EXACTLY, value, unit, null, null)));
    }
}
