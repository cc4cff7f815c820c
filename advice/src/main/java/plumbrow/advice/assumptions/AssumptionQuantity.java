package plumbrow.advice.assumptions;

/** The quantities of the assumptions that hold for a crop or a field as a whole. */
public enum AssumptionQuantity {
    PRICE("price", "$/bu", "price received at harvest, after basis", DoubtKind.YEAR),
    YIELD(
            "yield",
            "bu/ac",
            "attainable yield: what the field brings with pests and weeds under control and a full stand",
            DoubtKind.YEAR),
    HANDLING(
            "handling",
            "$/bu",
            "haul and check-off per bushel, with drying where that is not entered apart",
            DoubtKind.YEAR),
    DRYING("drying", "$/bu", "drying per bushel, apart from handling", DoubtKind.YEAR),
    GENETIC_LAG(
            "genetic lag",
            "bu/ac per year",
            "yield of new varieties gained each year, missed by older seed",
            DoubtKind.FIELD),
    DELAY_LOSS("delay loss", "% per day", "yield lost for each day a crop is set back", DoubtKind.YEAR),
    BEST_STAND(
            "best stand",
            "plants/ac",
            "final stand of the highest corn yield, or of 98 % of the full soybean yield",
            DoubtKind.FIELD),
    PRICE_YIELD_TIE("price-yield tie", "", "rank correlation of price and yield, −0.95 to 0.95", DoubtKind.FIELD),
    WEATHER_YIELD_TIE(
            "weather-yield tie",
            "",
            "rank correlation of yield and a wet, cool July (August for soybeans), −0.95 to 0.95",
            DoubtKind.FIELD);

    private final String word;
    private final String unit;
    private final String meaning;
    private final DoubtKind doubt;

    AssumptionQuantity(String word, String unit, String meaning, DoubtKind doubt) {
        this.word = word;
        this.unit = unit;
        this.meaning = meaning;
        this.doubt = doubt;
    }

    public String word() {
        return word;
    }

    public String unit() {
        return unit;
    }

    public String meaning() {
        return meaning;
    }

    /**
     * Whether it belongs to the field or the year. Attainable yield is some of both: a grower who keeps records knows what a
     * field brings on average far better than what this year will bring, so it counts as the year's.
     */
    public DoubtKind doubt() {
        return doubt;
    }
}
