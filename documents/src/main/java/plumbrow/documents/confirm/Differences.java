package plumbrow.documents.confirm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelDifference;
import plumbrow.advice.shelf.Shelf;

/** What the label that counts and the workbook say differently, and nobody has settled. */
final class Differences {
    private Differences() {}

    /** A value of the label, read or decided, and where it stands. */
    private record Said(RowName row, String property, String value, int page) {}

    /**
     * The differences about one product.
     *
     * @param written the shelf as the workbook has it
     * @param counting the shelf as the checks see it
     * @param about the last word on each value of the label
     * @param read what stands clearly on it
     */
    static List<LabelDifference> of(
            Shelf written,
            Shelf counting,
            String product,
            LabelFile label,
            Map<String, LabelDecision> about,
            List<ReadOnLabel> read) {
        Map<String, Said> said = new LinkedHashMap<>();
        read.forEach(one -> said.put(one.id(), new Said(one.row(), one.property(), one.value(), one.page())));
        about.forEach((id, last) -> {
            if (last.verdict().enters()) {
                said.put(id, new Said(last.row(), last.property(), last.value(), last.page()));
            }
        });
        List<LabelDifference> differences = new ArrayList<>();
        said.forEach((id, one) -> {
            String row = ConfirmedShelf.written(written, product, one.row, one.property);
            // A crop that the workbook doesn't name may have its row for any other: that is what the check goes by.
            String workbook = row.isEmpty() ? ConfirmedShelf.found(written, product, one.row, one.property) : row;
            boolean settled = Optional.ofNullable(about.get(id))
                    .filter(last -> last.verdict() != Verdict.TAKEN_BACK)
                    .map(last -> LabelValues.wholeLabel(last) || LabelValue.settled(last, row))
                    .orElse(false);
            if (!settled && !workbook.isEmpty() && !TwoWords.same(one.row.table(), one.property, workbook, one.value)) {
                differences.add(difference(counting, product, label, one, workbook));
            }
        });
        return differences;
    }

    private static LabelDifference difference(
            Shelf counting, String product, LabelFile label, Said one, String workbook) {
        ShelfTable table = one.row.table();
        String counts = ConfirmedShelf.found(counting, product, one.row, one.property);
        boolean held = !counts.isEmpty()
                && TwoWords.stricter(one.row, one.property, counts, one.value)
                        .filter(counts::equals)
                        .isPresent();
        String row = one.row.words();
        return new LabelDifference(
                product,
                crop(one.row),
                one.row.key().getOrDefault("next_crop", ""),
                table.title(one.property).toLowerCase(Locale.ROOT) + (row.isEmpty() ? "" : ", " + row),
                table.shown(one.property, one.value),
                table.shown(one.property, workbook),
                table.shown(one.property, counts),
                !held,
                label.words() + (one.page > 0 ? ", page " + one.page : ""));
    }

    private static @Nullable Crop crop(RowName row) {
        String crop = row.key().get("crop");
        return crop == null ? null : (Crop) ValueText.kept(row.table().attribute("crop"), crop);
    }

    /** The shelf with them. */
    static Shelf with(Shelf shelf, List<LabelDifference> differences) {
        LabelBook labels = shelf.labels();
        return shelf.withLabels(new LabelBook(
                labels.terms(),
                labels.soilRates(),
                labels.setbacks(),
                labels.plantBacks(),
                labels.mixRules(),
                labels.specialLabels(),
                labels.cares(),
                labels.tolerances(),
                labels.limits(),
                labels.bulletins(),
                differences));
    }
}
