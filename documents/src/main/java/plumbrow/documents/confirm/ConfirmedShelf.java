package plumbrow.documents.confirm;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.field.CropName;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.Shelf;

/**
 * The shelf with what a person confirmed on a product's label.
 *
 * A confirmed value enters where the shelf knows none, where it knows the same, and where it has the very value that the
 * person saw beside it and chose against. Where the shelf has another one, that is a new question: until a person settles it
 * the stricter of the two counts, and where that can't be told, the shelf's.
 */
final class ConfirmedShelf {
    private static final String CONDITION = "condition";

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
                        over.stricter(over.rows(ShelfTable.PLANT_BACKS, labels.plantBacks())),
                        over.rows(ShelfTable.MIX_RULES, labels.mixRules()),
                        labels.specialLabels(),
                        over.rows(ShelfTable.CARE, labels.cares()),
                        labels.tolerances(),
                        labels.limits(),
                        labels.bulletins(),
                        labels.differences()));
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

    /**
     * Where the row of a label stands among the shelf's rows; -1 where it doesn't. A plant-back row of the same crop and pH that
     * is the only one is the same row though its condition is worded otherwise.
     */
    static int place(List<? extends Record> rows, RowName name, String product) {
        int exactly =
                place(name.table(), rows, product, row -> name.sameAs(RowName.of(name.table(), row, 1)), name.nth());
        if (exactly >= 0 || name.table() != ShelfTable.PLANT_BACKS || name.nth() > 1) {
            return exactly;
        }
        RowName anyhow = name.without(CONDITION);
        Predicate<Record> alike =
                row -> anyhow.sameAs(RowName.of(name.table(), row, 1).without(CONDITION));
        return place(name.table(), rows, product, alike, 2) >= 0 ? -1 : place(name.table(), rows, product, alike, 1);
    }

    private static int place(
            ShelfTable table, List<? extends Record> rows, String product, Predicate<Record> which, int nth) {
        int before = 0;
        for (int i = 0; i < rows.size(); i++) {
            Record row = rows.get(i);
            if (table.product(row).equals(product) && which.test(row) && ++before == nth) {
                return i;
            }
        }
        return -1;
    }

    /** What a shelf says of a value of a label; empty where it says nothing. */
    static String written(Shelf shelf, String product, RowName row, String property) {
        List<? extends Record> rows = rows(shelf, row.table());
        int at = place(rows, row, product);
        return at < 0 ? "" : row.table().text(rows.get(at), property);
    }

    /**
     * What the checks find on a shelf where they ask for a value of a label; empty for unknown. How long a crop must wait they
     * take from all rows that speak for it, and of these the longest.
     */
    static String found(Shelf shelf, String product, RowName row, String property) {
        if (row.table() != ShelfTable.PLANT_BACKS || !property.equals("days")) {
            return written(shelf, product, row, property);
        }
        List<PlantBack> ofProduct = shelf.labels().plantBacks().stream()
                .filter(one -> one.product().equals(product))
                .toList();
        PlantBack asked =
                (PlantBack) row.table().row(row, product, Map.of(), "").orElseThrow();
        List<PlantBack> speaking = PlantBack.speakingFor(asked.nextCrop(), ofProduct).stream()
                .filter(one -> meet(one, asked))
                .toList();
        OptionalInt longest = speaking.stream()
                .flatMapToInt(one -> Stream.ofNullable(one.days()).mapToInt(Integer::intValue))
                .max();
        boolean unread = speaking.stream().anyMatch(one -> one.days() == null);
        return unread || longest.isEmpty() ? "" : String.valueOf(longest.getAsInt());
    }

    private static int waits(PlantBack row) {
        Integer days = row.days();
        return days == null ? 0 : days;
    }

    /** Whether two rows can hold at one pH. */
    private static boolean meet(PlantBack one, PlantBack other) {
        return from(one) < below(other) && from(other) < below(one);
    }

    private static double from(PlantBack row) {
        Double from = row.forPhFrom();
        return from == null ? Double.NEGATIVE_INFINITY : from;
    }

    private static double below(PlantBack row) {
        Double below = row.forPhBelow();
        return below == null ? Double.POSITIVE_INFINITY : below;
    }

    /** Whether a confirmed value enters where the shelf has another or none. */
    static boolean enters(LabelDecision decision, String shelfHas) {
        return decision.verdict().enters()
                && (shelfHas.isEmpty()
                        || TwoWords.same(decision.row().table(), decision.property(), shelfHas, decision.instead())
                        || TwoWords.same(decision.row().table(), decision.property(), shelfHas, decision.value()));
    }

    /** What enters where nobody has settled which one holds: the stricter, where that is not what the shelf has already. */
    private static Optional<String> unsettled(LabelDecision decision, String shelfHas) {
        return decision.verdict().enters()
                ? TwoWords.stricter(decision.row(), decision.property(), shelfHas, decision.value())
                        .filter(stricter -> !stricter.equals(shelfHas))
                : Optional.empty();
    }

    private record Over(String product, Collection<LabelDecision> decisions, String label) {

        <R extends Record> List<R> rows(ShelfTable table, List<R> had) {
            Map<RowName, List<LabelDecision>> byRow = decisions.stream()
                    .filter(decision -> decision.row().table() == table)
                    .collect(Collectors.groupingBy(LabelDecision::row, LinkedHashMap::new, Collectors.toList()));
            List<R> rows = new ArrayList<>(had);
            byRow.forEach((name, about) -> {
                int at = place(had, name, product);
                Map<String, Object> entering = new LinkedHashMap<>();
                List<LabelDecision> entered = new ArrayList<>();
                for (LabelDecision decision : about) {
                    String has = at < 0 ? "" : table.text(had.get(at), decision.property());
                    Optional<String> value =
                            enters(decision, has) ? Optional.of(decision.value()) : unsettled(decision, has);
                    if (value.isPresent()) {
                        entering.put(
                                decision.property(), ValueText.kept(table.attribute(decision.property()), value.get()));
                        entered.add(decision);
                    }
                }
                if (entered.isEmpty()) {
                    return;
                }
                if (at >= 0 && name.key().containsKey(CONDITION) && table == ShelfTable.PLANT_BACKS) {
                    entering.put(CONDITION, name.key().get(CONDITION));
                }
                if (at < 0) {
                    table.row(name, product, entering, source("", entered)).ifPresent(row -> rows.add(row(row)));
                } else {
                    Record base = had.get(at);
                    rows.set(at, row(table.with(base, entering, source(table.source(base), entered))));
                }
            });
            return rows;
        }

        @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"}) // a row of the same table
        private static <R extends Record> R row(Record made) {
            return (R) made;
        }

        /**
         * A crop that the workbook names and the label does not, but keeps off longer by its row for any other: the longer wait
         * counts until somebody settles it.
         */
        List<PlantBack> stricter(List<PlantBack> rows) {
            List<PlantBack> byLabel = byLabel();
            return rows.stream()
                    .map(row -> {
                        Optional<PlantBack> longer = row.product().equals(product)
                                ? PlantBack.speakingFor(row.nextCrop(), byLabel).stream()
                                        .filter(said -> meet(said, row) && longer(said, row))
                                        .max(Comparator.comparingInt(ConfirmedShelf::waits))
                                : Optional.empty();
                        return longer.map(said -> new PlantBack(
                                        row.product(),
                                        row.nextCrop(),
                                        said.days(),
                                        row.forPhFrom(),
                                        row.forPhBelow(),
                                        row.condition(),
                                        row.source() + "; " + label + " for crops it does not name, the longer wait"))
                                .orElse(row);
                    })
                    .toList();
        }

        private static boolean longer(PlantBack said, PlantBack row) {
            Integer by = said.days();
            Integer has = row.days();
            return by != null && has != null && by > has && !CropName.same(said.nextCrop(), row.nextCrop());
        }

        /** The plant-back rows that were confirmed on the label, by themselves. */
        private List<PlantBack> byLabel() {
            List<PlantBack> rows = new ArrayList<>();
            for (LabelDecision decision : decisions) {
                if (decision.row().table() == ShelfTable.PLANT_BACKS
                        && decision.property().equals("days")
                        && decision.verdict().enters()) {
                    ShelfTable table = ShelfTable.PLANT_BACKS;
                    Object days = ValueText.kept(table.attribute("days"), decision.value());
                    table.row(decision.row(), product, Map.of("days", days), label)
                            .ifPresent(row -> rows.add((PlantBack) row));
                }
            }
            return rows;
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
