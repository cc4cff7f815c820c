package plumbrow.science.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Humidity, wet bulb and Delta T, against values from outside")
class AirTest {

    @Test
    @DisplayName("4.1 mean of es(25.1) and es(19.1), FAO form: 2.698918 kPa, R package sirad (verified)")
    void sirad() {
        assertPrinted((AirMoisture.saturationKpaFao(25.1) + AirMoisture.saturationKpaFao(19.1)) / 2, "2.698918");
    }

    @Test
    @DisplayName("4.1 FAO-56 examples 3 and 5 (memory)")
    void fao() {
        double warm = AirMoisture.saturationKpaFao(24.5);
        double cool = AirMoisture.saturationKpaFao(15);
        assertPrinted(warm, "3.075");
        assertPrinted(cool, "1.705");
        assertPrinted((warm + cool) / 2, "2.39");
        double actual = (AirMoisture.saturationKpaFao(18) * .82 + AirMoisture.saturationKpaFao(25) * .54) / 2;
        assertPrinted(actual, "1.70");
    }

    @Test
    @DisplayName(
            "4.1 at 20 °C saturated air holds 23.334 hPa (computed); the two forms differ by less than 0.3 % above freezing")
    void saturation() {
        assertPrinted(AirMoisture.saturationHpa(20), "23.334");
        for (double celsius = 0; celsius <= 50; celsius++) {
            assertThat(AirMoisture.saturationKpaFao(celsius) * 10)
                    .isCloseTo(AirMoisture.saturationHpa(celsius), within(.003 * AirMoisture.saturationHpa(celsius)));
        }
    }

    @ParameterizedTest(name = "{0} h")
    @CsvSource({
        "05, 11.0, 96, .47, 10.39, .053",
        "07, 14.5, 82, 2.03, 11.46, .297",
        "09, 19.0, 64, 4.39, 12.04, .791",
        "11, 23.5, 48, 7.09, 11.86, 1.506",
        "13, 27.0, 38, 9.35, 11.48, 2.211",
        "15, 28.5, 32, 10.84, 10.21, 2.646",
        "17, 27.0, 36, 9.72, 10.66, 2.282",
        "18, 24.5, 45, 7.71, 11.79, 1.691",
        "20, 18.0, 74, 3.11, 13.30, .537"
    })
    @DisplayName("4.7 a day in May, hour by hour (computed)")
    void dayInMay(String hour, double celsius, double humidity, String delta, String dewPoint, String deficit) {
        assertThat(WetBulb.holds(celsius, humidity)).as(hour).isTrue();
        assertPrinted(celsius - WetBulb.celsius(celsius, humidity), delta);
        assertPrinted(AirMoisture.dewPointC(celsius, humidity), dewPoint);
        assertPrinted(VapourDeficit.kpa(celsius, humidity), deficit);
    }

    @ParameterizedTest(name = "{0} °C, dew point {1} °C")
    @CsvSource({"24.4, 10.6, 41.8, 8.20", "24.444444, 10.555556, 41.6, 8.25"})
    @DisplayName("10.1 and 10.2 humidity and Delta T from stations that give a dew point (computed)")
    void fromDewPoint(double celsius, double dewPoint, String humidity, String delta) {
        double pct = AirMoisture.humidityPct(celsius, dewPoint);
        assertPrinted(pct, humidity);
        assertPrinted(celsius - WetBulb.celsius(celsius, pct), delta);
    }

    @Test
    @DisplayName("4.2 inside its range the wet bulb stays near the psychrometer; cold and dry is refused")
    void range() {
        for (double celsius = -20; celsius <= 50; celsius += 2.5) {
            for (double humidity = 10; humidity <= 99; humidity += 3) {
                if (WetBulb.holds(celsius, humidity)) {
                    assertThat(WetBulb.celsius(celsius, humidity))
                            .as("%s °C %s %%", celsius, humidity)
                            .isCloseTo(WetBulb.psychrometer(celsius, humidity), within(1.0));
                }
            }
        }
        assertThat(WetBulb.holds(-10, 20)).isFalse();
        assertThatThrownBy(() -> WetBulb.FIGURE.answer(Map.of("temperature_c", "-10", "humidity_pct", "20")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("both cold and dry");
    }

    @ParameterizedTest
    @CsvSource({"1.99, caution", "2, preferred", "8, preferred", "8.01, marginal", "10, marginal", "10.01, unsuitable"})
    @DisplayName("4.2 classes of Delta T; within 0.5 of an edge they are borderline")
    void classes(double delta, String name) {
        assertThat(DeltaT.classOf(delta)).isEqualTo(name);
        assertThat(DeltaT.borderline(delta)).isTrue();
        assertThat(DeltaT.borderline(5)).isFalse();
    }

    @Test
    @DisplayName("Dew point and humidity undo each other; a dew point above the air is refused, rounding apart")
    void roundTrip() {
        for (double humidity = 5; humidity <= 100; humidity += 5) {
            assertThat(AirMoisture.humidityPct(22, AirMoisture.dewPointC(22, humidity)))
                    .isCloseTo(humidity, within(1e-9));
        }
        assertThat(DewPoint.HUMIDITY
                        .answer(Map.of("temperature_c", "10", "dew_point_c", "10.3"))
                        .number("humidity_pct"))
                .isEqualTo(100);
        assertThatThrownBy(() -> DewPoint.HUMIDITY.answer(Map.of("temperature_c", "10", "dew_point_c", "12")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith("dew_point_c");
    }

    @Test
    @DisplayName("4.3 a height below the roughness is refused; wind falls towards the ground")
    void wind() {
        assertThat(WindAtHeight.factor(10, 1, .03, 0)).isLessThan(WindAtHeight.factor(10, 2, .03, 0));
        assertThat(WindAtHeight.factor(10, 10, .03, 0)).isEqualTo(1);
        assertThatThrownBy(() -> WindAtHeight.FIGURE.answer(Map.of("speed", "5", "height", "10", "to_height", "0.02")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith("to_height");
    }
}
