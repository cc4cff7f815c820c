package plumbrow.documents.label.proposal;

import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelReading;

/** Growth stages of a label in the words of the shelf; null where the crop has no such stage. */
final class Stages {
    private Stages() {}

    static @Nullable String earliest(LabelReading reading, Crop crop) {
        return stated(reading) instanceof LabelContent.Stage one ? known(one.earliest(), crop) : null;
    }

    /** The last stage allowed; before a stage means the one that comes before it. */
    static @Nullable String latest(LabelReading reading, Crop crop) {
        if (!(stated(reading) instanceof LabelContent.Stage one)) {
            return null;
        }
        if (!one.latest().isEmpty()) {
            return known(one.latest(), crop);
        }
        OptionalInt place = GrowthStage.place(crop, one.before());
        List<String> stages = GrowthStage.of(crop);
        return place.isEmpty() || place.getAsInt() == 0 ? null : stages.get(place.getAsInt() - 1);
    }

    private static @Nullable LabelContent stated(LabelReading reading) {
        return reading instanceof LabelReading.Stated stated ? stated.content() : null;
    }

    private static @Nullable String known(String stage, Crop crop) {
        return GrowthStage.place(crop, stage).isPresent() ? stage : null;
    }
}
