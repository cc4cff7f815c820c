package plumbrow.app.json;

import java.util.List;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;

/** What the gates say of one course, worst first, and the standing that follows from it. */
public record CourseFindings(String field, String course, Standing standing, List<Finding> findings) {
    public CourseFindings {
        findings = List.copyOf(findings);
    }
}
