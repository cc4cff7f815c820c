package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.crew.Licence;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** Further licences of people who have more than one. */
public final class LicenceSheet {
    static final Column<String> PERSON = Column.of("person", TextKind.NAME, "whose it is", "S. Lind")
            .need()
            .from(PeopleSheet.SHEET, PeopleSheet.PERSON);
    static final Column<String> NUMBER = Column.of(
                    "licence", TextKind.NAME, "number of the applicator licence", "C-0001")
            .need();
    static final Column<String> STATE = Column.of("state", Words.STATE, "the state that gave it, postal code", "MN")
            .need();
    static final Column<LocalDate> UNTIL = Column.of(
                    "valid_until", new DateKind(), "last day the licence is valid", "2028-12-31")
            .blankMeans("unknown");
    public static final Sheet<Licence> SHEET = Sheet.<Licence>named(
                    "licences",
                    "Further licences of people who have more than the one on the sheet people, as for a second state: one "
                            + "row for each.",
                    season -> season.work().crew().licences())
            .optional()
            .column(PERSON, Licence::person)
            .column(NUMBER, Licence::number)
            .column(STATE, Licence::state)
            .column(UNTIL, Licence::validUntil)
            .column(PeopleSheet.KIND, Licence::kind)
            .column(PeopleSheet.COVERS, licence -> PeopleSheet.inOrder(licence.covers()))
            .once(PERSON, NUMBER, STATE)
            .build(row -> new Licence(
                    row.get(PERSON),
                    row.get(NUMBER),
                    row.get(STATE),
                    row.find(UNTIL),
                    row.find(PeopleSheet.KIND),
                    PeopleSheet.covers(row)));

    private LicenceSheet() {}
}
