package plumbrow.app.desk.rows;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.app.rows.TableGroup;
import plumbrow.app.rows.TableNames;
import plumbrow.documents.workbook.Fault;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.RowName;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;

/**
 * A row with a box for each of its columns.
 *
 * @param season the season, null where the book holds none
 * @param sheet the table
 * @param number of the row as a spreadsheet counts; 0 for one that comes new
 * @param boxes one for each column
 * @param elsewhere what speaks against the change at other rows
 * @param whole what is wrong with the row as a whole
 * @param seen the row as it was when the page was made, as it travels with the form; empty for a new one
 * @param told what happened, such as that somebody else changed the row; empty for nothing
 * @param who who changes it
 * @param why why
 * @param back where to go when it is done; empty for the table
 */
public record RowView(
        @Nullable Season season,
        Sheet<?> sheet,
        int number,
        List<Box> boxes,
        List<Fault> elsewhere,
        List<Fault> whole,
        String seen,
        String told,
        String who,
        String why,
        String back,
        String name) {
    /** Tables up to this many columns show them all. */
    private static final int SHOWN = 8;

    static RowView of(
            @Nullable Season season,
            Sheet<?> sheet,
            int number,
            Map<String, String> row,
            @Nullable EditFaults faults,
            String seen,
            String told,
            String who,
            String why,
            String back) {
        List<Box> boxes = new ArrayList<>();
        List<Fault> whole = new ArrayList<>();
        List<Fault> elsewhere = new ArrayList<>();
        if (faults != null) {
            elsewhere.addAll(faults.elsewhere());
            for (EditFaults.Place place : faults.places()) {
                boolean known = sheet.columns().stream()
                        .anyMatch(column -> column.key().equals(place.fault().column()));
                if (place.change() == 0 && !known) {
                    whole.add(place.fault());
                } else if (place.change() > 0) {
                    elsewhere.add(place.fault());
                }
            }
        }
        for (int i = 0; i < sheet.columns().size(); i++) {
            Column<?> column = sheet.columns().get(i);
            List<String> words = faults == null
                    ? List.of()
                    : faults.at(0, column.key()).stream().map(Fault::words).toList();
            boolean folded = i >= SHOWN
                    && !column.required()
                    && words.isEmpty()
                    && List.of("", blank(column)).contains(row.getOrDefault(column.key(), ""));
            boxes.add(Box.of(season, sheet, column, row, words, folded));
        }
        return new RowView(
                season, sheet, number, boxes, elsewhere, whole, seen, told, who, why, back, RowName.known(sheet, row));
    }

    /** The text that says the same as a blank cell. */
    private static <T> String blank(Column<T> column) {
        T fallback = column.fallback();
        return fallback == null ? "" : column.kind().show(fallback).found();
    }

    /** What the table holds. */
    public String purpose() {
        return TableNames.words(sheet.purpose());
    }

    public TableGroup group() {
        return TableGroup.of(sheet);
    }

    public String table() {
        return TableNames.of(sheet);
    }

    public boolean isNew() {
        return number == 0;
    }

    public String address() {
        return "/season/" + sheet.name() + (isNew() ? "/new" : "/row/" + number);
    }

    public List<Box> shown() {
        return boxes.stream().filter(box -> !box.folded()).toList();
    }

    public List<Box> rare() {
        return boxes.stream().filter(Box::folded).toList();
    }

    public List<Box> faulty() {
        return boxes.stream().filter(Box::faulty).toList();
    }

    public boolean wrong() {
        return !faulty().isEmpty() || !elsewhere.isEmpty() || !whole.isEmpty();
    }

    /** The names of the folded boxes, for the line that opens them. */
    public String rareNames() {
        List<String> names = rare().stream().map(Box::label).toList();
        return names.size() <= 6
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, 5)) + " and " + (names.size() - 5) + " more";
    }
}
