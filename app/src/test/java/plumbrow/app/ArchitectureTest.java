package plumbrow.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "plumbrow.app", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule NO_CIRCLES = slices().matching("plumbrow.app.(**)")
            .should()
            .beFreeOfCycles()
            .because("pages know the desk's book, and only the one who opens the desk knows all pages");

    @ArchTest
    static final ArchRule THE_BOOK_IS_ASKED_IN_ONE_PLACE = noClasses()
            .that()
            .resideOutsideOfPackage("plumbrow.app.book..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.sql..",
                    "javax.sql..",
                    "org.sqlite..",
                    "org.springframework.jdbc..",
                    "org.springframework.transaction..",
                    "org.flywaydb..")
            .because("pages and commands ask for a season, never for a row of a database");

    @ArchTest
    static final ArchRule THE_BOOK_KNOWS_NOBODY_WHO_ASKS = noClasses()
            .that()
            .resideInAnyPackage("plumbrow.app.book..", "plumbrow.app.rows..", "plumbrow.app.papers..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "plumbrow.app.desk..",
                    "plumbrow.app.command..",
                    "plumbrow.app.serving..",
                    "org.springframework.web..",
                    "jakarta.servlet..",
                    "picocli..")
            .because("screen and command line keep a change by the same code");

    @ArchTest
    static final ArchRule SCREEN_AND_COMMAND_LINE_STAND_SIDE_BY_SIDE = noClasses()
            .that()
            .resideInAPackage("plumbrow.app.desk..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("plumbrow.app.command..", "plumbrow.app.serving..", "picocli..")
            .because("a page takes its words from what both share, never from the terminal's");

    @ArchTest
    static final ArchRule COMMANDS_KNOW_NO_PAGE = noClasses()
            .that()
            .resideInAPackage("plumbrow.app.command..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("plumbrow.app.desk..", "org.springframework.web..", "jakarta.servlet..", "gg.jte..")
            .because("what both say stands below them");
}
