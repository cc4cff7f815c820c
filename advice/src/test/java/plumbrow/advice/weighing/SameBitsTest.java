package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.course.Course;
import plumbrow.advice.outlook.Law;
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
        for (WeighedCourse course : one.courses()) {
            WeighedCourse again = other.course(course.name()).orElseThrow();
            assertThat(again.meanMarginUsdPerAcre()).isNotEqualTo(course.meanMarginUsdPerAcre());
            assertThat(Math.abs(again.meanMarginUsdPerAcre() - course.meanMarginUsdPerAcre()))
                    .isLessThan(4 * course.standardErrorUsdPerAcre());
        }
    }

    @Test
    @DisplayName("taking a course away changes no margin of the others")
    void commonDraws() {
        Season season = RandomField.of(new SplittableRandom(5)).season();
        List<Course> fewer = new ArrayList<>(season.courses());
        fewer.removeIf(course -> course.name().equals("single"));
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
                season.outlook(),
                season.ground(),
                season.work());
        FieldAdvice all = Adviser.adviseField(season, season.fields().get(0), OPTIONS);
        FieldAdvice some = Adviser.adviseField(without, without.fields().get(0), OPTIONS);
        for (WeighedCourse course : some.courses()) {
            assertThat(course.meanMarginUsdPerAcre())
                    .isEqualTo(all.course(course.name()).orElseThrow().meanMarginUsdPerAcre());
        }
    }

    @Test
    @DisplayName("a changed input takes the place of the season's and says so")
    void changed() {
        Season season = RandomField.of(new SplittableRandom(7)).season();
        FieldAdvice advice = Adviser.adviseField(
                season, season.fields().get(0), OPTIONS.withChanged(Map.of("price", new Law.Fixed(0))));
        assertThat(advice.courses())
                .allSatisfy(course -> assertThat(course.meanMarginUsdPerAcre()).isNegative());
        assertThat(advice.inputs().get(0).source()).isEqualTo("changed at the desk");
    }
}
