package plumbrow.documents.workbook.rule;

import java.time.LocalDate;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Tables;
import plumbrow.documents.workbook.sheet.CareSheet;
import plumbrow.documents.workbook.sheet.HistorySheet;
import plumbrow.documents.workbook.sheet.InsectSheet;
import plumbrow.documents.workbook.sheet.LogSheet;
import plumbrow.documents.workbook.sheet.NextCropSheet;
import plumbrow.documents.workbook.sheet.PassSheet;
import plumbrow.documents.workbook.sheet.SeasonSheet;
import plumbrow.documents.workbook.sheet.ShelfSheet;

/**
 * Dates fit the season. Passes lie between July before the harvest year, when stubble is worked for autumn seeding, and the
 * end of the harvest year; the log reaches back five years; what follows is planted from the harvest year on; nothing was scouted
 * or read after the day of the assumptions.
 */
final class Dates implements Rule {
    private static final int YEARS_BACK = 5;

    @Override
    public void check(Tables tables, Objections objections) {
        for (Row season : tables.rows(SeasonSheet.SHEET)) {
            Integer year = season.find(SeasonSheet.YEAR);
            LocalDate asOf = season.find(SeasonSheet.AS_OF);
            if (year != null) {
                LocalDate last = LocalDate.of(year, 12, 31);
                within(season, SeasonSheet.AS_OF, LocalDate.of(year - 1, 1, 1), last, year, objections);
                LocalDate stubble = LocalDate.of(year - 1, 7, 1);
                for (Row pass : tables.rows(PassSheet.SHEET)) {
                    within(pass, PassSheet.DATE, stubble, last, year, objections);
                }
                logged(tables, year, last, objections);
                followers(tables, year, objections);
                earlierYears(tables, year, objections);
            }
            if (asOf != null) {
                notAfter(tables, InsectSheet.SHEET, InsectSheet.SCOUTED, asOf, objections);
                notAfter(tables, ShelfSheet.SHEET, ShelfSheet.LABEL_DATE, asOf, objections);
                notAfter(tables, CareSheet.SHEET, CareSheet.CONFIRMED, asOf, objections);
            }
        }
    }

    private static void logged(Tables tables, int year, LocalDate last, Objections objections) {
        LocalDate first = LocalDate.of(year - YEARS_BACK, 1, 1);
        for (Row line : tables.rows(LogSheet.SHEET)) {
            LocalDate date = line.find(LogSheet.DATE);
            if (date != null && (date.isBefore(first) || date.isAfter(last))) {
                objections.at(line, LogSheet.DATE, "a day between " + first + " and " + last);
            }
        }
    }

    private static void within(
            Row row, Column<LocalDate> column, LocalDate first, LocalDate last, int year, Objections objections) {
        LocalDate date = row.find(column);
        if (date != null && (date.isBefore(first) || date.isAfter(last))) {
            objections.at(row, column, "a day of the season of " + year + ", between " + first + " and " + last);
        }
    }

    private static void followers(Tables tables, int year, Objections objections) {
        LocalDate first = LocalDate.of(year, 1, 1);
        LocalDate last = LocalDate.of(year + 2, 12, 31);
        for (Row row : tables.rows(NextCropSheet.SHEET)) {
            LocalDate planted = row.find(NextCropSheet.PLANTED);
            if (planted != null && (planted.isBefore(first) || planted.isAfter(last))) {
                objections.at(row, NextCropSheet.PLANTED, "a day between " + first + " and " + last);
            }
        }
    }

    private static void notAfter(
            Tables tables, Sheet<?> sheet, Column<LocalDate> column, LocalDate asOf, Objections objections) {
        for (Row row : tables.rows(sheet)) {
            LocalDate date = row.find(column);
            if (date != null && date.isAfter(asOf)) {
                objections.at(row, column, "a day not after " + asOf + ", the day of the assumptions");
            }
        }
    }

    private static void earlierYears(Tables tables, int year, Objections objections) {
        for (Row row : tables.rows(HistorySheet.SHEET)) {
            Integer before = row.find(HistorySheet.YEAR);
            if (before != null && before >= year) {
                objections.at(row, HistorySheet.YEAR, "a year before " + year + ", the year of this season");
            }
        }
    }
}
