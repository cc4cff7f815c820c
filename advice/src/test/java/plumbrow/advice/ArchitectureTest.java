package plumbrow.advice;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;
import java.time.LocalDate;

@AnalyzeClasses(packages = "plumbrow.advice", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule knowsOnlyScience = classes()
            .that()
            .doNotHaveFullyQualifiedName("plumbrow.advice.gates.GatePage") // reads its own text, gates/pages.txt
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "plumbrow.advice..",
                    "plumbrow.science..",
                    "java.lang..",
                    "java.util..",
                    "java.time..",
                    "java.math..",
                    "org.jspecify..",
                    "org.apache.commons.rng..",
                    "org.hipparchus..",
                    "org.locationtech.jts..",
                    "org.ojalgo..",
                    "javax.measure..",
                    "tech.units.indriya..",
                    "systems.uom.common..")
            .because("advice knows no file, database, screen or network: a season comes in, advice goes out");

    @ArchTest
    static final ArchRule noClock = noClasses()
            .should()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .because("the same season gives the same advice on any day");

    @ArchTest
    static final ArchRule unitsLibraryInOnePlace = noClasses()
            .that()
            .resideOutsideOfPackage("plumbrow.advice.quantity")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.measure..", "tech.units..", "systems.uom..")
            .because("amounts are converted in one place");

    @ArchTest
    static final ArchRule geometryLibraryInOnePlace = noClasses()
            .that()
            .resideOutsideOfPackage("plumbrow.advice.land")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.locationtech.jts..")
            .because("what lies where is worked out in one place");

    @ArchTest
    static final ArchRule solverInOnePlace = noClasses()
            .that()
            .resideOutsideOfPackage("plumbrow.advice.farmplan")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.ojalgo..")
            .because("programmes are solved in one place");

    @ArchTest
    static final ArchRule noCircles = slices().matching("plumbrow.advice.(*)..")
            .should()
            .beFreeOfCycles()
            .because("knowledge flows one way inside a room too");
}
