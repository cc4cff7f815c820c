package plumbrow.documents.binder;

import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedCourse;

/** What a course is on its field: advised or about equal to it, the baseline, both, or neither. */
final class Role {
    private Role() {}

    static String of(FieldAdvice field, WeighedCourse course) {
        List<String> roles = new ArrayList<>();
        if (course.name().equals(field.advised())) {
            roles.add("advised");
        } else if (field.leading().contains(course.name())) {
            roles.add("about equal");
        }
        if (course.baseline()) {
            roles.add("the baseline");
        }
        return String.join(", ", roles);
    }
}
