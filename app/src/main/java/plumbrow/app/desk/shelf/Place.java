package plumbrow.app.desk.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.app.papers.ReadPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Reading;

/**
 * Something read on a paper, and where.
 *
 * @param at its place in the list, by which a link names it
 * @param title what of
 * @param says in a person's words
 * @param sure whether it can be read in one way only
 * @param quote the very words; null where it stands nowhere
 */
record Place(
        int at,
        String title,
        String says,
        boolean sure,
        @Nullable Quote quote) {

    /** Everything read on a paper, in order, and what a sheet states once and this one doesn't. */
    static List<Place> all(ReadPaper paper) {
        List<Place> places = new ArrayList<>();
        if (paper instanceof ReadPaper.Sheet sheet) {
            for (Reading.OnPaper reading : sheet.sheet().readings()) {
                places.add(new Place(
                        places.size(),
                        reading.kind().title(),
                        reading.words(),
                        reading instanceof Reading.Stated,
                        reading.quote()));
            }
            sheet.sheet().account().stream()
                    .filter(reading -> reading instanceof Reading.NotStated)
                    .forEach(reading -> places.add(new Place(
                            places.size(),
                            reading.kind().title(),
                            "unknown; look up: section " + reading.kind().home().number()
                                    + " of the sheet, where none was found",
                            false,
                            null)));
        } else if (paper instanceof ReadPaper.Label label) {
            for (LabelReading.OnPaper reading : label.label().readings()) {
                places.add(new Place(
                        places.size(),
                        reading.kind().title(),
                        reading.words(),
                        reading instanceof LabelReading.Stated,
                        reading.quote()));
            }
        }
        return places;
    }

    /** The place of these words, where they were read. */
    static Optional<Place> of(ReadPaper paper, Quote quote) {
        return all(paper).stream().filter(place -> quote.equals(place.quote)).findFirst();
    }
}
