package plumbrow.documents.workbook.form;

import java.util.Arrays;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.GrowthStage;

/**
 * A growth stage of one of the crops; which crop's it must be stands elsewhere in the row.
 *
 * @param mayBeNone whether "none" may stand there, for a label that sets no such limit; it is kept as empty text
 */
public record StageKind(boolean mayBeNone) implements Kind<String> {
    private static final String NONE = "none";

    @Override
    public String words() {
        return "a growth stage such as V4 or R1, for wheat a Feekes stage such as 8, or PRE before the crop is up"
                + (mayBeNone ? "; none where the label sets no limit" : "");
    }

    @Override
    public String read(Cell cell) throws Misread {
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        String stage = GrowthStage.tidy(cell.found());
        if (mayBeNone && stage.equalsIgnoreCase(NONE)) {
            return "";
        }
        if (Arrays.stream(Crop.values())
                .noneMatch(crop -> GrowthStage.place(crop, stage).isPresent())) {
            throw new Misread(words());
        }
        return stage;
    }

    @Override
    public Cell show(String value) {
        return new Cell.Text(value.isEmpty() ? NONE : value);
    }

    @Override
    public Storage<String> storage() {
        return Storage.TEXT;
    }
}
