package plumbrow.documents.confirm;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.label.proposal.LabelProposals;
import plumbrow.documents.label.proposal.Proposal;

/** Every value that a label proposes, row by row in the order of the tables. */
public final class ProposedValues {
    /** Properties that share a statement with another, which may speak of that one alone. */
    private static final Set<String> ONE_OF_TWO = Set.of(
            "low_rate",
            "grazing_days",
            "feeding_forbidden",
            "finest",
            "coarsest",
            "wind_lowest_mph",
            "wind_highest_mph",
            "earliest_stage",
            "latest_stage",
            "ae_ratio");

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
        Set<Record> rows = new HashSet<>();
        for (Proposal<?> proposal : proposals) {
            Record row = proposal.row();
            if (!rows.add(table.with(row, Map.of(), ""))) {
                continue; // said twice in the same sense, as 66 ft from streams and 66 ft from rivers
            }
            int nth = seen.merge(RowName.of(table, row, 1).keyText(), 1, Integer::sum);
            RowName name = RowName.of(table, row, nth);
            proposal.grounds().forEach((property, ground) -> {
                if (!table.key().contains(property)) {
                    String proposed = clear(table, row, property, ground);
                    values.add(new ProposedValue(name, property, proposed, about(property, proposed, ground)));
                }
            });
        }
    }

    /** A statement that says nothing of this property, or says it in a way that the shelf has no place for. */
    private static LabelReading about(String property, String proposed, LabelReading ground) {
        if (!(ground instanceof LabelReading.Stated stated) || !proposed.isEmpty()) {
            return ground;
        }
        return ONE_OF_TWO.contains(property)
                ? new LabelReading.NotStated(ground.kind())
                : new LabelReading.Unclear(
                        ground.kind(),
                        "“" + stated.words() + "” has no place on the shelf as it stands",
                        stated.quote());
    }

    /** A value that the label contradicts or leaves unclear is none. */
    private static String clear(ShelfTable table, Record row, String property, LabelReading ground) {
        return ground instanceof LabelReading.Stated ? table.text(row, property) : "";
    }
}
