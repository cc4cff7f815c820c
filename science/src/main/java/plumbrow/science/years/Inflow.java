package plumbrow.science.years;

/**
 * What comes into a field from outside each year; how resistant it is, each gene says.
 *
 * @param pollenShare share of the pollen [-]
 * @param seedsM2 seed [1/m²]
 */
public record Inflow(double pollenShare, double seedsM2) {
    public static final Inflow NONE = new Inflow(0, 0);

    public Inflow {
        if (!(pollenShare >= 0 && pollenShare <= 1) || !(seedsM2 >= 0)) {
            throw new IllegalArgumentException("inflow is " + pollenShare + " of the pollen and " + seedsM2
                    + " seeds/m²; expected a share and 0 or more");
        }
    }
}
