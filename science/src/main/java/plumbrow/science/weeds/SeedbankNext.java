package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** The weed seed that lies in the soil next spring, as figures. The equation is {@link Seedbank}. */
public final class SeedbankNext {
    private static final Input GERMINATION =
            number("germination", "Share of the seed that emerges in a year", "", Range.SHARE, "0.30");
    private static final Input FECUNDITY = number(
            "fecundity",
            "Viable seeds per surviving plant that reach the soil",
            "seeds/plant",
            Range.NOT_NEGATIVE,
            "200");
    private static final Input MORTALITY =
            number("dormant_mortality", "Share of ungerminated seed that dies in the year", "", Range.SHARE, "0.25");
    static final String CONTESTED = "How long seed lasts differs by site several times over: show a band of mortality.";

    public static final Figure FIGURE = Figure.declare("seedbank-next", Subject.WEEDS)
            .question("How much weed seed lies in the soil next spring?")
            .input(number("seeds_m2", "Viable seeds before emergence", "seeds/m²", Range.NOT_NEGATIVE, "1000"))
            .input(GERMINATION)
            .input(number(
                    "seedling_survival",
                    "Share of seedlings that sets seed, after all control",
                    "",
                    Range.SHARE,
                    "0.05"))
            .input(FECUNDITY)
            .input(MORTALITY)
            .input(number("density_a", "Crowding: m² per plant; 0 is none", "m²/plant", Range.NOT_NEGATIVE, "0.02")
                    .orElse("0"))
            .output("seeds_m2", "Seeds next spring", "seeds/m²")
            .output("plants_m2", "Plants that set seed this year", "plants/m²")
            .formula("plants = seeds × g × s; next = seeds × (1 − g) × (1 − m) + plants × F ÷ (1 + a × plants)")
            .source("Annual seedbank equation", MEMORY)
            .validity("One cohort a year. For pigweeds with separate sexes halve the survival or the fecundity.")
            .caution(CONTESTED)
            .example(
                    "seeds_m2=1000 germination=.30 seedling_survival=.05 fecundity=200 dormant_mortality=.25",
                    "seeds_m2=3525.0 plants_m2=15.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "seeds_m2=1000 germination=.30 seedling_survival=.05 fecundity=200 dormant_mortality=.25 density_a=.02",
                    "seeds_m2=2832.6923 plants_m2=15.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "seeds_m2=1000 germination=.05 seedling_survival=.05 fecundity=50000 dormant_mortality=.34 density_a=.5",
                    "seeds_m2=56182.56",
                    "waterhemp",
                    COMPUTED)
            .example(
                    "seeds_m2=1000 germination=.05 seedling_survival=.0005 fecundity=50000 dormant_mortality=.34 density_a=.5",
                    "seeds_m2=1861.57",
                    "waterhemp at 99.9 % control: not enough",
                    COMPUTED)
            .model(SeedbankNext::solve);

    public static final Figure CONTROL_NEEDED = Figure.declare("seedbank-control", Subject.WEEDS)
            .question("How good must control be so that the weed seed in the soil does not grow?")
            .input(GERMINATION)
            .input(FECUNDITY)
            .input(MORTALITY)
            .input(number(
                            "female_share",
                            "Share of plants that bears seed: 0.5 for pigweeds",
                            "",
                            Range.above(0, 1),
                            "0.5")
                    .orElse("1"))
            .output("control_pct", "Control needed", "%")
            .output("survival", "Share of seedlings that may set seed", "")
            .formula("s* = (1 − (1 − g)(1 − m)) ÷ (g × F × share that bears seed); control = 100 × (1 − s*)")
            .source("Annual seedbank equation without crowding", MEMORY)
            .validity(
                    "All control together, over the season, without crowding. Needs some seed to emerge and to be set, else no control is needed.")
            .caution(CONTESTED)
            .example(
                    "germination=.05 fecundity=50000 dormant_mortality=.34 female_share=.5",
                    "control_pct=99.9702",
                    "waterhemp",
                    COMPUTED)
            .model(SeedbankNext::solveControl);

    private SeedbankNext() {}

    private static Outputs solve(Given given, Working working) {
        double seeds = given.number("seeds_m2");
        double g = given.number("germination");
        double s = given.number("seedling_survival");
        double f = given.number("fecundity");
        double m = given.number("dormant_mortality");
        double a = given.number("density_a");
        double plants =
                working.line("plants that set seed", Seedbank.plants(seeds, g, s), "", "{} × {} × {}", seeds, g, s);
        double next = working.line(
                "seeds next spring",
                Seedbank.next(seeds, g, s, f, m, a),
                "",
                "{} × (1 − {}) × (1 − {}) + {} × {} ÷ (1 + {} × {})",
                seeds,
                g,
                m,
                plants,
                f,
                a,
                plants);
        return new Outputs().put("seeds_m2", next).put("plants_m2", plants);
    }

    private static Outputs solveControl(Given given, Working working) {
        double g = given.number("germination");
        double f = given.number("fecundity");
        double m = given.number("dormant_mortality");
        double female = given.number("female_share");
        if (g * f * female == 0) {
            return new Outputs()
                    .put("control_pct", working.line("control needed", 0, "%", "0, since no new seed is set"))
                    .put("survival", 1);
        }
        double share = Seedbank.breakEvenSurvival(g, f * female, m);
        working.line(
                "share of seedlings that may set seed",
                share,
                "",
                (share < 1 ? "" : "1, since at least 1 is ") + "(1 − (1 − {}) × (1 − {})) ÷ ({} × {} × {})",
                g,
                m,
                g,
                f,
                female);
        double control = working.line("control needed", 100 * (1 - share), "%", "100 × (1 − {})", share);
        return new Outputs().put("control_pct", control).put("survival", share);
    }
}
