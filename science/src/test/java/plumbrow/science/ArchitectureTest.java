package plumbrow.science;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "plumbrow.science", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule KNOWS_ONLY_NUMBERS = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "plumbrow.science..",
                    "org.jspecify..",
                    "org.apache.commons.statistics..",
                    "org.apache.commons.numbers..",
                    "org.apache.commons.rng..",
                    "org.hipparchus..",
                    "net.sf.geographiclib..",
                    "de.siegmar.fastcsv..")
            .because(
                    "science knows no field, product or file, and can be read and tested alone; libraries are of numbers"
                            + " only, and the area of a polygon on the ellipsoid is one; the CSV reader is for the reference data");

    @ArchTest
    static final ArchRule PACKAGES_ARE_SUBJECTS = noClasses()
            .should()
            .resideInAnyPackage(
                    "..util..", "..common..", "..helper..", "..impl..", "..dto..", "..service..", "..manager..")
            .because("a package is a subject of the trade, never a technical kind");

    @ArchTest
    static final ArchRule TEXT_IS_READ_IN_ONE_PLACE = noClasses()
            .that()
            .resideOutsideOfPackage("plumbrow.science.reference")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("de.siegmar.fastcsv..")
            .because("models take numbers; only the reference data come as text");

    @ArchTest
    static final ArchRule NO_FILE_NO_NETWORK_NO_CLOCK = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("plumbrow.science.reference.Packed")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio.file..", "java.net..", "java.sql..")
            .because("a model is a pure function; the one door is to the reference data packed beside their readers");

    @ArchTest
    static final ArchRule CHANCE_KNOWS_NO_FIGURE = noClasses()
            .that()
            .resideInAPackage("plumbrow.science.chance..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("plumbrow.science.figure..")
            .because("distributions are called ten thousand times per assumptions and need no page of their own");
}
