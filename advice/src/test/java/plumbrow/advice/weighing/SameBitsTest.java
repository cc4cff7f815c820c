package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;

class SameBitsTest {
    private static final WeighingOptions OPTIONS = new WeighingOptions(700, 42, 1, Map.of());

    @Test
    @DisplayName("one, two or five threads, and a second run, give equal advice")
    void threads() {
        Season season = RandomField.of(new SplittableRandom(3)).season();
        Advice once = Adviser.advise(season, OPTIONS, Progress.SILENT);
        assertThat(Adviser.advise(season, OPTIONS.withThreads(2), Progress.SILENT))
                .isEqualTo(once);
        assertThat(Adviser.advise(season, OPTIONS.withThreads(5), Progress.SILENT))
                .isEqualTo(once);
        assertThat(Adviser.advise(season, OPTIONS, Progress.SILENT)).isEqualTo(once);
        assertThat(Adviser.adviseField(season, season.fields().get(0), OPTIONS))
                .isEqualTo(once.fields().get(0));
    }

    @Test
    @DisplayName("another seed gives other draws and nearly the same mean")
    void seeds() {
        Season season = RandomField.of(new SplittableRandom(3)).season();
        FieldAdvice one = Adviser.adviseField(season, season.fields().get(0), OPTIONS);
        FieldAdvice other = Adviser.adviseField(season, season.fields().get(0), OPTIONS.withSeed(43));
        for (WeighedProgram program : one.programs()) {
            WeighedProgram again = other.program(program.name()).orElseThrow();
            assertThat(again.meanMarginUsdPerAcre()).isNotEqualTo(program.meanMarginUsdPerAcre());
            assertThat(Math.abs(again.meanMarginUsdPerAcre() - program.meanMarginUsdPerAcre()))
                    .isLessThan(4 * program.standardErrorUsdPerAcre());
        }
    }

    @Test
    @DisplayName("taking a program away changes no margin of the others")
    void commonDraws() {
        Season season = RandomField.of(new SplittableRandom(5)).season();
        List<Program> fewer = new ArrayList<>(season.programs());
        fewer.removeIf(program -> program.name().equals("single"));
        Season without = new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms(),
                season.fields(),
                season.history(),
                season.shelf(),
                season.pests(),
                fewer,
                season.assumptions(),
                season.ground(),
                season.work());
        FieldAdvice all = Adviser.adviseField(season, season.fields().get(0), OPTIONS);
        FieldAdvice some = Adviser.adviseField(without, without.fields().get(0), OPTIONS);
        for (WeighedProgram program : some.programs()) {
            assertThat(program.meanMarginUsdPerAcre())
                    .isEqualTo(all.program(program.name()).orElseThrow().meanMarginUsdPerAcre());
        }
    }

    @Test
    @DisplayName("a changed input takes the place of the season's and says so")
    void changed() {
        Season season = RandomField.of(new SplittableRandom(7)).season();
        FieldAdvice advice = Adviser.adviseField(
                season, season.fields().get(0), OPTIONS.withChanged(Map.of("price", new Distribution.Fixed(0))));
        assertThat(advice.programs())
                .allSatisfy(
                        program -> assertThat(program.meanMarginUsdPerAcre()).isNegative());
        assertThat(advice.inputs().get(0).source()).isEqualTo("changed at the desk");
    }
}
