package plumbrow.app.json;

import java.util.List;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.CourseCheck;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.GatePage;
import plumbrow.advice.gates.Protects;
import plumbrow.advice.gates.Standing;

/** What the gates say of courses, for programs: each course with its findings, worst first, and what to look up. */
public record CheckSummary(
        int season, String sentence, List<OfCourse> courses, List<LookUp> lookUps, List<AcrossLine> acrossLines) {

    /** One course and the standing that follows from its findings. */
    public record OfCourse(String field, String course, Standing standing, List<Finding> findings) {
        static OfCourse of(CourseCheck check) {
            return new OfCourse(check.field().name(), check.course().name(), check.standing(), check.findings());
        }
    }

    /** A gate and what it says of itself. */
    public record OfGate(
            String id,
            String question,
            Protects protects,
            List<String> rule,
            String source,
            String needs,
            List<String> examples) {
        public static OfGate of(GatePage page) {
            return new OfGate(
                    page.gate().id(),
                    page.gate().question(),
                    page.gate().protects(),
                    page.rule(),
                    page.source(),
                    page.needs(),
                    page.examples());
        }
    }

    public static CheckSummary of(SeasonCheck check) {
        return new CheckSummary(
                check.season().year(),
                check.sentence(),
                check.courses().stream().map(OfCourse::of).toList(),
                check.lookUps(),
                check.acrossLines());
    }
}
