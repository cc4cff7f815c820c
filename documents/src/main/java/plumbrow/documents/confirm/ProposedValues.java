package plumbrow.documents.confirm;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.label.proposal.LabelProposals;
import plumbrow.documents.label.proposal.Proposal;

/** Every value that a label proposes, row by row in the order of the tables. */
public final class ProposedValues {
    private ProposedValues() {}

    /** The values of a label that is read. */
    public static List<ProposedValue> of(LabelPaper label) {
        LabelProposals rows = LabelProposals.of(label, "");
        List<ProposedValue> values = new ArrayList<>();
        add(values, ShelfTable.USES, rows.uses());
        add(values, ShelfTable.TERMS, rows.terms());
        add(values, ShelfTable.SOIL_RATES, rows.soilRates());
        add(values, ShelfTable.ACTIVES, rows.actives());
        add(values, ShelfTable.LIMITS, rows.limits());
        add(values, ShelfTable.SETBACKS, rows.setbacks());
        add(values, ShelfTable.PLANT_BACKS, rows.plantBacks());
        add(values, ShelfTable.MIX_RULES, rows.mixRules());
        add(values, ShelfTable.CARE, List.of(rows.care()));
        return List.copyOf(values);
    }

    private static void add(List<ProposedValue> values, ShelfTable table, List<? extends Proposal<?>> proposals) {
        Map<String, Integer> seen = new HashMap<>();
        for (Proposal<?> proposal : proposals) {
            Record row = proposal.row();
            int nth = seen.merge(RowName.of(table, row, 1).keyText(), 1, Integer::sum);
            RowName name = RowName.of(table, row, nth);
            proposal.grounds().forEach((property, ground) -> {
                if (!table.key().contains(property)) {
                    values.add(new ProposedValue(name, property, clear(row, property, ground), ground));
                }
            });
        }
    }

    /** A value that the label contradicts or leaves unclear is none. */
    private static String clear(Record row, String property, LabelReading ground) {
        return ground instanceof LabelReading.Stated ? Rows.text(row, property) : "";
    }
}
