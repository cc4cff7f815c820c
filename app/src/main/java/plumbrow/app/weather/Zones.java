package plumbrow.app.weather;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import plumbrow.advice.season.Season;

/** By whose clock people live. States that lie in two zones have none here: there it must be said. */
public final class Zones {
    private static final Map<String, List<String>> WHOLE = Map.of(
            "America/Chicago", List.of("AL AR IL IA LA MN MS MO OK WI".split(" ")),
            "America/New_York", List.of("CT DE GA ME MD MA NH NJ NY NC OH PA RI SC VT VA WV".split(" ")),
            "America/Denver", List.of("CO MT NM UT WY".split(" ")),
            "America/Los_Angeles", List.of("CA NV WA".split(" ")),
            "America/Phoenix", List.of("AZ"),
            "Pacific/Honolulu", List.of("HI"));

    private Zones() {}

    /** The clock of a field or of a county as "IA: Story". */
    public static ZoneId of(Season season, String place) {
        String state =
                season.field(place).map(field -> field.state()).orElse(place.length() > 2 ? place.substring(0, 2) : "");
        return WHOLE.entrySet().stream()
                .filter(zone -> zone.getValue().contains(state))
                .map(zone -> ZoneId.of(zone.getKey()))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException(
                                "The clock of " + place
                                        + " is not known by its state alone; name it with --zone, such as America/Chicago or America/New_York."));
    }

    /** The clock of that name. */
    public static ZoneId named(String zone) {
        try {
            return ZoneId.of(zone);
        } catch (DateTimeException fault) {
            throw new IllegalArgumentException(
                    "There is no clock '" + zone + "'; expected one such as America/Chicago.");
        }
    }
}
