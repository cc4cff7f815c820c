package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The counties of the United States and its territories with their lines.
 *
 * <p>From the cartographic boundary files of the US Census Bureau, 2017 edition, in the public domain, as the npm package
 * us-atlas 3.0.1 (ISC licence) packs them: bends of less than 4 km² straightened, corners on a grid of 0.0036° by 0.0009°
 * (300 m by 95 m at 42°). Connecticut has its eight counties, not the planning regions of 2022; Valdez-Cordova in Alaska
 * is still one. {@code science/src/main/land/counties.py} made the file.
 */
public final class Counties {
    /**
     * How far a true line may lie from the one drawn here [ft]: a mile.
     *
     * <p>Along lines that the law puts on a parallel the corners lie up to 0.8 mile (1,312 m) off it, on average 0.1 to 0.3
     * mile, the survey's own errors included. Winding rivers and shores may be farther out.
     */
    public static final double ERROR_FT = 5280;

    public static final String SOURCE =
            "US Census Bureau, cartographic boundary files of counties, 2017, straightened to about a mile";

    private Counties() {}

    /** Read once, at the first question. */
    private static final class Read {
        static final List<County> ALL = List.copyOf(new CountyFile(Packed.unzipped("counties.txt.gz")).counties());
    }

    /** Every county, by code. */
    public static List<County> all() {
        return Read.ALL;
    }

    /** The county that a person means by a name in a state; none where the list has no such name. */
    public static Optional<County> named(String state, String name) {
        List<County> fitting = all().stream()
                .filter(county -> county.state().equalsIgnoreCase(state.strip()) && county.called(name))
                .toList();
        return fitting.stream().findFirst();
    }

    /** The county of a five-digit code. */
    public static Optional<County> coded(String fips) {
        return all().stream().filter(county -> county.fips().equals(fips)).findFirst();
    }

    /** The names of a state's counties. */
    public static List<String> names(String state) {
        List<String> names = new ArrayList<>();
        all().stream()
                .filter(county -> county.state().equalsIgnoreCase(state.strip()))
                .forEach(county -> names.add(county.name()));
        return names;
    }

    /** Postal codes by the first two digits of a county's code. Source: FIPS 5-2. */
    static final Map<String, String> STATES = Map.<String, String>ofEntries(
            Map.entry("01", "AL"),
            Map.entry("02", "AK"),
            Map.entry("04", "AZ"),
            Map.entry("05", "AR"),
            Map.entry("06", "CA"),
            Map.entry("08", "CO"),
            Map.entry("09", "CT"),
            Map.entry("10", "DE"),
            Map.entry("11", "DC"),
            Map.entry("12", "FL"),
            Map.entry("13", "GA"),
            Map.entry("15", "HI"),
            Map.entry("16", "ID"),
            Map.entry("17", "IL"),
            Map.entry("18", "IN"),
            Map.entry("19", "IA"),
            Map.entry("20", "KS"),
            Map.entry("21", "KY"),
            Map.entry("22", "LA"),
            Map.entry("23", "ME"),
            Map.entry("24", "MD"),
            Map.entry("25", "MA"),
            Map.entry("26", "MI"),
            Map.entry("27", "MN"),
            Map.entry("28", "MS"),
            Map.entry("29", "MO"),
            Map.entry("30", "MT"),
            Map.entry("31", "NE"),
            Map.entry("32", "NV"),
            Map.entry("33", "NH"),
            Map.entry("34", "NJ"),
            Map.entry("35", "NM"),
            Map.entry("36", "NY"),
            Map.entry("37", "NC"),
            Map.entry("38", "ND"),
            Map.entry("39", "OH"),
            Map.entry("40", "OK"),
            Map.entry("41", "OR"),
            Map.entry("42", "PA"),
            Map.entry("44", "RI"),
            Map.entry("45", "SC"),
            Map.entry("46", "SD"),
            Map.entry("47", "TN"),
            Map.entry("48", "TX"),
            Map.entry("49", "UT"),
            Map.entry("50", "VT"),
            Map.entry("51", "VA"),
            Map.entry("53", "WA"),
            Map.entry("54", "WV"),
            Map.entry("55", "WI"),
            Map.entry("56", "WY"),
            Map.entry("60", "AS"),
            Map.entry("66", "GU"),
            Map.entry("69", "MP"),
            Map.entry("72", "PR"),
            Map.entry("78", "VI"));
}
