package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;

import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Range;

/** Inputs that several figures of this subject ask for, in the same words. */
final class Asked {
    static final Input PRICE = number("price_usd_bu", "Crop price received", "$/bu", Range.POSITIVE, "4.50");
    static final Input HANDLING = number(
                    "handling_usd_bu", "Drying, haul and check-off per bushel", "$/bu", Range.NOT_NEGATIVE, "0.35")
            .orElse("0");
    static final Input CROP_SHARE = number("crop_share", "Operator's share of the crop", "", Range.above(0, 1), "0.5")
            .orElse("1");
    static final Input COST_SHARE = number("cost_share", "Operator's share of this cost", "", Range.SHARE, "0.5")
            .orElse("1");
    static final Input FUTURES = number("futures_usd", "Harvest futures price today", "$/bu", Range.POSITIVE, "4.50");
    static final Input VOLATILITY = number(
            "volatility", "Implied volatility per year, as a share: 25 % is 0.25", "1/√yr", Range.closed(0, 3), "0.25");
    static final Input YEARS =
            number("years", "Years from today to the harvest price", "yr", Range.closed(0, 20), "0.5");
    /** Numbers whose differences and shares still have digits; no price or yield comes near the ends. */
    private static final Range WORKABLE = Range.closed(-1e12, 1e12);

    static final Input LOW = number("low", "Lowest that can happen", "", WORKABLE, "90");
    static final Input LIKELY = number("likely", "Likeliest", "", WORKABLE, "160");
    static final Input HIGH = number("high", "Highest that can happen", "", WORKABLE, "200");
    static final Input PROBABILITY = number(
                    "probability", "Chance of staying at or below the quantile", "", Range.SHARE, "0.1")
            .optional();

    /** As a share of the larger end: ends that are closer together have too few digits between them. */
    private static final double LEAST_WIDTH = 1e-9;

    private Asked() {}

    /** Refuses low, likely and high that do not rise in this order. */
    static void rising(Given given) {
        double low = given.number("low");
        double likely = given.number("likely");
        double high = given.number("high");
        if (low >= high) {
            throw given.refuse("low", "a number below high (" + Numbers.plain(high) + ")");
        }
        if (high - low < LEAST_WIDTH * Math.max(Math.abs(low), Math.abs(high))) {
            throw given.refuse(
                    "low", "a number that differs from high (" + Numbers.plain(high) + ") in its first digits");
        }
        if (likely < low || likely > high) {
            throw given.refuse(
                    "likely",
                    "a number between low (" + Numbers.plain(low) + ") and high (" + Numbers.plain(high) + ")");
        }
    }
}
