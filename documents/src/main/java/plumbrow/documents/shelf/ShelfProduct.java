package plumbrow.documents.shelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.documents.card.SheetAge;

/**
 * A product by its papers.
 *
 * @param name as the newest sheet gives it, else the newest label, else the file's name
 * @param registration empty where no paper has one
 * @param sheets newest first; those without a date last
 * @param labels likewise
 * @param others papers of unknown kind
 */
public record ShelfProduct(
        String name, String registration, List<FiledPaper> sheets, List<FiledPaper> labels, List<FiledPaper> others) {

    public ShelfProduct {
        sheets = List.copyOf(sheets);
        labels = List.copyOf(labels);
        others = List.copyOf(others);
    }

    /** The safety sheet that counts. */
    public Optional<FiledPaper> sheet() {
        return sheets.stream().findFirst();
    }

    /** The label that counts. */
    public Optional<FiledPaper> label() {
        return labels.stream().findFirst();
    }

    /** What is missing, old, or there more than once; a sentence's part each. */
    public List<String> remarks(LocalDate today) {
        List<String> remarks = new ArrayList<>();
        if (sheets.isEmpty()) {
            remarks.add("no safety sheet");
        }
        if (labels.isEmpty()) {
            remarks.add("no label");
        }
        sheet().ifPresent(newest -> {
            LocalDate dated = newest.dated();
            if (dated == null) {
                remarks.add("age of the sheet unknown");
            } else if (SheetAge.old(dated, today)) {
                remarks.add("sheet older than " + SheetAge.YEARS + " years");
            } else if (SheetAge.soonOld(dated, today)) {
                remarks.add("sheet is " + SheetAge.YEARS + " years old on " + dated.plusYears(SheetAge.YEARS)
                        + ": ask the seller for the current one");
            }
        });
        if (registration.isEmpty() && others.isEmpty()) {
            remarks.add("registration number unknown");
        }
        if (sheets.size() > 1) {
            remarks.add(sheets.size() + " safety sheets: the newest counts");
        }
        if (labels.size() > 1) {
            remarks.add(labels.size() + " labels: the newest counts");
        }
        if (!others.isEmpty()) {
            remarks.add("a page without text that needs typing");
        }
        return remarks;
    }
}
