package plumbrow.documents.confirm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Of label and workbook the one that forbids more. */
class TwoWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "USES | high_rate | 1.5 qt | 2 qt | 1.5 qt",
                "USES | high_rate | 48 fl oz | 2 qt | 48 fl oz",
                "USES | high_rate | 1 lb | 2 qt | ''",
                "USES | phi_days | 30 | 60 | 60",
                "USES | most_applications | 2 | 1 | 1",
                "TERMS | rei_hours | 12 | 24 | 24",
                "TERMS | latest_stage | V6 | V8 | V6",
                "TERMS | latest_stage | none | V8 | V8",
                "TERMS | earliest_stage | VE | V2 | V2",
                "TERMS | finest | M | C | C",
                "TERMS | coarsest | M | C | M",
                "TERMS | feeding_forbidden | no | yes | yes",
                "TERMS | wind_highest_mph | 10 | 15 | 10",
                "SETBACKS | distance_ft | 66 | 200 | 200",
                "PLANT_BACKS | days | 155 | 120 | 155",
                "CARE | wear | goggles | gloves | gloves; goggles",
                "TERMS | methods | ground broadcast; aerial | ground broadcast | ground broadcast",
            })
    void theStricterCounts(ShelfTable table, String property, String one, String other, String stricter) {
        RowName row = new RowName(table, Map.of("crop", "corn"), 1);
        assertThat(TwoWords.stricter(row, property, one, other).orElse("")).isEqualTo(stricter);
        assertThat(TwoWords.stricter(row, property, other, one).orElse("")).isEqualTo(stricter);
    }
}
