package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How many times slower than water an active ingredient moves down through soil.
 *
 *   RF = 1 + BD·OC·Koc/FC + AC·H'/FC
 *
 *   BD  bulk density [g/cm³];  OC  organic carbon, share of the mass (organic matter / 1.72);  Koc  [mL/g]
 *   FC  water at field capacity, share of the volume, > 0;  AC  air-filled share at field capacity;  H'  Henry constant [-]
 *
 * Source: Rao, Hornsby & Jessup 1985, Soil Crop Sci. Soc. Fla. Proc. 44:1 (value from memory); the form
 * R = 1 + ρb·kd/θ with kd = foc·Koc is that of epa.gov/athens/learn2model (verified).
 */
public final class Retardation {
    public static final Figure FIGURE = Figure.declare("retardation", Subject.FATE)
            .question("How many times slower than water does the active ingredient move down?")
            .input(number("koc_ml_g", "Sorption to organic carbon, Koc", "mL/g", Range.NOT_NEGATIVE, "100"))
            .input(number(
                    "organic_carbon",
                    "Organic carbon, share of the mass: organic matter ÷ 1.72",
                    "",
                    Range.SHARE,
                    "0.01"))
            .input(number("bulk_density_g_cm3", "Bulk density", "g/cm³", Range.above(0, 3), "1.5"))
            .input(Asked.FIELD_CAPACITY)
            .input(number("air_porosity", "Air at field capacity, share of the volume", "", Range.SHARE, "0.20")
                    .orElse("0"))
            .input(number("henry", "Henry constant, dimensionless", "", Range.NOT_NEGATIVE, "1e-7")
                    .orElse("0"))
            .output("factor", "Retardation factor", "")
            .formula("factor = 1 + (bulk density × organic carbon × Koc + air × Henry constant) ÷ field capacity")
            .source("[rao-1985]; form: [epa-learn2model]", MEMORY)
            .validity("Field capacity more than 0; water and air together not above 1. Even flow, no cracks.")
            .caution(Asked.SCREEN)
            .example(
                    "koc_ml_g=16 organic_carbon=.01 bulk_density_g_cm3=1.5 field_capacity=.25",
                    "factor=1.96",
                    "picloram",
                    COMPUTED)
            .example(
                    "koc_ml_g=100 organic_carbon=.01 bulk_density_g_cm3=1.5 field_capacity=.25 air_porosity=.2 henry=1e-7",
                    "factor=7.00000",
                    "atrazine",
                    COMPUTED)
            .example(
                    "koc_ml_g=200 organic_carbon=.01 bulk_density_g_cm3=1.5 field_capacity=.25 air_porosity=.2 henry=9e-7",
                    "factor=13.0000",
                    "metolachlor",
                    COMPUTED)
            .example(
                    "koc_ml_g=8000 organic_carbon=.01 bulk_density_g_cm3=1.5 field_capacity=.25 air_porosity=.2 henry=6.6e-3",
                    "factor=481.005",
                    "trifluralin",
                    COMPUTED)
            .model(Retardation::solve);

    private Retardation() {}

    /** Retardation factor, 1 for what moves with the water. */
    public static double factor(
            double kocMlPerGram,
            double organicCarbon,
            double bulkDensityGramsPerCm3,
            double fieldCapacity,
            double airPorosity,
            double henry) {
        return 1
                + bulkDensityGramsPerCm3 * organicCarbon * kocMlPerGram / fieldCapacity
                + airPorosity * henry / fieldCapacity;
    }

    private static Outputs solve(Given given, Working working) {
        double koc = given.number("koc_ml_g");
        double carbon = given.number("organic_carbon");
        double density = given.number("bulk_density_g_cm3");
        double water = given.number("field_capacity");
        double air = given.number("air_porosity");
        double henry = given.number("henry");
        if (water + air > 1) {
            throw given.refuse("air_porosity", "at most 1 less the field_capacity (" + Numbers.plain(1 - water) + ")");
        }
        return new Outputs()
                .put(
                        "factor",
                        working.line(
                                "retardation factor",
                                factor(koc, carbon, density, water, air, henry),
                                "",
                                "1 + {} × {} × {} ÷ {} + {} × {} ÷ {}",
                                density,
                                carbon,
                                koc,
                                water,
                                air,
                                henry,
                                water));
    }
}
