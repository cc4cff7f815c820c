package plumbrow.documents.label.proposal;

import java.util.List;
import java.util.function.Function;
import plumbrow.advice.field.Crop;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.label.grammar.CropWords;

/** What a label says for one crop of the shelf: its own words first, then those for every crop. */
record CropReadings(LabelPaper label, Crop crop) {

    /** Whether any rate, limit or interval names the crop. */
    boolean named() {
        return label.readings().stream()
                .anyMatch(reading -> reading instanceof LabelReading.Stated stated
                        && stated.kind() != LabelKind.PLANT_BACK
                        && CropWords.shelf(cropOf(stated.content())).contains(crop));
    }

    /** What it says of a kind: one statement, several that differ, something unclear, or nothing. */
    LabelReading of(LabelKind kind) {
        return of(kind, content -> true);
    }

    LabelReading of(LabelKind kind, Function<LabelContent, Boolean> which) {
        List<LabelReading.Stated> own = statements(kind, true, which);
        List<LabelReading.Stated> all = own.isEmpty() ? statements(kind, false, which) : own;
        List<LabelReading.OnPaper> unclear = label.unclear(kind);
        long values = all.stream().map(one -> value(one.content())).distinct().count();
        if (values > 1) {
            return new LabelReading.Differing(kind, all);
        }
        if (!unclear.isEmpty()) {
            return unclear.get(0);
        }
        return all.isEmpty() ? new LabelReading.NotStated(kind) : all.get(0);
    }

    /** Every statement of a kind that names the crop, or that names none. */
    List<LabelReading.Stated> statements(LabelKind kind, boolean named, Function<LabelContent, Boolean> which) {
        return label.all(kind).stream()
                .filter(one -> which.apply(one.content()))
                .filter(one -> {
                    String printed = cropOf(one.content());
                    return named ? CropWords.shelf(printed).contains(crop) : printed.isEmpty();
                })
                .toList();
    }

    static String cropOf(LabelContent content) {
        if (content instanceof LabelContent.Use use) {
            return use.crop();
        }
        if (content instanceof LabelContent.Interval interval) {
            return interval.crop();
        }
        if (content instanceof LabelContent.Ban ban) {
            return ban.crop();
        }
        if (content instanceof LabelContent.Most most) {
            return most.crop();
        }
        if (content instanceof LabelContent.Stage stage) {
            return stage.crop();
        }
        if (content instanceof LabelContent.Height height) {
            return height.crop();
        }
        return content instanceof LabelContent.Count count ? count.crop() : "";
    }

    private static String value(LabelContent content) {
        if (content instanceof LabelContent.Interval interval) {
            return interval.time().words();
        }
        if (content instanceof LabelContent.Most most) {
            return most.amount().words();
        }
        if (content instanceof LabelContent.Height height) {
            return height.amount().words();
        }
        if (content instanceof LabelContent.Stage stage) {
            return stage.earliest() + "|" + stage.latest() + "|" + stage.before();
        }
        return content instanceof LabelContent.Count count ? String.valueOf(count.most()) : content.words();
    }
}
