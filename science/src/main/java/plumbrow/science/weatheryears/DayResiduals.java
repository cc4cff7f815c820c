package plumbrow.science.weatheryears;

/**
 * How a day's highest and lowest temperature depart from usual, in standard deviations, from one day to the next.
 *
 *   χ(t) = A·χ(t−1) + B·ε(t);  χ = (highest, lowest);  ε independent standard normal
 *   A = M1·M0⁻¹;  B·Bᵀ = M0 − A·M1ᵀ      M0 same-day, M1 next-day correlations
 *
 * Source: form Richardson 1981; Matalas 1967 (value from memory).
 */
final class DayResiduals {
    /** The published matrices of the whole USA, without radiation (M0, M1 of Richardson &amp; Wright 1984, value from memory). */
    static final DayResiduals USA = new DayResiduals(
            new double[][] {{.5662, .0866}, {.2275, .5300}}, new double[][] {{.7809, 0}, {.3276, .6382}});

    /** Those of Champaign, Illinois, 1995 to 2023, our estimate. */
    static final DayResiduals CHAMPAIGN =
            new DayResiduals(new double[][] {{.576, .119}, {.376, .421}}, new double[][] {{.741, 0}, {.383, .539}});

    private static final int LONG = 400;

    private final double[][] a;
    private final double[][] b;

    private DayResiduals(double[][] a, double[][] b) {
        this.a = a;
        this.b = b;
    }

    /** The next day's, put in the place of today's. */
    void step(double[] chi, double first, double second) {
        double high = a[0][0] * chi[0] + a[0][1] * chi[1] + b[0][0] * first + b[0][1] * second;
        double low = a[1][0] * chi[0] + a[1][1] * chi[1] + b[1][0] * first + b[1][1] * second;
        chi[0] = high;
        chi[1] = low;
    }

    /** Covariance of the day, in the long run. */
    double[][] sameDay() {
        double[][] noise = times(b, turned(b));
        double[][] sum = new double[2][2];
        for (int i = 0; i < LONG; i++) {
            sum = plus(times(times(a, sum), turned(a)), noise);
        }
        return sum;
    }

    /**
     * Standard deviation between years of the mean over so many days of w₁·χ₁ + w₂·χ₂.
     *
     *   Var = (1/n²)·[n·wᵀM0w + 2·Σ_k (n − k)·wᵀAᵏM0w]
     */
    double sdOfMean(int days, double high, double low) {
        double[][] covariance = sameDay();
        double sum = days * quadratic(covariance, high, low);
        double[][] later = covariance;
        for (int k = 1; k < days; k++) {
            later = times(a, later);
            sum += 2 * (days - k) * quadratic(later, high, low);
        }
        return Math.sqrt(sum) / days;
    }

    private static double quadratic(double[][] m, double x, double y) {
        return x * x * m[0][0] + x * y * (m[0][1] + m[1][0]) + y * y * m[1][1];
    }

    private static double[][] times(double[][] x, double[][] y) {
        double[][] product = new double[2][2];
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                product[i][j] = x[i][0] * y[0][j] + x[i][1] * y[1][j];
            }
        }
        return product;
    }

    private static double[][] plus(double[][] x, double[][] y) {
        return new double[][] {
            {x[0][0] + y[0][0], x[0][1] + y[0][1]}, {x[1][0] + y[1][0], x[1][1] + y[1][1]},
        };
    }

    private static double[][] turned(double[][] x) {
        return new double[][] {{x[0][0], x[1][0]}, {x[0][1], x[1][1]}};
    }
}
