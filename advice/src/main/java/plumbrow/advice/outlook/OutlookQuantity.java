package plumbrow.advice.outlook;

/** The quantities of the outlook that hold for a crop or a field as a whole. */
public enum OutlookQuantity {
    PRICE("price", "$/bu", "price received at harvest, after basis"),
    YIELD("yield", "bu/ac", "attainable yield: what the field brings with pests and weeds under control"),
    HANDLING("handling", "$/bu", "drying, haul and check-off, per bushel"),
    GENETIC_LAG("genetic lag", "bu/ac per year", "yield of new varieties gained each year, missed by older seed"),
    DELAY_LOSS("delay loss", "% per day", "yield lost for each day a crop is set back"),
    PRICE_YIELD_TIE("price-yield tie", "", "rank correlation of price and yield, −0.95 to 0.95");

    private final String word;
    private final String unit;
    private final String meaning;

    OutlookQuantity(String word, String unit, String meaning) {
        this.word = word;
        this.unit = unit;
        this.meaning = meaning;
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
}
