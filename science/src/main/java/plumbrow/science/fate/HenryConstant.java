package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How an active ingredient divides between air and water.
 *
 *   H = VP·MW/S;  H' = H/(R·298.15)
 *
 *   VP  vapour pressure [Pa];  MW  molecular weight [g/mol];  S  solubility [mg/L], at the same temperature; all > 0
 *   R   8.314462618 J/(mol K)
 *
 * Above H' of about 2.65e-5 the soil limits the loss from moist ground, and depth helps; below it the compound can
 * collect at a drying surface and evaporation drives the loss (Jury, Farmer & Spencer 1984, value from memory).
 *
 * Source: Illinois Administrative Code 8 §259 Appendix E, ilga.gov.
 */
public final class HenryConstant {
    /** Gas constant [J/(mol K)]. */
    static final double GAS_CONSTANT = 8.314462618;

    private static final double KELVIN_AT_25_C = 298.15;
    private static final double SOIL_LIMITS_ABOVE = 2.65e-5;

    public static final Figure FIGURE = Figure.declare("henry", Subject.FATE)
            .question("How does the active ingredient divide between air and water?")
            .input(Asked.VAPOUR_PRESSURE)
            .input(number("molecular_weight", "Molecular weight", "g/mol", Range.POSITIVE, "283.8"))
            .input(Asked.SOLUBILITY)
            .output("pa_m3_mol", "Henry constant", "Pa m³/mol")
            .output("dimensionless", "Henry constant, air over water, at 25 °C", "")
            .output("loss_limited_by", "What limits the loss from moist soil", "")
            .formula("H = vapour pressure × molecular weight ÷ solubility; H' = H ÷ (8.314462618 × 298.15)")
            .source("[illinois-8-259]", VERIFIED)
            .validity("Vapour pressure and solubility at one temperature, all more than 0.")
            .caution("For acids and salts this holds for the neutral form only: not meaningful for the ionised form.")
            .example(
                    "vapour_pressure_pa=4.18e-3 molecular_weight=283.8 solubility_mg_l=530",
                    "pa_m3_mol=0.00223827 dimensionless=0.000000902909 loss_limited_by=the air above the surface",
                    "metolachlor ([usgs-1291]: 2.344e-3)",
                    COMPUTED)
            .example(
                    "vapour_pressure_pa=3.85e-5 molecular_weight=215.68 solubility_mg_l=33",
                    "pa_m3_mol=0.000251627 dimensionless=0.000000101505",
                    "atrazine ([usgs-1291]: 2.884e-4)",
                    COMPUTED)
            .example(
                    "vapour_pressure_pa=.0147 molecular_weight=335.28 solubility_mg_l=.3",
                    "pa_m3_mol=16.4287 dimensionless=0.00662727 loss_limited_by=the soil",
                    "trifluralin",
                    COMPUTED)
            .example(
                    "vapour_pressure_pa=3.2 molecular_weight=189.3 solubility_mg_l=344",
                    "pa_m3_mol=1.76093 dimensionless=0.000710351",
                    "EPTC",
                    COMPUTED)
            .example(
                    "vapour_pressure_pa=4e-3 molecular_weight=281.3 solubility_mg_l=.275",
                    "pa_m3_mol=4.09164 dimensionless=0.00165055",
                    "pendimethalin",
                    COMPUTED)
            .model(HenryConstant::solve);

    private HenryConstant() {}

    /** Henry constant [Pa m³/mol]. */
    public static double pascalM3PerMol(double vapourPressurePa, double gramsPerMol, double solubilityMgPerLitre) {
        return vapourPressurePa * gramsPerMol / solubilityMgPerLitre;
    }

    /** The same without a dimension, concentration in air over that in water at 25 °C. */
    public static double dimensionless(double pascalM3PerMol) {
        return pascalM3PerMol / (GAS_CONSTANT * KELVIN_AT_25_C);
    }

    private static Outputs solve(Given given, Working working) {
        double pressure = given.number("vapour_pressure_pa");
        double weight = given.number("molecular_weight");
        double solubility = given.number("solubility_mg_l");
        double henry = working.line(
                "Henry constant",
                pascalM3PerMol(pressure, weight, solubility),
                "Pa m³/mol",
                "{} × {} ÷ {}",
                pressure,
                weight,
                solubility);
        double bare = working.line("without dimension", dimensionless(henry), "", "{} ÷ (8.314462618 × 298.15)", henry);
        return new Outputs()
                .put("pa_m3_mol", henry)
                .put("dimensionless", bare)
                .put("loss_limited_by", bare > SOIL_LIMITS_ABOVE ? "the soil" : "the air above the surface");
    }
}
