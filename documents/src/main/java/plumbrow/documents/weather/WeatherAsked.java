package plumbrow.documents.weather;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What must be said of a weather file that it does not say itself.
 *
 * @param place a field's name, or a county as "IA: Story"
 * @param zone by whose clock people there live
 * @param offset the file's clock, where it is neither UTC nor written beside each time; null for standard time of the zone
 * @param latitude of the station, where known; a file that tells its own goes before it
 * @param windHeightM height of its wind [m]
 * @param columns for a plain CSV: which heading of the file holds what, keys as {@link PlainCsv} names them
 * @param source who gave the file, where somebody says so
 */
public record WeatherAsked(
        String place,
        ZoneId zone,
        @Nullable ZoneOffset offset,
        @Nullable Double latitude,
        @Nullable Double longitude,
        double windHeightM,
        Map<String, String> columns,
        @Nullable String source) {
    public WeatherAsked {
        columns = Map.copyOf(columns);
    }

    /** The clock of the file's times: standard time, all year. */
    ZoneOffset clock() {
        ZoneOffset said = offset;
        return said == null
                ? zone.getRules().getStandardOffset(java.time.Instant.EPOCH.plusSeconds(1_700_000_000L))
                : said;
    }
}
