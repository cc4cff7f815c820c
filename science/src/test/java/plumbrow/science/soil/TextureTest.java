package plumbrow.science.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.FigureInputException;

@DisplayName(
        "The twelve textures, against the rules as the USDA soil texture calculator writes them (scribd.com/doc/137575023)")
class TextureTest {

    @Test
    @DisplayName("On a grid of half percents each soil meets exactly one rule, and is called by it")
    void everySoil() {
        for (int sand = 0; sand <= 200; sand++) {
            for (int clay = 0; sand + clay <= 200; clay++) {
                assertThat(byTheRules(sand / 2.0, clay / 2.0))
                        .as("sand %s clay %s", sand / 2.0, clay / 2.0)
                        .containsExactly(TextureClass.of(sand / 2.0, clay / 2.0));
            }
        }
    }

    @Test
    @DisplayName("More than 100 % together is refused")
    void tooMuch() {
        assertThatThrownBy(() -> TextureClass.FIGURE.answer(Map.of("sand_pct", "70", "clay_pct", "40")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("at most 30 %");
    }

    private static List<String> byTheRules(double sand, double clay) {
        double silt = 100 - sand - clay;
        List<String> met = new ArrayList<>();
        add(met, "sand", silt + 1.5 * clay < 15);
        add(met, "loamy sand", silt + 1.5 * clay >= 15 && silt + 2 * clay < 30);
        add(
                met,
                "sandy loam",
                (clay >= 7 && clay < 20 && sand > 52 && silt + 2 * clay >= 30)
                        || (clay < 7 && silt < 50 && silt + 2 * clay >= 30));
        add(met, "loam", clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52);
        add(met, "silt loam", (silt >= 50 && clay >= 12 && clay < 27) || (silt >= 50 && silt < 80 && clay < 12));
        add(met, "silt", silt >= 80 && clay < 12);
        add(met, "sandy clay loam", clay >= 20 && clay < 35 && silt < 28 && sand > 45);
        add(met, "clay loam", clay >= 27 && clay < 40 && sand > 20 && sand <= 45);
        add(met, "silty clay loam", clay >= 27 && clay < 40 && sand <= 20);
        add(met, "sandy clay", clay >= 35 && sand > 45);
        add(met, "silty clay", clay >= 40 && silt >= 40);
        add(met, "clay", clay >= 40 && sand <= 45 && silt < 40);
        return met;
    }

    private static void add(List<String> met, String name, boolean rule) {
        if (rule) {
            met.add(name);
        }
    }
}
