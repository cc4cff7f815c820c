package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.MessageDigest;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountiesTest {
    private static final double FT_PER_DEGREE = 364_600;

    /** The file is the one that docs/land.md names. */
    @Test
    void theFileIsWhole() throws java.security.NoSuchAlgorithmException {
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(Packed.bytes("counties.txt.gz"));
        assertThat(HexFormat.of().formatHex(sum))
                .isEqualTo("d3643e58540e027bfe7343f433731ed50598b5805dfa70eb9c34e019029ae84e");
    }

    /** 3,142 counties of the states and the District in 2017, 78 municipios of Puerto Rico, 11 in the other territories. */
    @Test
    void everyCountyIsThere() {
        assertThat(Counties.all()).hasSize(3231);
        List<String> islands = List.of("PR", "AS", "GU", "MP", "VI");
        assertThat(Counties.all().stream().filter(county -> !islands.contains(county.state())))
                .hasSize(3142);
        assertThat(Counties.names("IA")).hasSize(99);
        assertThat(Counties.names("NE")).hasSize(93);
        assertThat(Counties.names("MN")).hasSize(87);
        assertThat(Counties.names("DE")).hasSize(3);
    }

    @Test
    void ringsAreClosed() {
        assertThat(Counties.all())
                .allSatisfy(county -> assertThat(county.rings()).allSatisfy(ring -> {
                    double[] at = ring.degrees();
                    assertThat(at.length).as(county.fips()).isGreaterThanOrEqualTo(8);
                    assertThat(at[0]).isEqualTo(at[at.length - 2]);
                    assertThat(at[1]).isEqualTo(at[at.length - 1]);
                }));
    }

    /** Cities so small that the map has straightened their outline to a line: no field can be found to lie in them. */
    @Test
    void whatIsTooSmallForTheMap() {
        assertThat(Counties.all())
                .filteredOn(county -> county.rings().isEmpty())
                .extracting(County::fips)
                .containsExactly("51610");
    }

    @ParameterizedTest
    @CsvSource({
        "MO,St. Louis,29189",
        "MO,Saint Louis County,29189",
        "MO,St. Louis city,29510",
        "IL,De Kalb,17037",
        "IL,LaSalle County,17099",
        "MO,Sainte Genevieve,29186",
        "NM,Doña Ana,35013",
        "NM,Dona Ana,35013",
        "LA,Orleans Parish,22071",
        "VA,Fairfax,51059",
        "VA,Fairfax City,51600",
        "VA,James City,51095",
        "IA,O'Brien,19141",
        "IA,OBrien,19141",
        "MD,Prince George’s,24033"
    })
    void howeverItIsSpelled(String state, String typed, String fips) {
        assertThat(Counties.named(state, typed)).get().extracting(County::fips).isEqualTo(fips);
    }

    @Test
    void anotherNameIsNone() {
        assertThat(Counties.named("IA", "Marrow")).isEmpty();
        assertThat(Counties.named("MN", "Story")).isEmpty();
    }

    /** Lines that the law puts on a parallel lie nearer to it than the error that is told, survey and all. */
    @ParameterizedTest
    @CsvSource({"KS,NE,40", "IA,MN,43.5", "CO,WY,41", "AZ,UT,37", "KS,OK,37", "CA,OR,42"})
    void legalParallels(String south, String north, double parallel) {
        Set<Corner> shared = corners(south);
        shared.retainAll(corners(north));
        assertThat(shared)
                .hasSizeGreaterThan(9)
                .allSatisfy(corner -> assertThat(Math.abs(corner.latitude() - parallel) * FT_PER_DEGREE)
                        .isLessThan(Counties.ERROR_FT));
    }

    private record Corner(double longitude, double latitude) {}

    private static Set<Corner> corners(String state) {
        Set<Corner> corners = new HashSet<>();
        Counties.all().stream()
                .filter(county -> county.state().equals(state))
                .flatMap(county -> county.rings().stream())
                .forEach(ring -> {
                    double[] degrees = ring.degrees();
                    for (int i = 0; i < degrees.length; i += 2) {
                        corners.add(new Corner(degrees[i], degrees[i + 1]));
                    }
                });
        return corners;
    }
}
