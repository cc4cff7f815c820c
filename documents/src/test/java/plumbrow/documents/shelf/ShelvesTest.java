package plumbrow.documents.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import plumbrow.documents.card.Revisions;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.documents.shelf.FiledPaper.Kind;

class ShelvesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static FiledPaper paper(
            int number, Kind kind, String product, String registration, @Nullable String dated) {
        LocalDate day = dated == null ? null : LocalDate.parse(dated);
        return new FiledPaper(
                number, kind, "file" + number + ".pdf", product, registration, day, 3, kind == Kind.UNKNOWN);
    }

    @Test
    void sheetAndLabelMeetByNumberThenByName() {
        List<ShelfProduct> shelf = Shelves.of(List.of(
                paper(1, Kind.SAFETY_SHEET, "Larkwick 4L", "90001-7", "2025-01-01"),
                paper(2, Kind.LABEL, "LARKWICK 4 L Herbicide", "90001-7", null),
                paper(3, Kind.LABEL, "Quarrystone", "90001-8", null),
                paper(4, Kind.SAFETY_SHEET, "quarry-stone", "", "2025-02-01")));
        assertThat(shelf).extracting(ShelfProduct::name).containsExactly("Larkwick 4L", "quarry-stone");
        assertThat(shelf).allSatisfy(product -> {
            assertThat(product.sheets()).hasSize(1);
            assertThat(product.labels()).hasSize(1);
            assertThat(product.remarks(TODAY)).isEmpty();
        });
    }

    @Test
    void likeNamesWithOtherNumbersStayApartAndAnUnclearOneIsNotGuessed() {
        List<ShelfProduct> shelf = Shelves.of(List.of(
                paper(1, Kind.SAFETY_SHEET, "Larkwick", "90001-7", null),
                paper(2, Kind.SAFETY_SHEET, "Larkwick", "90002-7", null),
                paper(3, Kind.LABEL, "Larkwick", "", null)));
        assertThat(shelf).hasSize(3);
        assertThat(shelf).filteredOn(product -> product.sheets().isEmpty()).hasSize(1);
    }

    @Test
    void theNewestCountsAndWhatIsMissingOrOldIsSaid() {
        List<ShelfProduct> shelf = Shelves.of(List.of(
                paper(1, Kind.SAFETY_SHEET, "Larkwick", "90001-7", "2021-03-01"),
                paper(2, Kind.SAFETY_SHEET, "Larkwick", "90001-7", null),
                paper(3, Kind.SAFETY_SHEET, "Larkwick", "90001-7", "2023-11-24")));
        assertThat(shelf.get(0).sheet()).map(FiledPaper::number).isEqualTo(Optional.of(3));
        assertThat(shelf.get(0).remarks(TODAY))
                .containsExactly("no label", "sheet older than 3 years", "3 safety sheets: the newest counts");
        assertThat(shelf.get(0).remarks(LocalDate.of(2026, 11, 24))).doesNotContain("sheet older than 3 years");
    }

    @Test
    void aScanStandsForItself() {
        FiledPaper scan = paper(5, Kind.UNKNOWN, "", "", null);
        ShelfProduct product = Shelves.holding(List.of(scan), 5).orElseThrow();
        assertThat(product.name()).isEqualTo("file5.pdf");
        assertThat(product.remarks(TODAY)).contains("a page without text that needs typing", "no safety sheet");
        assertThat(Shelves.holding(List.of(scan), 6)).isEmpty();
    }

    @Test
    void revisionsDifferByKindAndBlanksDoNotCount() {
        SheetChanges changes = SheetChanges.between(Revisions.first(), Revisions.second());
        assertThat(changes.changes())
                .extracting(SheetChange::kind)
                .containsExactly(
                        ValueKind.REVISION_DATE, ValueKind.PROTECTION, ValueKind.ACUTE_TOXICITY, ValueKind.DISPOSAL);
        SheetChange gear = changes.changes().get(1);
        assertThat(gear.before()).extracting(Reading::words).containsExactly("eyes: Goggles.");
        assertThat(gear.after()).extracting(Reading::words).containsExactly("eyes: Face shield and goggles.");
        assertThat(changes.sectionsGone()).containsExactly(SheetSection.DISPOSAL);
        assertThat(changes.sectionsNew()).isEmpty();
        assertThat(SheetChanges.between(Revisions.first(), Revisions.first()).none())
                .isTrue();
    }
}
