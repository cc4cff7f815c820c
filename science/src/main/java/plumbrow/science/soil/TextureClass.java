package plumbrow.science.soil;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Texture class of a soil from its sand and clay, one of the twelve of the USDA triangle.
 *
 *   silt = 100 − sand − clay, all [%] of the fine earth
 *
 * Each bound belongs to one class only, as the rules write it: at least on the one side, less than on the other.
 *
 * Source: USDA Soil Survey Manual, chapter 3; rules as written in the USDA soil texture calculator
 * (scribd.com/doc/137575023).
 */
public final class TextureClass {
    public static final Figure FIGURE = Figure.declare("texture-class", Subject.SOIL)
            .question("What is the texture of this soil?")
            .input(number("sand_pct", "Sand", "%", Range.PERCENT, "20"))
            .input(number("clay_pct", "Clay", "%", Range.PERCENT, "25"))
            .output("class", "Texture class", "")
            .output("silt_pct", "Silt", "%")
            .formula("silt = 100 − sand − clay; the twelve classes of the USDA triangle")
            .source("[usda-soil-manual]", VERIFIED)
            .validity("Mineral soil, fine earth. Sand and clay together at most 100 %.")
            .example("sand_pct=0 clay_pct=0", "class=silt silt_pct=100.0", "the calculator's own example", VERIFIED)
            .example("sand_pct=92 clay_pct=3", "class=sand", "rule: silt + 1.5 clay below 15", COMPUTED)
            .example("sand_pct=82 clay_pct=6", "class=loamy sand", "rule: silt + 2 clay below 30", COMPUTED)
            .example("sand_pct=65 clay_pct=10", "class=sandy loam", "rule: clay 7 to 20, sand above 52", COMPUTED)
            .example("sand_pct=40 clay_pct=20", "class=loam", "rule: clay 7 to 27, silt 28 to 50, sand to 52", COMPUTED)
            .example("sand_pct=20 clay_pct=20", "class=silt loam", "rule: silt 50 and more, clay 12 to 27", COMPUTED)
            .example("sand_pct=60 clay_pct=25", "class=sandy clay loam", "rule: clay 20 to 35, silt below 28", COMPUTED)
            .example("sand_pct=32 clay_pct=34", "class=clay loam", "rule: clay 27 to 40, sand 20 to 45", COMPUTED)
            .example("sand_pct=10 clay_pct=34", "class=silty clay loam", "rule: clay 27 to 40, sand to 20", COMPUTED)
            .example("sand_pct=52 clay_pct=42", "class=sandy clay", "rule: clay from 35, sand above 45", COMPUTED)
            .example("sand_pct=6 clay_pct=47", "class=silty clay", "rule: clay from 40, silt from 40", COMPUTED)
            .example("sand_pct=20 clay_pct=60", "class=clay", "rule: clay from 40, sand to 45, silt below 40", COMPUTED)
            .model(TextureClass::solve);

    private TextureClass() {}

    /** The class of a soil of sand and clay [%], together at most 100. */
    public static String of(double sandPct, double clayPct) {
        double silt = 100 - sandPct - clayPct;
        if (silt + 1.5 * clayPct < 15) {
            return "sand";
        }
        if (silt + 2 * clayPct < 30) {
            return "loamy sand";
        }
        if (clayPct >= 40) {
            return fine(sandPct, silt);
        }
        if (clayPct >= 35 && sandPct > 45) {
            return "sandy clay";
        }
        if (clayPct >= 27) {
            if (sandPct > 45) {
                return "sandy clay loam";
            }
            return sandPct > 20 ? "clay loam" : "silty clay loam";
        }
        return clayPct >= 20 && silt < 28 ? "sandy clay loam" : loamy(sandPct, silt, clayPct);
    }

    private static String fine(double sandPct, double siltPct) {
        if (sandPct > 45) {
            return "sandy clay";
        }
        return siltPct >= 40 ? "silty clay" : "clay";
    }

    private static String loamy(double sandPct, double siltPct, double clayPct) {
        if (siltPct >= 80 && clayPct < 12) {
            return "silt";
        }
        if (siltPct >= 50) {
            return "silt loam";
        }
        return clayPct >= 7 && siltPct >= 28 && sandPct <= 52 ? "loam" : "sandy loam";
    }

    private static Outputs solve(Given given, Working working) {
        double sand = given.number("sand_pct");
        double clay = given.number("clay_pct");
        if (sand + clay > 100) {
            throw given.refuse("clay_pct", "at most " + Numbers.plain(100 - sand) + " %: sand and clay together 100 %");
        }
        double silt = working.line("silt", 100 - sand - clay, "%", "100 − {} − {}", sand, clay);
        return new Outputs().put("class", of(sand, clay)).put("silt_pct", silt);
    }
}
