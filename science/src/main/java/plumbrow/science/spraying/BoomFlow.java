package plumbrow.science.spraying;

/**
 * Spray volume, nozzle flow and speed, each from the other two.
 *
 *   GPA = 5940·GPM/(MPH·W);  GPM = GPA·MPH·W/5940;  MPH = 5940·GPM/(GPA·W)
 *
 *   GPA  volume on the treated area [gal/ac];  GPM  flow of one nozzle [gal/min];  MPH  ground speed [mph]
 *   W    width one nozzle treats [in]: broadcast its spacing, band the band width, several nozzles to a row the row
 *        spacing over their number, boomless the swath
 *
 * 5940 = 43,560·12/88, exact. All more than 0.
 *
 * Source: UF/IFAS WG013, edis.ifas.ufl.edu/publication/wg013; Illinois 60 Ways no. 55.
 */
public final class BoomFlow {
    private static final double INCH_MPH_PER_ACRE_MINUTE = 5940;

    private BoomFlow() {}

    /** Spray volume [gal/ac]. */
    public static double gpa(double gpm, double mph, double widthInches) {
        return INCH_MPH_PER_ACRE_MINUTE * gpm / (mph * widthInches);
    }

    /** Flow of one nozzle [gal/min]. */
    public static double gpm(double gpa, double mph, double widthInches) {
        return gpa * mph * widthInches / INCH_MPH_PER_ACRE_MINUTE;
    }

    /** Ground speed [mph]. */
    public static double mph(double gpm, double gpa, double widthInches) {
        return INCH_MPH_PER_ACRE_MINUTE * gpm / (gpa * widthInches);
    }
}
