package plumbrow.documents;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;
import java.time.LocalDate;

@AnalyzeClasses(packages = "plumbrow.documents", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule KNOWS_NEITHER_BOOK_NOR_DESK = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "plumbrow.app..",
                    "java.sql..",
                    "javax.sql..",
                    "java.net.http..",
                    "org.sqlite..",
                    "org.springframework..",
                    "jakarta..")
            .because("values become files and files values, wherever they are kept and whoever asks");

    @ArchTest
    static final ArchRule NO_CIRCLES = slices().matching("plumbrow.documents.(**)")
            .should()
            .beFreeOfCycles()
            .because("what a paper says, how it is read and who calls the reading lie one above the other");

    @ArchTest
    static final ArchRule NO_CLOCK = noClasses()
            .should()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(Instant.class, "now")
            .because("the same values make the same file on any day");

    @ArchTest
    static final ArchRule PAGES_ARE_TAKEN_APART_IN_ONE_PLACE = noClasses()
            .that()
            .resideOutsideOfPackages("plumbrow.documents.paper..", "plumbrow.documents.binder..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..")
            .because("readers of sheets and labels see rows of text; the binder alone writes pages");

    @ArchTest
    static final ArchRule SPREADSHEETS_ARE_OPENED_IN_ONE_PLACE = noClasses()
            .that()
            .resideOutsideOfPackages("plumbrow.documents.workbook.file..", "plumbrow.documents.binder..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.poi..", "org.dhatim..")
            .because("a sheet's declaration knows cells, not file formats");

    @ArchTest
    static final ArchRule VALUES_OF_A_PAPER_KNOW_NO_READER = noClasses()
            .that()
            .resideInAnyPackage("plumbrow.documents.sheet", "plumbrow.documents.label")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "plumbrow.documents.sheet.part..",
                    "plumbrow.documents.sheet.section..",
                    "plumbrow.documents.label.part..",
                    "plumbrow.documents.label.text..",
                    "plumbrow.documents.reading..")
            .because("card, shelf and confirmation take what a paper says, however it was read");
}
