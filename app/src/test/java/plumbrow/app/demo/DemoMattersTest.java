package plumbrow.app.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.check.Matter;
import plumbrow.advice.check.MatterKind;
import plumbrow.advice.check.ProgramCheck;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;

@DisplayName("The demo's findings, each in one line, the bar first")
class DemoMattersTest {
    private static final int MOST_LINES = 90;

    private static SeasonCheck check;

    @BeforeAll
    static void look() {
        check = SeasonCheck.of(DemoBook.season());
    }

    @Test
    void everyFindingThatIsNotClearStandsInOneLine() {
        IdentityHashMap<Finding, Integer> in = new IdentityHashMap<>();
        check.matters().forEach(matter -> matter.told().forEach(told -> in.merge(told.finding(), 1, Integer::sum)));
        Set<Finding> all = new HashSet<>();
        for (ProgramCheck program : check.programs()) {
            for (Finding finding : program.findings()) {
                if (finding.standing() == Standing.CLEAR) {
                    assertThat(in).doesNotContainKey(finding);
                } else {
                    assertThat(in).as(finding.toString()).containsEntry(finding, 1);
                    all.add(finding);
                }
            }
        }
        assertThat(all).hasSizeGreaterThan(100);
    }

    @Test
    void theSeasonIsToldInAtMostNinetyLines() {
        assertThat(check.matters()).hasSizeBetween(30, MOST_LINES);
    }

    @Test
    void theBarIsTheFirstLineWhereverThereIsOne() {
        List<ProgramCheck> barred = check.programs().stream()
                .filter(program -> program.standing() == Standing.BARRED)
                .toList();
        assertThat(barred).isNotEmpty();
        assertThat(barred)
                .allSatisfy(
                        program -> assertThat(program.matters().get(0).kind()).isEqualTo(MatterKind.BARRED));
        assertThat(check.matters()).extracting(Matter::kind).isSorted();
    }

    @Test
    void everyLineNamesItsSubject() {
        assertThat(check.matters().stream()
                        .filter(matter -> matter.told().stream().noneMatch(told -> named(matter, told)))
                        .map(Matter::line))
                .isEmpty();
    }

    private static boolean named(Matter matter, Matter.Told told) {
        String[] subject = told.finding().subject().split(", ", -1);
        String named = subject[0].startsWith("pass ") ? subject[1] : subject[0];
        Finding.Gap gap = told.finding().gap();
        return matter.line().contains(named)
                || matter.line().contains(told.field())
                || (gap != null && matter.line().startsWith(gap.ingredient()));
    }

    @Test
    void noProgramThatAsksNothingCountsAsClear() {
        assertThat(check.programs())
                .allSatisfy(program -> assertThat(program.standing() == Standing.CLEAR)
                        .isEqualTo(!program.findings().isEmpty()
                                && program.findings().stream()
                                        .allMatch(finding -> finding.standing() == Standing.CLEAR)));
    }
}
