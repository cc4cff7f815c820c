package plumbrow.science.safety;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Water for people's hands and for rinsing containers.
 *
 *   left after three rinses = (r/(r + V))³;  rinsate = containers × 3 × V
 *   wash water = workers × 1 gal + handlers × 3 gal, and 6 gal to flush eyes where no running water is at hand
 *
 *   r  residue that does not drain;  V  rinse water each time
 *
 * Real jugs are worse than the model: drain well first. Rinsate goes into the tank as part of its carrier.
 *
 * Source: 40 CFR 165.25(f) for the share that must go; wash water of workers: pesticideresources.org; the rest from memory.
 */
public final class Rinsing {
    private static final double ML_PER_GAL = 3785.411784;
    private static final double STANDARD = 1e-4;

    public static final Figure RINSE = Figure.declare("triple-rinse", Subject.SAFETY)
            .question("What share of the product is left after three rinses, and how much rinsate is there?")
            .alsoAsked("Are the jugs clean?")
            .input(number("container_gal", "Size of a container", "gal", Range.POSITIVE, "2.5"))
            .input(number(
                    "rinse_share", "Rinse water each time, as a share of the container", "", Range.above(0, 1), "0.25"))
            .input(number("residue_ml", "Product that does not drain", "mL", Range.NOT_NEGATIVE, "30"))
            .input(number("containers", "Containers", "", Range.closed(1, 10_000), "8")
                    .orElse("1"))
            .output("left_share", "Share of the residue left", "")
            .output("meets_standard", "Whether it is at most one part in ten thousand", "")
            .output("rinsate_gal", "Rinsate, part of the tank's water", "gal")
            .formula("left = (residue ÷ (residue + rinse))³; rinsate = containers × 3 × rinse")
            .source("Performance standard 99.99 %: [40-cfr-165.25], (f)", VERIFIED)
            .validity(
                    "Well mixed each time. Real containers are worse: drain for 10 seconds after the flow drips, shake, repeat.")
            .caution(
                    "Follow the label's rinsing words; rinsate only on a labelled site and never above the labelled rate.")
            .example(
                    "container_gal=2.5 rinse_share=.25 residue_ml=30 containers=8",
                    "left_share=.00000196 meets_standard=yes rinsate_gal=15",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "container_gal=2.5 rinse_share=.2 residue_ml=30",
                    "left_share=.00000380",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "container_gal=2.5 rinse_share=.1 residue_ml=100",
                    "left_share=.00087 meets_standard=no",
                    "drain well first",
                    COMPUTED)
            .model(Rinsing::solveRinse);

    public static final Figure WASH = Figure.declare("wash-water", Subject.SAFETY)
            .question("How much water must be at hand for washing?")
            .alsoAsked("How much water for the crew to wash?")
            .input(number("workers", "Workers", "", Range.closed(0, 10_000), "6"))
            .input(number("handlers", "Handlers", "", Range.closed(0, 10_000), "2"))
            .input(word(
                            "eye_flush",
                            "Whether eyewear is required and no running water is at hand",
                            List.of("yes", "no"),
                            "no")
                    .orElse("no"))
            .output("gal", "Water", "gal")
            .formula("gallons = workers + 3 × handlers + 6 for eyes")
            .source("[40-cfr-170]; one gallon a worker seen (pesticideresources.org), handlers and eyes", MEMORY)
            .validity(
                    "At the start of work, with soap and single-use towels, within a quarter mile. Hand gel does not count.")
            .example("workers=6 handlers=2", "gal=12", "independent arithmetic", COMPUTED)
            .example("workers=6 handlers=2 eye_flush=yes", "gal=18", "independent arithmetic", COMPUTED)
            .model(Rinsing::solveWash);

    public static final Figure AIR = Figure.declare("air-ppm", Subject.SAFETY)
            .question("How many milligrams per litre of air are so many parts per million?")
            .input(number("ppm", "Vapour in air by volume", "ppm", Range.NOT_NEGATIVE, "100"))
            .input(number("mw", "Molecular weight", "g/mol", Range.POSITIVE, "92.14"))
            .output("mg_l", "Milligrams per litre of air", "mg/L")
            .formula("mg/L = ppm × molecular weight ÷ 24,450")
            .source("Volume of a mole of gas at 25 °C and 1 atm, 24.45 L", MEMORY)
            .validity("Vapours at 25 °C, not dust or mist.")
            .example("ppm=24450 mw=1", "mg_l=1.00", "definition", COMPUTED)
            .model(Rinsing::solveAir);

    private Rinsing() {}

    private static Outputs solveRinse(Given given, Working working) {
        double container = given.number("container_gal");
        double rinse = working.line(
                "rinse water each time",
                container * given.number("rinse_share"),
                "gal",
                "{} × {}",
                container,
                given.number("rinse_share"));
        double ml = working.line("the same", rinse * ML_PER_GAL, "mL", "{} × {}", rinse, ML_PER_GAL);
        double residue = given.number("residue_ml");
        double left = working.line(
                "share left", Math.pow(residue / (residue + ml), 3), "", "({} ÷ ({} + {}))^3", residue, residue, ml);
        double count = given.number("containers");
        double water = working.line("rinsate", count * 3 * rinse, "gal", "{} × 3 × {}", count, rinse);
        return new Outputs()
                .put("left_share", left)
                .put("meets_standard", left <= STANDARD ? "yes" : "no")
                .put("rinsate_gal", water);
    }

    private static Outputs solveWash(Given given, Working working) {
        double workers = given.number("workers");
        double handlers = given.number("handlers");
        double eyes = given.word("eye_flush").equals("yes") ? 6 : 0;
        return new Outputs()
                .put(
                        "gal",
                        working.line(
                                "water",
                                workers + 3 * handlers + eyes,
                                "gal",
                                "{} + 3 × {} + {}",
                                workers,
                                handlers,
                                eyes));
    }

    private static Outputs solveAir(Given given, Working working) {
        double ppm = given.number("ppm");
        double weight = given.number("mw");
        return new Outputs()
                .put("mg_l", working.line("in air", ppm * weight / 24_450, "mg/L", "{} × {} ÷ 24,450", ppm, weight));
    }
}
