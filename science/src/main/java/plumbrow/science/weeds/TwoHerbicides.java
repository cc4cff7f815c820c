package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Resistance to two herbicides, in turn or together, in a weed that crosses with its neighbours.
 *
 * Two genes on separate chromosomes, one resistant copy of a gene enough; the nine genotypes are followed year by year:
 *
 *   bank − winter loss → germination → establishment → survivors 1 − E for each herbicide used that finds no resistance
 *   seeds/m² = P·30,000·0.04/(1 + 0.04·P + 100·0.09·1.3), crossed at random; old seed loses its summer share
 *
 * The field is taken as endless. There a mixture gains nothing over one herbicide used every year, and a rotation only its
 * unsprayed years; mixtures win because real fields are finite: see double-resistance.
 *
 * Source: Diggle, Neve & Smith 2003, Weed Res. 43:371, Tables 1 and 2.
 */
public final class TwoHerbicides {
    private static final int COPIES = 3;
    private static final double SEEDS_PER_PLANT = 30_000;
    private static final double SPACE = 0.04;
    private static final double CROP = 100 * 0.09 * 1.3;
    private static final double BANK_LOSS = 0.1;

    public static final Figure FIGURE = Figure.declare("two-herbicide-resistance", Subject.WEEDS)
            .question("In how many years does the weed resist two herbicides used in turn, or together?")
            .input(word(
                    "use",
                    "In turn, both each year, or the first alone",
                    List.of("rotation", "mixture", "first-alone"),
                    "rotation"))
            .input(number("initial_frequency", "Frequency of each resistant gene", "", Range.open(0, .5), "0.000001"))
            .input(number("control_pct", "Control of susceptible plants by each", "%", Range.open(0, 100), "95")
                    .orElse("95"))
            .input(number("germination", "Seed that emerges in a year", "", Range.above(0, 1), "0.9")
                    .orElse("0.9"))
            .input(number("establishment", "Seedlings that establish", "", Range.above(0, 1), "0.2")
                    .orElse("0.2"))
            .input(number("seeds_m2", "Seed in the soil to begin with", "seeds/m²", Range.above(0, 1e6), "100")
                    .orElse("100"))
            .input(number("years", "Years to list", "yr", Range.closed(1, 60), "14")
                    .orElse("14"))
            .output("first_shares", "Seed that resists the first, after each year", "")
            .output("second_shares", "Seed that resists the second, after each year", "")
            .output("bank_m2", "Seed in the soil after each year", "seeds/m²")
            .output("half_first", "First year that ends with more than half resisting the first", "")
            .output("half_second", "First year that ends with more than half resisting the second", "")
            .formula(
                    "two genes, dominant, unlinked, crossing at random; survivors 1 − control for each herbicide not resisted")
            .source("[diggle-2003]", VERIFIED)
            .validity(
                    "An endless field, no genes from outside. The paper's weed, crop and losses; 'never' where no year of the list reaches half.")
            .caution(
                    "On a real field of 100 ha the chance that double resistance is there at all decides: see double-resistance.")
            .example(
                    "use=rotation initial_frequency=.000001 years=10",
                    "first_shares=0.0,0.0,.0007,.0007,.0118,.0118,.171,.171,.653,.656 half_first=9 half_second=10",
                    "paper: crossing about year 10",
                    COMPUTED)
            .example(
                    "use=first-alone initial_frequency=.000001 years=8",
                    "half_first=5 half_second=never",
                    "single 5 years",
                    COMPUTED)
            .example(
                    "use=mixture initial_frequency=.000001 years=8",
                    "half_first=6 half_second=6",
                    "own calculation in Python, same rules",
                    COMPUTED)
            .model(TwoHerbicides::solve);

    private TwoHerbicides() {}

