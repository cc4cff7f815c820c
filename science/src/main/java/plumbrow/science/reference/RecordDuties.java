package plumbrow.science.reference;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Duties to keep records of pesticide applications: federal, and of the states whose rules were seen. A state that is not among them has
 * duties all the same: nobody has looked.
 */
public final class RecordDuties {
    /** What a record may have to hold, with the words by which people call it. */
    public static final Map<String, String> WORDS = words();

    private static final List<RecordDuty> ALL = ReferenceSet.DUTIES.entries(RecordDuty.class);

    private RecordDuties() {}

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("date", "day");
        words.put("start", "time of start");
        words.put("end", "time of end");
        words.put("time", "time of day");
        words.put("applicator", "who applied");
        words.put("licence", "licence or certificate number");
        words.put("supervised", "who worked under supervision");
        words.put("customer", "for whom it was applied");
        words.put("customer_address", "address of the customer");
        words.put("place", "place");
        words.put("acres", "acres treated");
        words.put("crop", "crop or site");
        words.put("variety", "variety");
        words.put("pests", "target pests");
        words.put("pests_or_crop", "target pests, purpose or crop");
        words.put("product", "product");
        words.put("registration", "EPA registration number");
        words.put("total", "total amount");
        words.put("rate", "rate");
        words.put("rate_or_total", "rate, or concentration and total");
        words.put("spray_volume", "volume of spray");
        words.put("equipment", "equipment");
        words.put("method", "method");
        words.put("weather", "weather");
        words.put("wind", "wind speed");
        words.put("wind_from", "wind direction");
        words.put("temperature", "air temperature");
        words.put("mixing_place", "place of mixing and loading");
        words.put("reentry", "restricted-entry interval");
        return words;
    }

    public static List<RecordDuty> all() {
        return ALL;
    }

    /** Whether anybody has looked for the rules of a state. */
    public static boolean looked(String state) {
        return ALL.stream().anyMatch(duty -> duty.state().equals(state));
    }

    /** The rows, federal and of a state, in force on a day. */
    public static List<RecordDuty> inForce(String state, LocalDate day) {
        return ALL.stream()
                .filter(duty -> duty.state().equals("US") || duty.state().equals(state))
                .filter(duty -> duty.inForce(day))
                .toList();
    }
}
