package plumbrow.documents.confirm;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.Shelf;

/**
 * The shelf with what a person confirmed on a product's label.
 *
 * A confirmed value enters where the shelf knows none, where it knows the same, and where it has the very value that the
 * person saw beside it and chose against. Where the shelf has another one, it stays: that is a new question.
 */
final class ConfirmedShelf {
    private ConfirmedShelf() {}

    /**
     * The shelf with the confirmed values.
     *
     * @param decisions about one label that counts now, one for each value
     * @param label what the label is called in a source: "label of 2026-03-01"
     */
    static Shelf over(Shelf shelf, String product, Collection<LabelDecision> decisions, String label) {
        Over over = new Over(product, decisions, label);
        LabelBook labels = shelf.labels();
        return new Shelf(
                shelf.products(),
                shelf.seeds(),
                shelf.traits(),
                over.rows(ShelfTable.ACTIVES, shelf.actives()),
                over.rows(ShelfTable.USES, shelf.labelUses()),
                over.rows(ShelfTable.LIMITS, shelf.activeLimits()),
                shelf.controls(),
                new LabelBook(
                        over.rows(ShelfTable.TERMS, labels.terms()),
                        over.rows(ShelfTable.SOIL_RATES, labels.soilRates()),
                        over.rows(ShelfTable.SETBACKS, labels.setbacks()),
                        over.rows(ShelfTable.PLANT_BACKS, labels.plantBacks()),
                        over.rows(ShelfTable.MIX_RULES, labels.mixRules()),
                        labels.specialLabels(),
                        over.rows(ShelfTable.CARE, labels.cares())));
    }

    /** The rows of a table that a shelf has. */
    static List<? extends Record> rows(Shelf shelf, ShelfTable table) {
        return switch (table) {
            case USES -> shelf.labelUses();
            case TERMS -> shelf.labels().terms();
            case SOIL_RATES -> shelf.labels().soilRates();
            case ACTIVES -> shelf.actives();
            case LIMITS -> shelf.activeLimits();
            case SETBACKS -> shelf.labels().setbacks();
            case PLANT_BACKS -> shelf.labels().plantBacks();
            case MIX_RULES -> shelf.labels().mixRules();
            case CARE -> shelf.labels().cares();
        };
    }

    /** Where the row of a label stands among the shelf's rows; -1 where it doesn't. */
    static int place(List<? extends Record> rows, RowName name, String product) {
        int before = 0;
        for (int i = 0; i < rows.size(); i++) {
            Record row = rows.get(i);
            boolean same = Rows.product(row).equals(product)
                    && RowName.of(name.table(), row, 1).key().equals(name.key());
            if (same && ++before == name.nth()) {
                return i;
            }
        }
        return -1;
    }

    /** Whether a confirmed value enters where the shelf has another or none. */
    static boolean enters(LabelDecision decision, String shelfHas) {
        return decision.verdict().enters()
                && (shelfHas.isEmpty() || shelfHas.equals(decision.value()) || shelfHas.equals(decision.instead()));
    }

    private record Over(String product, Collection<LabelDecision> decisions, String label) {

        <R extends Record> List<R> rows(ShelfTable table, List<R> had) {
            Map<RowName, List<LabelDecision>> byRow = decisions.stream()
                    .filter(decision -> decision.row().table() == table)
                    .collect(Collectors.groupingBy(LabelDecision::row, LinkedHashMap::new, Collectors.toList()));
            List<R> rows = new ArrayList<>(had);
            byRow.forEach((name, about) -> {
                int at = place(had, name, product);
                Record base = at < 0 ? Rows.blank(name, product) : had.get(at);
                Map<String, Object> entering = new LinkedHashMap<>();
                List<LabelDecision> entered = new ArrayList<>();
                for (LabelDecision decision : about) {
                    String has = at < 0 ? "" : Rows.text(base, decision.property());
                    if (enters(decision, has)) {
                        entering.put(
                                decision.property(),
                                Rows.kind(table, decision.property()).read(decision.value()));
                        entered.add(decision);
                    }
                }
                if (entered.isEmpty() || (at < 0 && lacking(table, base, entering))) {
                    return;
                }
                @SuppressWarnings("unchecked") // a row of the same table
                R row = (R) Rows.with(base, entering, source(at < 0 ? "" : Rows.source(base), entered));
                if (at < 0) {
                    rows.add(row);
                } else {
                    rows.set(at, row);
                }
            });
            return rows;
        }

        /** A new row without what it can't be without is none. */
        private static boolean lacking(ShelfTable table, Record base, Map<String, Object> entering) {
            return java.util.Arrays.stream(base.getClass().getRecordComponents())
                    .map(java.lang.reflect.RecordComponent::getName)
                    .anyMatch(property -> Rows.needed(table, property) && !entering.containsKey(property));
        }

        private String source(String had, List<LabelDecision> entered) {
            TreeSet<Integer> pages = new TreeSet<>();
            entered.stream().map(LabelDecision::page).filter(page -> page > 0).forEach(pages::add);
            TreeSet<String> who =
                    entered.stream().map(LabelDecision::who).collect(Collectors.toCollection(TreeSet::new));
            LocalDate last = entered.stream()
                    .map(LabelDecision::day)
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
            String fresh = label
                    + (pages.isEmpty()
                            ? ""
                            : (pages.size() == 1 ? ", page " : ", pages ")
                                    + pages.stream().map(String::valueOf).collect(Collectors.joining(", ")))
                    + ", confirmed by " + String.join(", ", who) + " on " + last;
            return had.isBlank() ? fresh : had + "; " + fresh;
        }
    }
}
