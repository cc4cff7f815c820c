package plumbrow.advice.stand;

import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Field;

/**
 * What is taken of emergence and response where nobody has entered it: wide, by published figures, and always said.
 *
 * @param distribution how it is spread
 * @param source where it comes from
 */
public record TypicalStand(Distribution distribution, String source) {
    /** 7, 10 and 13 Mg/ha of corn [bu/ac], the bounds of four shapes of response. */
    private static final double POOR_BU = 111.5;

    private static final double FAIR_BU = 159.3;
    private static final double GOOD_BU = 207.1;
    private static final String SHAPES =
            "Assefa et al. 2016, Crop Sci.: by yield level, poor ground wants fewer plants";

    /** Share of the live seeds that come up and live, at the usual rate [%]. A scaled beta of the stated mean and spread. */
    public static TypicalStand emergence(Crop crop) {
        return switch (crop) {
            case CORN ->
                new TypicalStand(
                        new Distribution.Pert(70, 100, 100),
                        "typical: 90 to 95 % of corn seeds become plants (Purdue 2017, Iowa State); spread between fields 5"
                                + " points, common practice");
            case SOYBEAN ->
                new TypicalStand(
                        new Distribution.Pert(40, 92, 100),
                        "typical: 64 to 93 % of soybean seeds (Suhre et al. 2014, Illinois trial 2017); spread 10 points,"
                                + " common practice");
            case WHEAT ->
                new TypicalStand(
                        new Distribution.Pert(30, 72, 100),
                        "typical: 66 % of wheat seeds at 1 million an acre (Kansas State 2021); spread 12 points, common"
                                + " practice");
        };
    }

    /** The stand of the highest yield [plants/ac]: of corn the optimum, of soybean that of 98 % of the full yield. */
    public static TypicalStand best(Field field, double yieldBuPerAcre) {
        return field.crop() == Crop.SOYBEAN ? soybean(yieldBuPerAcre) : corn(field.state(), yieldBuPerAcre);
    }

    private static TypicalStand corn(String state, double yield) {
        if (yield < POOR_BU) {
            return new TypicalStand(
                    new Distribution.Pert(18_000, 23_000, 30_000),
                    "typical below 112 bu/ac: drought or sand 21,000 to 22,800, Purdue 2017; " + SHAPES);
        }
        if (yield < FAIR_BU) {
            return new TypicalStand(
                    new Distribution.Pert(24_000, 29_000, 34_000),
                    "typical at 112 to 159 bu/ac: Nafziger, poor sites high 20s to low 30s; " + SHAPES);
        }
        String here = switch (state) {
            case "IA" -> "Iowa State, 32 sites: 34,500 to 37,000";
            case "IN" -> "Purdue, 81 trials: 31,600";
            case "IL" -> "Nafziger, 20 trials: levels off at 32,000";
            default -> "Iowa, Indiana and Illinois trials: 31,600 to 37,000";
        };
        double likely = switch (state) {
            case "IA" -> 35_000;
            case "IN" -> 31_600;
            case "IL" -> 32_000;
            default -> 33_000;
        };
        return yield < GOOD_BU
                ? new TypicalStand(new Distribution.Pert(likely - 5_000, likely, likely + 4_000), "typical: " + here)
                : new TypicalStand(
                        new Distribution.Pert(likely - 4_000, likely + 1_000, likely + 6_000),
                        "typical: " + here + "; " + SHAPES);
    }

    private static TypicalStand soybean(double yield) {
        double likely = yield < 59.6 ? 127_000 : yield > 64.1 ? 97_000 : 104_000;
        return new TypicalStand(
                new Distribution.Pert(75_000, likely, 198_000),
                "typical: optimum 127,000 below 59.6 bu/ac, 97,000 above 64.1 (Carciochi et al. 2019); range of south and"
                        + " north, Naeve 2012");
    }

    /** How sharply corn answers to too few or too many plants, times Nafziger's table. */
    public static TypicalStand sharpness() {
        return new TypicalStand(
                new Distribution.Pert(0.6, 1, 2.3),
                "typical: table of Nafziger 1994 at 1, of Iowa 2004 about 2; width derived");
    }

    /** Whether thin wheat yields as little as the strict table says. */
    public static TypicalStand strictWheat() {
        return new TypicalStand(
                new Distribution.Chance(0.5),
                "typical: Penn State against Ontario, which differ by 20 points at 11 plants/ft²");
    }

    /** How sharply a late planting date costs, times the table. */
    public static TypicalStand late() {
        return new TypicalStand(
                new Distribution.Pert(0.4, 1, 1.2),
                "typical: Nafziger 1994 and Penn State at 1, Iowa 2004 at 0.2 to 0.9 of it; width derived");
    }

    /** Yield lost to gaps and uneven plants of a counted stand that nobody has judged [% of the best yield]. */
    public static TypicalStand gaps() {
        return new TypicalStand(
                new Distribution.Pert(0, 2, 6),
                "not judged at the count: Iowa State, several gaps of 1 to 3 ft 2 %, many of 4 to 6 ft 4 to 6 %");
    }
}
