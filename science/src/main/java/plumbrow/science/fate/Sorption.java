package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Sorption in a soil from its organic matter and back, and the strength of a rate in the soil it is mixed with.
 *
 *   Kd = Koc·OC;  OC = OM/1.72;  mg/kg = 10·(kg/ha)/(d·ρ)
 *
 *   OC, OM  shares of the soil;  d  depth [cm];  ρ  bulk density [g/cm³]
 *
 * Source: EPA, epa.gov/athens/learn2model (kd = foc·Koc); the rest arithmetic; 5 cm and 1.5 g/cm³ FOCUS 1997 (memory).
 */
public final class Sorption {
    private static final double ORGANIC_MATTER_PER_CARBON = 1.72;
    private static final double MG_KG_CM_PER_KG_HA = 10;

    public static final Figure IN_SOIL = Figure.declare("koc-to-kd", Subject.FATE)
            .question("How strongly does this soil hold the active ingredient?")
            .input(number("koc_ml_g", "Sorption to organic carbon, Koc", "mL/g", Range.NOT_NEGATIVE, "100"))
            .input(number("organic_matter_pct", "Organic matter of the soil", "%", Range.PERCENT, "3"))
            .output("kd_ml_g", "Sorption in the soil, Kd", "mL/g")
            .output("carbon_pct", "Organic carbon", "%")
            .formula("carbon = organic matter ÷ 1.72; Kd = Koc × carbon ÷ 100")
            .source("[epa-learn2model]", VERIFIED)
            .validity(
                    "Actives without charge. Paraquat, glyphosate and weak acids are held otherwise: their Koc is a stand-in.")
            .example(
                    "koc_ml_g=100 organic_matter_pct=3", "kd_ml_g=1.744 carbon_pct=1.744", "3 ÷ 1.72 by hand", COMPUTED)
            .example("koc_ml_g=8000 organic_matter_pct=1.72", "kd_ml_g=80 carbon_pct=1.0", "by hand", COMPUTED)
            .model(Sorption::solveInSoil);

    public static final Figure FROM_SOIL = Figure.declare("kd-to-koc", Subject.FATE)
            .question("Which Koc stands behind the sorption measured in a soil?")
            .input(number("kd_ml_g", "Sorption in the soil, Kd", "mL/g", Range.NOT_NEGATIVE, "1.744"))
            .input(number("organic_matter_pct", "Organic matter of the soil", "%", Range.above(0, 100), "3"))
            .output("koc_ml_g", "Koc", "mL/g")
            .formula("Koc = Kd × 100 ÷ (organic matter ÷ 1.72)")
            .source("[epa-learn2model]", VERIFIED)
            .validity("As koc-to-kd. Below about 0.5 % organic matter clay holds as much: the answer means little.")
            .example("kd_ml_g=80 organic_matter_pct=1.72", "koc_ml_g=8000", "by hand", COMPUTED)
            .model(Sorption::solveFromSoil);

    public static final Figure STRENGTH = Figure.declare("soil-residue", Subject.FATE)
            .question("How strong is the active ingredient in the soil it is mixed with?")
            .input(Asked.RATE)
            .input(number("depth_cm", "Depth of the soil it is in", "cm", Range.above(0, 200), "5")
                    .orElse("5"))
            .input(number("bulk_density_g_cm3", "Bulk density", "g/cm³", Range.above(0, 3), "1.5")
                    .orElse("1.5"))
            .output("mg_kg", "Strength in the soil", "mg/kg")
            .output("kg_ha", "Rate", "kg/ha")
            .formula("mg/kg = 10 × kg/ha ÷ (depth × bulk density); 1 lb/ac = 1.12085 kg/ha")
            .source("Arithmetic; 5 cm and 1.5 g/cm³ are the usual screen ([focus-1997])", MEMORY)
            .validity("Evenly mixed, all of the rate in the soil, none on leaves or residue.")
            .example(
                    "rate_lb_ac=.892179 depth_cm=5 bulk_density_g_cm3=1.5",
                    "mg_kg=1.3333 kg_ha=1.0",
                    "1 kg/ha",
                    COMPUTED)
            .example(
                    "rate_lb_ac=1 depth_cm=16.94 bulk_density_g_cm3=1.33",
                    "mg_kg=.4975",
                    "half a ppm in the furrow slice",
                    PRACTICE)
            .model(Sorption::solveStrength);

    private Sorption() {}

    private static Outputs solveInSoil(Given given, Working working) {
        double koc = given.number("koc_ml_g");
        double matter = given.number("organic_matter_pct");
        double carbon = working.line(
                "organic carbon, percent",
                matter / ORGANIC_MATTER_PER_CARBON,
                "",
                "{} ÷ {}",
                matter,
                ORGANIC_MATTER_PER_CARBON);
        double kd = working.line("Kd", koc * carbon / 100, "", "{} × {} ÷ 100", koc, carbon);
        return new Outputs().put("kd_ml_g", kd).put("carbon_pct", carbon);
    }

    private static Outputs solveFromSoil(Given given, Working working) {
        double kd = given.number("kd_ml_g");
        double matter = given.number("organic_matter_pct");
        double koc = working.line(
                "Koc",
                kd * 100 / (matter / ORGANIC_MATTER_PER_CARBON),
                "",
                "{} × 100 ÷ ({} ÷ {})",
                kd,
                matter,
                ORGANIC_MATTER_PER_CARBON);
        return new Outputs().put("koc_ml_g", koc);
    }

    private static Outputs solveStrength(Given given, Working working) {
        double rate = given.number("rate_lb_ac");
        double metric =
                working.line("rate in kg/ha", rate * FieldRate.KG_PER_HA, "", "{} × {}", rate, FieldRate.KG_PER_HA);
        double depth = given.number("depth_cm");
        double density = given.number("bulk_density_g_cm3");
        double strength = working.line(
                "mg in a kg of soil",
                MG_KG_CM_PER_KG_HA * metric / (depth * density),
                "",
                "10 × {} ÷ ({} × {})",
                metric,
                depth,
                density);
        return new Outputs().put("mg_kg", strength).put("kg_ha", metric);
    }
}
