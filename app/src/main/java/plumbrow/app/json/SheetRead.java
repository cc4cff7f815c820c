package plumbrow.app.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Mark;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.SheetSection;
import plumbrow.documents.sheet.ValueKind;

/**
 * One file as read.
 *
 * @param trouble why it could not be read; null where it could
 * @param sections headings found, in the order of the paper
 * @param missingSections titles of those of the sixteen that the sheet leaves out
 * @param values all values found, and each kind that a sheet states once though this one doesn't
 */
public record SheetRead(
        String file,
        @Nullable String trouble,
        int pages,
        boolean needsTyping,
        List<String> sections,
        List<String> missingSections,
        List<Value> values,
        List<String> notices) {

    /**
     * One thing the sheet says or fails to say.
     *
     * @param state stated, no data, unclear, differing, not stated
     * @param says in a person's words
     * @param content its parts; null where nothing is clearly stated
     * @param page where it begins; null where it stands nowhere
     * @param words the very words; null as above
     * @param marks boxes on pages in points from the upper left corner
     */
    public record Value(
            ValueKind kind,
            String state,
            String says,
            @Nullable Content content,
            @Nullable Integer page,
            @Nullable String words,
            List<Mark> marks) {

        static Value of(Reading reading) {
            Content content = reading instanceof Reading.Stated stated ? stated.content() : null;
            return reading instanceof Reading.OnPaper paper
                    ? new Value(
                            reading.kind(),
                            state(reading),
                            reading.words(),
                            content,
                            paper.quote().page(),
                            paper.quote().words(),
                            paper.quote().marks())
                    : new Value(reading.kind(), state(reading), reading.words(), null, null, null, List.of());
        }

        private static String state(Reading reading) {
            if (reading instanceof Reading.Stated) {
                return "stated";
            }
            if (reading instanceof Reading.NoData) {
                return "no data";
            }
            if (reading instanceof Reading.Unclear) {
                return "unclear";
            }
            return reading instanceof Reading.Differing ? "differing" : "not stated";
        }
    }

    public static SheetRead of(String file, SafetySheet sheet) {
        return new SheetRead(
                file,
                null,
                sheet.pages(),
                sheet.needsTyping(),
                sheet.sections().stream().map(found -> found.heading().words()).toList(),
                sheet.missingSections().stream().map(SheetSection::title).toList(),
                sheet.account().stream().map(Value::of).toList(),
                sheet.notices());
    }

    public static SheetRead failed(String file, String trouble) {
        return new SheetRead(file, trouble, 0, false, List.of(), List.of(), List.of(), List.of());
    }
}
