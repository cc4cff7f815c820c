package plumbrow.documents.confirm;

import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;

/** Growth stages are text on the shelf, but not any text. */
final class StageCheck {
    private StageCheck() {}

    static String checked(ProposedValue value, String text) {
        if (!value.property().endsWith("_stage") || text.equals("none")) {
            return text;
        }
        Crop crop = (Crop) ValueText.kept(
                value.row().table().attribute("crop"), value.row().key().getOrDefault("crop", ""));
        String stage = GrowthStage.tidy(text);
        if (GrowthStage.place(crop, stage).isEmpty()) {
            throw new NotSoException("'" + text + "' is not a stage of " + crop.word() + "; expected "
                    + GrowthStage.words(crop) + ", or none where the label sets no limit.");
        }
        return stage;
    }
}
