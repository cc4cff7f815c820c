package plumbrow.documents.workbook.edit;

import java.util.List;
import java.util.Map;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.SeedSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;

/** A seed stands on two sheets, neither of which may be without the other: it goes from both at once. */
public final class SeedPair {
    private static final String PRODUCT = "product";
    private static final String KIND = "kind";

    private SeedPair() {}

    /** The removal of a row, and where it is one of a seed, of the seed's other row with it. */
    public static List<RowChange> removal(Season season, RowChange removal) {
        Map<String, String> row = removal.before();
        if (row == null || removal.after() != null) {
            return List.of(removal);
        }
        boolean ofShelf = removal.table().equals(ShelfSheet.SHEET.name())
                && ProductKind.SEED.word().equals(row.get(KIND));
        boolean ofSeeds = removal.table().equals(SeedSheet.SHEET.name());
        if (!ofShelf && !ofSeeds) {
            return List.of(removal);
        }
        Sheet<?> other = ofShelf ? SeedSheet.SHEET : ShelfSheet.SHEET;
        List<Map<String, String>> rows = SeasonTables.of(season).rows(other);
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).getOrDefault(PRODUCT, "").equals(row.getOrDefault(PRODUCT, ""))) {
                return List.of(removal, RowChange.remove(other.name(), i, rows.get(i)));
            }
        }
        return List.of(removal);
    }
}
