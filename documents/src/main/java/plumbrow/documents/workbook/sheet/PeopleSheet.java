package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import plumbrow.advice.crew.Person;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;

/** Who applies, and with which licence. */
public final class PeopleSheet {
    public static final Column<String> PERSON = Column.of(
                    "person", TextKind.NAME, "name of who applies, used once", "S. Lind")
            .need();
    static final Column<String> LICENCE = Column.of(
                    "licence", TextKind.NAME, "number of the applicator licence", "C-0000")
            .blankMeans("none on file");
    static final Column<String> STATE = Column.of("state", Words.STATE, "the state that gave it, postal code", "IA")
            .blankMeans("unknown");
    static final Column<LocalDate> UNTIL = Column.of(
                    "valid_until", new DateKind(), "last day the licence is valid", "2028-12-31")
            .blankMeans("unknown");

    public static final Sheet<Person> SHEET = Sheet.<Person>named(
                    "people",
                    "One row for each person who applies.",
                    season -> season.work().crew().people())
            .optional()
            .column(PERSON, Person::name)
            .column(LICENCE, Person::licence)
            .column(STATE, Person::state)
            .column(UNTIL, Person::validUntil)
            .once(PERSON)
            .build(row -> new Person(row.get(PERSON), row.find(LICENCE), row.find(STATE), row.find(UNTIL)));

    private PeopleSheet() {}
}
