package plumbrow.app.desk.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.desk.shown.Part;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.rows.ChangeWords;
import plumbrow.app.rows.TableGroup;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.form.Sheet;

/**
 * Every table of the season by where a person looks for it, with the number of its rows, and what was changed last.
 *
 * @param find part of the name of a field, farm or grower that is looked for; empty for all
 * @param fields the fields that are listed
 */
public record SeasonView(Season season, String find, Part<Field> fields, List<Group> groups, List<ChangeWords> latest) {
    private static final int MOST_CHANGES = 5;

    public record Group(String title, List<Table> tables) {}

    public record Table(Sheet<?> sheet, int rows) {}

    static SeasonView of(Season season, List<SeasonChange> changes, String find, int page) {
        SeasonTables tables = SeasonTables.of(season);
        List<Group> groups = Arrays.stream(TableGroup.values())
                .map(group -> new Group(
                        group.title(),
                        group.tables().stream()
                                .map((Sheet<?> sheet) -> new Table(sheet, tables.size(sheet)))
                                .toList()))
                .filter(group -> !group.tables().isEmpty())
                .toList();
        List<SeasonChange> latestFirst = new ArrayList<>(changes);
        Collections.reverse(latestFirst);
        return new SeasonView(
                season,
                find,
                Part.of(Part.found(season, find), page),
                groups,
                latestFirst.stream().limit(MOST_CHANGES).map(ChangeWords::of).toList());
    }

    /** The address of another page of the list of fields. */
    public String address(int page) {
        return "/season?" + (find.isBlank() ? "" : "find=" + Shown.part(find) + "&") + "page=" + page;
    }
}
