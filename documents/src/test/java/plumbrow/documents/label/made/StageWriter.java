package plumbrow.documents.label.made;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Way;
import plumbrow.documents.sheet.Amount.Qualifier;

/** Growth stages, heights, warm air and forbidden ways. Draws of its own, so that the rest of a label stays as it was. */
final class StageWriter {
    private StageWriter() {}

    /** Sentences about a crop, without their full stops. */
    static List<String> ofCrop(Draft draft, Pesticide.Use use) {
        Random random = new Random(use.crop().hashCode() * 31L + use.harvest() * 7L + (long) (use.high() * 4));
        List<String> items = new ArrayList<>();
        String crop = use.crop();
        String word = crop.toLowerCase(java.util.Locale.ROOT).contains("corn")
                ? "corn"
                : crop.toLowerCase(java.util.Locale.ROOT).contains("wheat") ? "wheat" : "";
        boolean wheat = word.equals("wheat");
        if (random.nextBoolean() && !crop.equals("Grain sorghum")) {
            switch (random.nextInt(4)) {
                case 0 -> stage(draft, items, crop, wheat, "Apply from %s through %s", 2, 6);
                case 1 -> {
                    int last = wheat ? 8 : 7;
                    items.add("Do not apply after " + name(wheat, last));
                    draft.truth(LabelKind.STAGE, new LabelContent.Stage(crop, "", plain(wheat, last), ""));
                }
                case 2 -> {
                    int last = wheat ? 9 : 8;
                    items.add("Apply before " + name(wheat, last) + (wheat ? "" : " stage"));
                    draft.truth(LabelKind.STAGE, new LabelContent.Stage(crop, "", "", plain(wheat, last)));
                }
                default -> {
                    int last = wheat ? 7 : 5;
                    items.add("Postemergence applications may be made up to " + name(wheat, last));
                    draft.truth(LabelKind.STAGE, new LabelContent.Stage(crop, "", plain(wheat, last), ""));
                }
            }
        }
        if (random.nextBoolean() && word.equals("corn")) {
            int inches = List.of(12, 20, 30).get(random.nextInt(3));
            items.add(
                    random.nextBoolean()
                            ? "Do not apply to corn taller than " + inches + " inches"
                            : "Do not apply when corn exceeds " + inches + " inches in height");
            height(draft, LabelKind.CROP_HEIGHT, crop, inches);
        }
        if (random.nextInt(3) == 0) {
            int inches = List.of(3, 4, 6).get(random.nextInt(3));
            items.add(
                    random.nextBoolean()
                            ? "Apply when weeds are less than " + inches + " inches tall"
                            : "Apply before weeds exceed " + inches + " inches in height");
            height(draft, LabelKind.WEED_HEIGHT, crop, inches);
        }
        return items;
    }

    /** Paragraphs for every crop. */
    static void ofAll(Draft draft, Pesticide product) {
        Random random = new Random(product.registration().hashCode());
        if (random.nextInt(3) == 0) {
            int degrees = List.of(85, 90).get(random.nextInt(2));
            draft.paragraph(
                    random.nextBoolean()
                            ? "Do not apply when air temperatures exceed " + degrees + " degrees F."
                            : "Do not apply if the temperature is above " + degrees + "°F.");
            draft.truth(
                    LabelKind.AIR_TEMPERATURE,
                    new LabelContent.Measured(Draft.amount(Qualifier.AT_MOST, degrees, "°F"), Way.ANY));
        }
        if (random.nextInt(3) == 0) {
            String words = random.nextBoolean()
                    ? "Do not apply this product through any type of irrigation system"
                    : "Do not apply this product by chemigation";
            draft.paragraph(words + ".");
            draft.text(LabelKind.METHOD, words);
        }
    }

    private static void stage(
            Draft draft, List<String> items, String crop, boolean wheat, String words, int from, int to) {
        items.add(String.format(words, name(wheat, from), name(wheat, to)));
        draft.truth(LabelKind.STAGE, new LabelContent.Stage(crop, plain(wheat, from), plain(wheat, to), ""));
    }

    private static void height(Draft draft, LabelKind kind, String crop, int inches) {
        draft.truth(kind, new LabelContent.Height(crop, Draft.amount(Qualifier.AT_MOST, inches, "in")));
    }

    private static String name(boolean wheat, int stage) {
        return (wheat ? "Feekes " : "V") + stage;
    }

    private static String plain(boolean wheat, int stage) {
        return (wheat ? "" : "V") + stage;
    }
}
