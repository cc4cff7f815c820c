package plumbrow.advice.field;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrowthStageTest {
    /** Orders as the sources of {@link GrowthStage} give them. */
    @ParameterizedTest
    @CsvSource({
        "CORN, PRE, VE",
        "CORN, V2, V10",
        "CORN, V22, VT",
        "CORN, VT, R1",
        "SOYBEAN, VE, VC",
        "SOYBEAN, VC, V1",
        "SOYBEAN, V20, R1",
        "SOYBEAN, R7, R8",
        "WHEAT, 9, 10",
        "WHEAT, 10, 10.1",
        "WHEAT, 10.5, 10.5.1",
        "WHEAT, 10.5.4, 11",
        "WHEAT, 11.1, 11.4"
    })
    void comesBefore(Crop crop, String earlier, String later) {
        assertThat(GrowthStage.place(crop, earlier).orElseThrow())
                .isLessThan(GrowthStage.place(crop, later).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"CORN, VC", "CORN, R7", "CORN, V0", "SOYBEAN, VT", "SOYBEAN, R9", "WHEAT, V3", "WHEAT, 11.5", "CORN, 6"
    })
    void aCropHasItsOwnStages(Crop crop, String stage) {
        assertThat(GrowthStage.place(crop, stage)).isEmpty();
    }

    @Test
    void caseAndBlanksDoNotCount() {
        assertThat(GrowthStage.place(Crop.CORN, " v4 ")).isEqualTo(GrowthStage.place(Crop.CORN, "V4"));
    }

    @ParameterizedTest
    @CsvSource({"CORN", "SOYBEAN", "WHEAT"})
    void eachStageOnce(Crop crop) {
        assertThat(GrowthStage.of(crop)).doesNotHaveDuplicates().startsWith(GrowthStage.PRE);
    }
}
