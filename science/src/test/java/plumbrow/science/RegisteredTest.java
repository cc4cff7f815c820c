package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.Figure;

@DisplayName("A figure that is declared is a figure that can be called")
class RegisteredTest {

    @Test
    void everyDeclaredFigureIsInTheList() throws IllegalAccessException {
        Set<String> declared = new HashSet<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("plumbrow.science")) {
            for (JavaField field : type.getFields()) {
                if (field.getRawType().isEquivalentTo(Figure.class)
                        && field.getModifiers().contains(JavaModifier.STATIC)) {
                    Field found = field.reflect();
                    found.setAccessible(true);
                    declared.add(((Figure) found.get(null)).id());
                }
            }
        }
        assertThat(declared).hasSizeGreaterThan(200);
        assertThat(declared)
                .allSatisfy(id -> assertThat(Figures.find(id)).as(id).isPresent());
    }
}
