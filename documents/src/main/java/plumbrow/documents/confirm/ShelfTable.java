package plumbrow.documents.confirm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.UseTerms;

/** The tables of the shelf that a label fills, by the names of their sheets in the workbook. */
public enum ShelfTable {
    USES("label_uses", "Rates and limits", LabelUse.class, "crop"),
    TERMS("terms", "How it is sprayed and when", UseTerms.class, "crop"),
    SOIL_RATES(
            "soil_rates",
            "Rates by soil",
            SoilRate.class,
            "crop textures organicMatterLowPct organicMatterHighPct phLow phHigh erodible residueLowPct residueHighPct "
                    + "earliestStage latestStage forbidden"),
    ACTIVES("actives", "Active ingredient in the product", ActiveContent.class, "ingredient per"),
    LIMITS("active_limits", "Most active ingredient in a season", ActiveLimit.class, "crop ingredient basis"),
    SETBACKS("setbacks", "Distances", Setback.class, "kind downwindOnly"),
    PLANT_BACKS("plant_backs", "The next crop", PlantBack.class, "nextCrop forPhFrom forPhBelow condition"),
    MIX_RULES("mix_rules", "In the same tank", MixRule.class, "partner"),
    CARE("care", "People, water and bees", ProductCare.class, "");

    private final String word;
    private final String title;
    private final Class<? extends Record> row;
    private final String key;

    ShelfTable(String word, String title, Class<? extends Record> row, String key) {
        this.word = word;
        this.title = title;
        this.row = row;
        this.key = key;
    }

    /** The name of its sheet in the workbook. */
    public String word() {
        return word;
    }

    /** What it is about, in a person's words. */
    public String title() {
        return title;
    }

    Class<? extends Record> row() {
        return row;
    }

    /** The properties by which a row of a product is told from its others. */
    List<String> key() {
        return key.isEmpty() ? List.of() : List.of(key.split(" ", -1));
    }

    public static Optional<ShelfTable> of(String word) {
        return Arrays.stream(values()).filter(table -> table.word.equals(word)).findFirst();
    }
}
