package plumbrow.documents.label.made;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;

/** Crops that must wait on treated ground. */
final class RotationWriter {
    private static final List<String> CROPS = List.of(
            "Field corn",
            "Soybeans",
            "Winter wheat",
            "Alfalfa",
            "Sugar beets",
            "Sunflowers",
            "Potatoes",
            "All other crops");

    private RotationWriter() {}

    static void write(Draft draft) {
        draft.heading(draft.pick("Rotational Crop Restrictions", "Crop Rotation", "Plant-back Intervals"));
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (String crop : CROPS) {
            if (draft.chance(3) && !crop.startsWith("All")) {
                continue;
            }
            int months = List.of(0, 4, 9, 10, 12, 18, 24).get(draft.random.nextInt(7));
            boolean days = months == 4 && draft.chance(2);
            String time = months == 0 ? draft.pick("Anytime", "Any time") : days ? "120 days" : months + " months";
            rows.add(List.of(crop, time));
            String small = crop.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + crop.substring(1);
            sentences.add(
                    months == 0
                            ? crop + " may be planted at any time after application."
                            : draft.pick(
                                    "Do not plant " + small + " within " + time + " of application.",
                                    crop + " may be planted " + time + " after application.",
                                    "Wait at least " + time + " before planting " + small + "."));
            draft.truth(
                    LabelKind.PLANT_BACK,
                    new LabelContent.Interval(
                            crop,
                            months == 0
                                    ? Draft.exactly(0, "d")
                                    : days ? Draft.exactly(120, "d") : Draft.exactly(months, "months"),
                            ""));
        }
        switch (draft.layout.rotation()) {
            case TABLE ->
                draft.blocks.add(new Block.Table(
                        List.of(50, 50),
                        List.of(
                                draft.pick("Rotational crop", "Crop"),
                                draft.pick("Plant-back interval", "Rotation interval after application")),
                        rows));
            case SENTENCES -> draft.paragraph(String.join(" ", sentences));
            case PAIRS -> rows.forEach(row -> draft.blocks.add(new Block.Paragraph(row.get(0) + ": " + row.get(1))));
        }
    }
}
