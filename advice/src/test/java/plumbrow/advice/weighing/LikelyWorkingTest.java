package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.season.Season;
import plumbrow.science.Figures;
import plumbrow.science.figure.Step;

class LikelyWorkingTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    @DisplayName("the working ends in the margin that the kernel gives for the same inputs")
    void agreesWithKernel(long seed) {
        Season season = RandomField.of(generator(seed)).season();
        FieldModel model = FieldModels.of(season, season.fields().get(0), Map.of());
        double[] at = model.variables().stream()
                .mapToDouble(variable -> Chances.of(variable.distribution()).mean())
                .toArray();
        double[][] columns = new double[at.length][];
        for (int i = 0; i < at.length; i++) {
            columns[i] = new double[] {at[i]};
        }
        Kernel kernel = new Kernel(model);
        for (ProgramModel program : model.programs()) {
            double[] bushels = new double[1];
            double[] margin = new double[1];
            kernel.run(program, columns, bushels, margin);
            List<Step> steps = LikelyWorking.of(model, program, at);
            assertThat(steps.get(steps.size() - 1).value()).isCloseTo(margin[0], within(1e-9));
            assertThat(bushels[0]).isBetween(1.0, 300.0);
            assertThat(steps.stream().flatMap(step -> Stream.ofNullable(step.figure())))
                    .allSatisfy(id -> assertThat(Figures.find(id)).as(id).isPresent());
        }
    }

    private static RandomGenerator generator(long seed) {
        return new SplittableRandom(seed);
    }
}
