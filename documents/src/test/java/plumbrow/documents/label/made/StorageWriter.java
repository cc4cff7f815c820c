package plumbrow.documents.label.made;

import plumbrow.documents.label.LabelKind;

/** The end of a label: numbers that mean nothing for the field. */
final class StorageWriter {
    private StorageWriter() {}

    static void write(Draft draft) {
        draft.heading("Storage and Disposal");
        if (draft.layout.isSmallPrint()) {
            parts(draft);
            return;
        }
        draft.paragraph(
                "Do not contaminate water, food or feed by storage or disposal. Store above 32 degrees F and away"
                        + " from seed and fertilizer.");
        draft.paragraph(
                "Nonrefillable container. Triple rinse promptly after emptying: fill the container 1/4 full with"
                        + " water and recap, shake for 10 seconds, and drain for 10 seconds after the flow begins to drip. Repeat"
                        + " two more times.");
        draft.heading("Warranty");
        draft.paragraph(
                "The maker of this invented product warrants nothing. Return it unopened within 30 days of purchase.");
    }

    /** Each under its own words, as on the label of a container, and who made it. */
    private static void parts(Draft draft) {
        draft.paragraph("Do not contaminate water, food or feed by storage or disposal.");
        part(
                draft,
                LabelKind.STORAGE,
                "Pesticide Storage",
                "Store in a cool, dry place out of reach of children. Do not freeze.");
        part(
                draft,
                LabelKind.DISPOSAL,
                "Pesticide Disposal",
                "Wastes resulting from the use of this product may be disposed of on site or at an approved waste disposal facility.");
        part(
                draft,
                LabelKind.CONTAINER,
                draft.pick("Container Handling", "Container Disposal"),
                "Nonrefillable container. Do not reuse or refill this container. Triple rinse promptly after emptying. Then offer for recycling if available, or puncture and dispose of in a sanitary landfill.");
        draft.heading("Warranty");
        draft.paragraph(
                "The maker of this invented product warrants nothing. Return it unopened within 30 days of purchase.");
        draft.paragraph("Questions or comments? Call 1-800-555-0188.");
        String maker = "Larkspur Field Supply, 12 Mill Road, Harrow, IA 50999";
        draft.paragraph(draft.pick("Distributed by: ", "Manufactured for: ") + maker);
        draft.text(LabelKind.MAKER, maker);
    }

    private static void part(Draft draft, LabelKind kind, String lead, String text) {
        draft.paragraph(lead + ": " + text);
        draft.text(kind, text);
    }
}
