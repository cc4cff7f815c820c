package plumbrow.science.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as people read them. */
class NumbersTest {
    @DisplayName("Outside a working a number has at most four digits that count, and never an exponent")
    @ParameterizedTest(name = "{0} reads {1}")
    @CsvSource({
        "0, 0",
        "0.710994, 0.711",
        "3.12857, 3.129",
        "0.00195211, 0.001952",
        "6.88425E-17, less than 0.0001",
        "-4.95E-17, less than 0.0001",
        "286, 286",
        "99.99999999, 100",
        "1.0000000000000002, 1",
        "-1.58091, −1.581",
        "43560, '43,560'",
        "1234.56, '1,235'",
        "9.9E11, '990,000,000,000'"
    })
    void atMostFourDigits(double value, String read) {
        assertThat(Numbers.read(value)).isEqualTo(read);
    }

    @DisplayName("What a source printed with an exponent is written out, or as a power of ten")
    @ParameterizedTest(name = "{0} reads {1}")
    @CsvSource({"1.31e-2, 0.0131", "7.5e-8, 7.5 × 10⁻⁸", "3e-12, 3 × 10⁻¹²", "1.2E+03, 1200", "II, II", "0.5, 0.5"})
    void printedNumbers(String value, String read) {
        assertThat(Numbers.printed(value)).isEqualTo(read);
    }

    @DisplayName("One counted thing stands in the singular; measures keep their sign")
    @ParameterizedTest(name = "{0} of {1}: {2}")
    @CsvSource({
        "1, applications, 1 application",
        "2, applications, 2 applications",
        "1, sites of action, 1 site of action",
        "1, ft, 1 ft",
        "1, lb ai/ac, 1 lb ai/ac",
        "0.5, % left, 0.5 % left",
        "1, classes, 1 class",
        "1, seasons in a row, 1 season in a row",
        "1, h, 1 h",
        "1, '', 1"
    })
    void oneIsSingular(double value, String unit, String read) {
        assertThat(Numbers.read(value, unit)).isEqualTo(read);
    }
}
