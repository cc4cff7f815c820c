package plumbrow.documents.workbook.sheet;

import plumbrow.advice.weeds.LikeWeed;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;
import plumbrow.science.weedseason.KnownWeeds;
import plumbrow.science.weedseason.Species;

/** Weeds for which the numbers of another stand in. */
public final class LikeWeedSheet {
    public static final Column<String> WEED = Column.of(
                    "weed", TextKind.NAME, "a weed, spelled as in the weeds sheet", "Palmer amaranth")
            .need();
    static final Column<String> AS = Column.of(
                    "as",
                    WordKind.of(KnownWeeds.all().stream().map(Species::name).toList()),
                    "the weed that comes up and grows like it",
                    "waterhemp")
            .need();
    static final Column<String> SOURCE = Words.source();

    public static final Sheet<LikeWeed> SHEET = Sheet.<LikeWeed>named(
                    "like_weeds",
                    "Weeds without numbers of their own for the season, and the weed whose numbers stand in. They are widened and"
                            + " shown as borrowed.",
                    season -> season.pests().weedBook().likes())
            .optional()
            .column(WEED, LikeWeed::weed)
            .column(AS, LikeWeed::as)
            .column(SOURCE, LikeWeed::source)
            .once(WEED)
            .build(row -> new LikeWeed(row.get(WEED), row.get(AS), row.get(SOURCE)));

    private LikeWeedSheet() {}
}
