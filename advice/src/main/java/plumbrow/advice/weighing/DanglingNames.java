package plumbrow.advice.weighing;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plumbrow.advice.field.Field;
import plumbrow.advice.names.UnknownName;
import plumbrow.advice.names.UnknownNames;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

/**
 * What a season says under names that refer to nothing. A workbook with such a name is refused; a book of before that rule
 * still opens, and then each field on which it would matter says so.
 */
final class DanglingNames {
    private final List<UnknownName> names;

    DanglingNames(Season season) {
        this.names = UnknownNames.of(season);
    }

    /** One sentence for each row that would matter on a field and counts as nothing. */
    List<String> cautions(List<Program> programs, Field field) {
        if (names.isEmpty()) {
            return List.of();
        }
        Set<String> used = programs.stream()
                .flatMap(program -> program.passes().stream())
                .map(pass -> String.valueOf(pass.product()))
                .collect(Collectors.toSet());
        return names.stream()
                .filter(name -> concerns(name, field, used))
                .map(name -> "A row COUNTS AS NOTHING until its name is put right. " + name.sentence())
                .toList();
    }

    private static boolean concerns(UnknownName name, Field field, Set<String> products) {
        return (name.field().isEmpty() && name.product().isEmpty())
                || name.field().equals(field.name())
                || products.contains(name.product());
    }
}
