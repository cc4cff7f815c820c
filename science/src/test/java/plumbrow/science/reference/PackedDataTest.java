package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PackedDataTest {
    @Test
    void clean() {
        DataReport report = DataCheck.packed();
        report.contested().forEach(System.out::println);
        report.sets().forEach(System.out::println);
        assertThat(report.troubles().stream().map(Trouble::sentence).toList()).isEmpty();
    }
}
