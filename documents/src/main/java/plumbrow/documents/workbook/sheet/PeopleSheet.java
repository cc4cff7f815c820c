package plumbrow.documents.workbook.sheet;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Licence;
import plumbrow.advice.crew.LicenceKind;
import plumbrow.advice.crew.Person;
import plumbrow.advice.shelf.Ask;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WordKind;

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

    static final Column<LicenceKind> KIND = Column.of(
                    "licence_kind",
                    WordKind.of(LicenceKind.class, LicenceKind::word),
                    "for whom it lets apply, as the licence says",
                    "private")
            .blankMeans("unknown");
    static final Column<List<Licence.Cover>> COVERS = Column.of(
                    "covers",
                    new ListKind<>(
                            WordKind.of(Licence.Cover.class, Licence.Cover::word),
                            "what its categories cover, parted by semicolons, such as field crops; aerial"),
                    "what its categories cover, in these words; none where none of them",
                    "field crops")
            .blankMeans("unknown");
    static final Column<Ask> FOR_HIRE = Words.ask(
            "for_hire", "whether this person sprays for pay on ground that is neither his own nor his employer's");

    public static final Sheet<Person> SHEET = Sheet.<Person>named(
                    "people",
                    "One row for each person who applies, with the first licence; further ones stand on the sheet licences.",
                    season -> season.work().crew().people())
            .optional()
            .column(PERSON, Person::name)
            .column(LICENCE, Person::licence)
            .column(STATE, Person::state)
            .column(UNTIL, Person::validUntil)
            .column(KIND, Person::kind)
            .column(COVERS, person -> inOrder(person.covers()))
            .column(FOR_HIRE, Person::forHire)
            .once(PERSON)
            .build(row -> new Person(
                    row.get(PERSON),
                    row.find(LICENCE),
                    row.find(STATE),
                    row.find(UNTIL),
                    row.find(KIND),
                    covers(row),
                    row.get(FOR_HIRE)));

    private PeopleSheet() {}

    static @Nullable List<Licence.Cover> inOrder(@Nullable Set<Licence.Cover> covers) {
        return covers == null ? null : covers.stream().sorted().toList();
    }

    static @Nullable Set<Licence.Cover> covers(Row row) {
        List<Licence.Cover> covers = row.find(COVERS);
        return covers == null ? null : covers.isEmpty() ? Set.of() : EnumSet.copyOf(covers);
    }
}
