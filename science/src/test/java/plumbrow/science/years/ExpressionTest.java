package plumbrow.science.years;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("How much of its resistance a plant shows, by dose")
class ExpressionTest {
    @Test
    @DisplayName("It is the distance between two log-logistic curves: slope 2.5, ED50 ten times as high")
    void twoCurves() {
        double fold = Math.pow(10, 2.5);
        for (double rate : new double[] {100, 420, 840, 3000, 20_000}) {
            double susceptible = 1 / (1 + Math.pow(209.131 / rate, 2.5));
            double resistant = 1 / (1 + Math.pow(2091.31 / rate, 2.5));
            double e = Expression.at(susceptible, fold);
            assertThat(1 - susceptible + e * susceptible).isCloseTo(1 - resistant, within(1e-12));
        }
    }

    @Test
    @DisplayName("The higher the dose, the less one copy helps; half the rate makes it nearly dominant")
    void byDose() {
        double fold = 100;
        double before = 1;
        for (double control = 0; control < 1; control += .05) {
            assertThat(Expression.at(control, fold)).isLessThan(before).isPositive();
            before = Expression.at(control, fold);
        }
        assertThat(Expression.at(1, fold)).isZero();
        assertThat(Expression.at(.85, fold)).isGreaterThan(.9);
        assertThat(Expression.at(.999, fold)).isLessThan(.1);
    }

    @Test
    @DisplayName("Limits: a fold of 1 shows nothing, an endless one everything; the inverse finds its way back")
    void limits() {
        assertThat(Expression.at(.9, 1)).isZero();
        assertThat(Expression.at(.9, Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(Expression.at(.95, Expression.fold(.95, .4))).isCloseTo(.4, within(1e-12));
        assertThat(Expression.fold(.95, 1)).isEqualTo(Double.POSITIVE_INFINITY);
    }
}
