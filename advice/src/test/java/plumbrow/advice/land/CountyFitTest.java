package plumbrow.advice.land;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.land.TypedPlace.Verdict;
import plumbrow.science.reference.Counties;

class CountyFitTest {
    /** Towns in the middle of their counties; coordinates of county seats from memory, to about a mile. */
    @ParameterizedTest
    @CsvSource({
        "42.03,-93.62,19169,IA,Story",
        "41.59,-93.62,19153,IA,Polk",
        "40.116,-88.243,17019,IL,Champaign",
        "44.98,-93.27,27053,MN,Hennepin",
        "41.26,-95.94,31055,NE,Douglas",
        "38.627,-90.20,29510,MO,St. Louis city",
        "38.60,-90.44,29189,MO,St. Louis",
        "39.29,-76.61,24510,MD,Baltimore city",
        "39.40,-76.60,24005,MD,Baltimore",
        "32.31,-106.78,35013,NM,Dona Ana",
        "30.45,-91.15,22033,LA,East Baton Rouge",
        "38.90,-77.03,11001,DC,District of Columbia",
        "36.73,-119.79,06019,CA,Fresno",
        "47.66,-117.43,53063,WA,Spokane",
        "46.87,-96.79,38017,ND,Cass",
        "33.58,-101.86,48303,TX,Lubbock",
        "39.16,-119.77,32510,NV,Carson City",
        "61.22,-149.90,02020,AK,Anchorage",
        "21.31,-157.86,15003,HI,Honolulu",
        "41.77,-72.68,09003,CT,Hartford",
        "18.39,-66.06,72127,PR,San Juan"
    })
    void whereAPlaceLies(double latitude, double longitude, String fips, String state, String name) {
        CountyFit fit = CountyFit.of(Ground.rectangle(new Point(longitude, latitude), 300, 300));
        assertThat(fit.mostly()).get().satisfies(county -> {
            assertThat(county.fips()).isEqualTo(fips);
            assertThat(county.state()).isEqualTo(state);
            assertThat(county.called(name)).as(county.name()).isTrue();
        });
        assertThat(Counties.named(state, name)).get().extracting("fips").isEqualTo(fips);
    }

    /**
     * Towns with the county that the table names beside them; places as degrees, minutes and seconds. Source: zone.tab of the
     * IANA time zone database, 2025b, in the public domain.
     */
    @ParameterizedTest
    @CsvSource({
        "364947,-0845057,21231,Wayne",
        "410305,-0863611,18131,Pulaski",
        "382232,-0862041,18025,Crawford",
        "382931,-0871643,18125,Pike",
        "384452,-0850402,18155,Switzerland",
        "375711,-0864541,18123,Perry",
        "411745,-0863730,18149,Starke",
        "470659,-1011757,38065,Oliver",
        "465042,-1012439,38059,Morton",
        "471551,-1014640,38057,Mercer"
    })
    void whereATownOfTheTimeZoneTableLies(String north, String west, String fips, String name) {
        Point town = new Point(-degrees(west.substring(1)), degrees(north));
        CountyFit fit = CountyFit.of(Ground.rectangle(town, 300, 300));
        assertThat(fit.mostly()).get().satisfies(county -> {
            assertThat(county.fips()).isEqualTo(fips);
            assertThat(county.called(name)).as(county.name()).isTrue();
        });
    }

    /** Degrees of a text such as 364947 or 0845057. */
    private static double degrees(String text) {
        int seconds = text.length() - 2;
        int minutes = seconds - 2;
        return Integer.parseInt(text, 0, minutes, 10)
                + Integer.parseInt(text, minutes, seconds, 10) / 60.0
                + Integer.parseInt(text, seconds, text.length(), 10) / 3600.0;
    }

    /** Kansas and Nebraska part at 40° N, by the Act of 1854: a field across it lies in both states. */
    @Test
    void acrossAStateLine() {
        CountyFit fit = CountyFit.of(Ground.rectangle(new Point(-98.0, 39.99), 2640, 7300));
        assertThat(fit.crosses()).isTrue();
        Set<String> states =
                fit.in().stream().map(part -> part.county().state()).collect(Collectors.toSet());
        assertThat(states).containsExactlyInAnyOrder("KS", "NE");
    }

    /** The parts are the whole: no gap and no overlap between counties. */
    @Test
    void partsAddUpToTheField() {
        Boundary field = Ground.rectangle(new Point(-98.0, 39.985), 5280, 10_000);
        double parts = CountyFit.of(field).in().stream()
                .mapToDouble(CountyFit.Part::acres)
                .sum();
        assertThat(parts).isCloseTo(Acres.inside(field), within(0.001 * parts));
    }

    @Test
    void farFromEveryLineNoOtherCountyIsNear() {
        CountyFit fit = CountyFit.of(Ground.rectangle(new Point(-93.47, 42.04), 2640, 2640));
        assertThat(fit.in()).hasSize(1);
        assertThat(fit.near()).isEmpty();
    }

    @Test
    void outsideTheCountryThereIsNone() {
        assertThat(CountyFit.of(Ground.rectangle(new Point(-43.6, 42.0), 2640, 2640)))
                .isEqualTo(new CountyFit(java.util.List.of(), java.util.List.of()));
    }

    @Test
    void whatIsWrittenDownIsHeldToTheOutline() {
        CountyFit story = CountyFit.of(Ground.rectangle(new Point(-93.47, 42.04), 2640, 2640));
        assertThat(TypedPlace.of("IA", "Story", story).verdict()).isEqualTo(Verdict.AGREES);
        assertThat(TypedPlace.of("ia", "Story County", story).verdict()).isEqualTo(Verdict.AGREES);
        assertThat(TypedPlace.of("IA", "Polk", story).verdict()).isEqualTo(Verdict.ELSEWHERE);
        assertThat(TypedPlace.of("MN", "Story", story).verdict()).isEqualTo(Verdict.NO_SUCH_COUNTY);
        assertThat(TypedPlace.of("IA", "Storey", story).says()).contains("Story County, IA");
        CountyFit edge = CountyFit.of(Ground.rectangle(new Point(-98.0, 40.005), 1000, 1000));
        String beside = edge.near().get(0).county().name();
        assertThat(TypedPlace.of("KS", beside, edge).verdict()).isEqualTo(Verdict.NEAR);
        assertThat(TypedPlace.of("KS", beside, edge).says()).contains("look at the deed");
    }
}
