package plumbrow.documents.label.made;

/** The end of a label: numbers that mean nothing for the field. */
final class StorageWriter {
    private StorageWriter() {}

    static void write(Draft draft) {
        draft.heading("Storage and Disposal");
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
}
