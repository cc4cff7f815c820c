package plumbrow.documents.label.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of plant-back tables that name several crops. */
class CropListTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "alfalfa | alfalfa",
                "Soybeans, dry beans, alfalfa | soybeans; dry beans; alfalfa",
                "Cotton and peanuts | cotton; peanuts",
                "Field corn, popcorn, and sweet corn | field corn; popcorn; sweet corn",
                "Corn/sorghum | corn; sorghum",
                "Small grains (wheat, barley, oats) | wheat; barley; oats",
                "Small grains (wheat, barley …) | wheat; barley; oats; rye; triticale",
                "Small grains (such as wheat and barley) | wheat; barley; oats; rye; triticale",
                "Small grains | wheat; barley; oats; rye; triticale",
                "Alfalfa, small grains (wheat, rye), potatoes | alfalfa; wheat; rye; potatoes",
                "Clover (red, white) | clover (red, white)",
                "Wheat (winter) | wheat (winter)",
                "All other rotational crops | all other rotational crops",
                "Any crop not listed, alfalfa | any crop not listed, alfalfa",
                "sorghum or millet | sorghum; millet",
                "Corn (field, seed | corn (field, seed)",
            })
    void everyCropStandsByItself(String printed, String crops) {
        assertThat(String.join("; ", CropList.of(printed))).isEqualTo(crops);
    }
}
