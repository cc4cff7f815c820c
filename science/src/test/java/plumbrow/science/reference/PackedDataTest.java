package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.Status;

/** The sets that come with Plumbrow. */
class PackedDataTest {
    private static final String AGAIN =
            "Review what changed, then: cd science/src/main/resources/plumbrow/science/reference && sha256sum *.csv > "
                    + Checksums.FILE;

    @Test
    void nothingIsWrong() {
        assertThat(DataCheck.packed().troubles().stream().map(Trouble::sentence))
                .as(AGAIN)
                .isEmpty();
    }

    @Test
    void noSumIsLeftOfAFileThatIsGone() {
        Map<String, String> sums = Checksums.read(Packed.text(Checksums.FILE));
        assertThat(sums.keySet())
                .as(AGAIN)
                .containsExactlyInAnyOrder(Stream.concat(
                                Stream.of(Sources.FILE),
                                Arrays.stream(ReferenceSet.values()).map(ReferenceSet::file))
                        .toArray(String[]::new));
    }

    /** Counts by hand of the sets as delivered: a row that is lost or a status that is raised shows here. */
    @Test
    void rowsByStatus() {
        Map<String, Map<Status, Integer>> found = new TreeMap<>();
        DataCheck.packed().sets().forEach(set -> found.put(set.file(), set.byStatus()));
        assertThat(found.get("active-ingredients.csv")).isEqualTo(Map.of(Status.VERIFIED, 735, Status.MEMORY, 138));
        assertThat(found.get("efficacy.csv")).isEqualTo(Map.of(Status.VERIFIED, 715));
        assertThat(found.get("reportable-quantities.csv")).isEqualTo(Map.of(Status.VERIFIED, 110));
        assertThat(found.get("movement.csv")).isEqualTo(Map.of(Status.VERIFIED, 64, Status.MEMORY, 3));
        assertThat(found.get("weeds.csv"))
                .isEqualTo(Map.of(Status.VERIFIED, 150, Status.COMPUTED, 39, Status.PRACTICE, 1, Status.MEMORY, 30));
        assertThat(found.get("insects.csv"))
                .isEqualTo(Map.of(Status.VERIFIED, 186, Status.COMPUTED, 1, Status.PRACTICE, 1, Status.MEMORY, 19));
        assertThat(found.get("typical-values.csv"))
                .isEqualTo(Map.of(Status.VERIFIED, 248, Status.COMPUTED, 417, Status.PRACTICE, 134, Status.MEMORY, 33));
    }

    /** Sources that disagree under the same words are known, and stay so. */
    @Test
    void contested() {
        assertThat(DataCheck.packed().contested().stream().map(DataReport.Contested::about))
                .hasSize(10)
                .anyMatch(about -> about.startsWith("thiamethoxam honeybee_oral_ld50"))
                .anyMatch(about -> about.startsWith("glyphosate rainbow_trout_lc50_96h"));
    }

    @Test
    void noProductNameAndNoUnfitPlace() {
        Pattern unfit = Pattern.compile(
                "(?i)zlibrary|pdfslide|moam\\.info|datapdf|slideblast|vdocuments|studymode|\\b(registry|repo)\\.|®|™");
        for (ReferenceSet set : ReferenceSet.values()) {
            assertThat(Packed.text(set.file())
                            .lines()
                            .filter(line -> unfit.matcher(line).find()))
                    .as(set.file())
                    .isEmpty();
        }
    }

    @Test
    void everySubstanceHasItsGroup() {
        assertThat(Substances.all())
                .hasSize(79)
                .allSatisfy(substance ->
                        assertThat(substance.choose(Property.GROUP_NUMBER)).isPresent());
        List<String> kinds = Substances.all().stream().map(Substance::kind).toList();
        assertThat(kinds.stream().filter("herbicide"::equals)).hasSize(46);
        assertThat(kinds.stream().filter("insecticide"::equals)).hasSize(19);
        assertThat(kinds.stream().filter("fungicide"::equals)).hasSize(14);
    }
}
