package plumbrow.documents.binder;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;

/** What a program is on its field: advised or about equal to it, the baseline, both, or neither. */
final class Role {
    private Role() {}

    static String of(FieldAdvice field, WeighedProgram program) {
        List<String> roles = new ArrayList<>();
        if (program.name().equals(field.advised())) {
            roles.add("advised");
        } else if (field.leading().contains(program.name())) {
            roles.add("about equal");
        }
        if (program.baseline()) {
            roles.add("the baseline");
        }
        return String.join(", ", roles);
    }
}
