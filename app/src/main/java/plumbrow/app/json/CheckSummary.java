package plumbrow.app.json;

import java.util.List;
import plumbrow.advice.check.AcrossLine;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.GatePage;
import plumbrow.advice.gates.Protects;
import plumbrow.advice.gates.Standing;

/** What the gates say of programs, for programs: each program with its findings, worst first, and what to look up. */
public record CheckSummary(
        int season,
        String sentence,
        List<OfMatter> matters,
        List<OfProgram> programs,
        List<LookUp> lookUps,
        List<AcrossLine> acrossLines) {

    /**
     * One line of what stands in the way or is to be kept, in the order of telling.
     *
     * @param findings how many findings it is of
     * @param programs the programs they stand in, as "program on field"
     */
    public record OfMatter(String kind, String about, String line, int findings, List<String> programs) {
        public static OfMatter of(Matter matter) {
            return new OfMatter(
                    matter.kind().words(),
                    matter.about(),
                    matter.line(),
                    matter.told().size(),
                    matter.told().stream().map(Matter.Told::place).distinct().toList());
        }
    }

    /** One program and the standing that follows from its findings. */
    public record OfProgram(String field, String program, Standing standing, List<Finding> findings) {
        static OfProgram of(ProgramCheck check) {
            return new OfProgram(check.field().name(), check.program().name(), check.standing(), check.findings());
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
                check.matters().stream().map(OfMatter::of).toList(),
                check.programs().stream().map(OfProgram::of).toList(),
                check.lookUps(),
                check.acrossLines());
    }
}