    /**
     * The seedbank [seeds/m²] of the nine genotypes after one more year; rows and columns are copies of the first and second
     * resistant gene, 0 to 2.
     */
    static double[][] next(
            double[][] bank, boolean first, boolean second, double control, double germination, double establishment) {
        double[][] next = new double[COPIES][COPIES];
        double[][] gametes = new double[2][2];
        double plants = 0;
        for (int i = 0; i < COPIES; i++) {
            for (int j = 0; j < COPIES; j++) {
                double spring = bank[i][j] * (1 - BANK_LOSS);
                next[i][j] = spring * (1 - germination) * (1 - BANK_LOSS);
                double live = spring * germination * establishment;
                live *= first && i == 0 ? 1 - control : 1;
                live *= second && j == 0 ? 1 - control : 1;
                plants += live;
                for (int x = 0; x < 2; x++) {
                    for (int z = 0; z < 2; z++) {
                        gametes[x][z] += live * (x == 1 ? i / 2.0 : 1 - i / 2.0) * (z == 1 ? j / 2.0 : 1 - j / 2.0);
                    }
                }
            }
        }
        double seeds = plants * SEEDS_PER_PLANT * SPACE / (1 + SPACE * plants + CROP);
        for (int mother = 0; mother < 4 && plants > 0; mother++) {
            for (int father = 0; father < 4; father++) {
                double share = gametes[mother / 2][mother % 2] / plants * (gametes[father / 2][father % 2] / plants);
                next[mother / 2 + father / 2][mother % 2 + father % 2] += seeds * share;
            }
        }
        return next;
    }

    private static double[][] start(double seeds, double q) {
        double[] distribution = {(1 - q) * (1 - q), 2 * q * (1 - q), q * q};
        double[][] bank = new double[COPIES][COPIES];
        for (int i = 0; i < COPIES; i++) {
            for (int j = 0; j < COPIES; j++) {
                bank[i][j] = seeds * distribution[i] * distribution[j];
            }
        }
        return bank;
    }

    private static Outputs solve(Given given, Working working) {
        double years = given.number("years");
        if (years != Math.rint(years)) {
            throw given.refuse("years", "a whole number of years");
        }
        String use = given.word("use");
        double[][] bank = start(given.number("seeds_m2"), given.number("initial_frequency"));
        double[] first = new double[(int) years];
        double[] second = new double[first.length];
        double[] all = new double[first.length];
        for (int year = 1; year <= first.length; year++) {
            boolean useFirst = !use.equals("rotation") || year % 2 == 1;
            boolean useSecond = use.equals("mixture") || (use.equals("rotation") && year % 2 == 0);
            bank = next(
                    bank,
                    useFirst,
                    useSecond,
                    given.number("control_pct") / 100,
                    given.number("germination"),
                    given.number("establishment"));
            double seeds = 0;
            double none = 0;
            double noneOfSecond = 0;
            for (int i = 0; i < COPIES; i++) {
                for (int j = 0; j < COPIES; j++) {
                    seeds += bank[i][j];
                    none += i == 0 ? bank[i][j] : 0;
                    noneOfSecond += j == 0 ? bank[i][j] : 0;
                }
            }
            all[year - 1] = seeds;
            first[year - 1] = share(seeds - none, seeds);
            second[year - 1] = share(seeds - noneOfSecond, seeds);
            if (year == 1 || year == first.length) {
                working.line(
                        "resist the first after year " + year, first[year - 1], "", "{} ÷ {}", seeds - none, seeds);
            }
        }
        return new Outputs()
                .put("first_shares", first)
                .put("second_shares", second)
                .put("bank_m2", all)
                .put("half_first", firstAboveHalf(first))
                .put("half_second", firstAboveHalf(second));
    }

    private static double share(double part, double all) {
        return all > 0 ? Math.max(part, 0) / all : 0;
    }

    private static String firstAboveHalf(double[] shares) {
        for (int year = 0; year < shares.length; year++) {
            if (shares[year] > 0.5) {
                return Integer.toString(year + 1);
            }
        }
        return "never";
    }
}
