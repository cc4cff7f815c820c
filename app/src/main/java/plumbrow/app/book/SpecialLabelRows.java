package plumbrow.app.book;

import java.util.List;
import plumbrow.advice.field.Crop;
import plumbrow.advice.shelf.SpecialLabel;

/** Labels for one state beside the main one. */
final class SpecialLabelRows {
    /** Labels; the counties themselves come with {@link #COUNTY}. */
    static final RowKind<SpecialLabel> SPECIAL_LABEL = new RowKind<>(
            "special_label",
            "product crop state whole_state first_day last_day source",
            season -> season.shelf().labels().specialLabels(),
            (label, cells) -> cells.text(label.product())
                    .word(label.crop())
                    .text(label.state())
                    .yes(label.counties() == null)
                    .date(label.from())
                    .date(label.until())
                    .text(label.source()),
            row -> new SpecialLabel(
                    row.text(),
                    row.word(Crop.class),
                    row.text(),
                    row.yes() ? null : List.of(),
                    row.maybeDate(),
                    row.maybeDate(),
                    row.text()));

    static final RowKind<Listed> COUNTY = Listed.kind(
            "special_label_county",
            "special_label county",
            season -> season.shelf().labels().specialLabels(),
            label -> label.counties() == null ? List.of() : label.counties());

    private SpecialLabelRows() {}

    /** The labels with the counties they are for. */
    static List<SpecialLabel> withCounties(List<SpecialLabel> labels, List<Listed> counties) {
        return Listed.joined(
                labels,
                counties,
                (label, listed) -> new SpecialLabel(
                        label.product(),
                        label.crop(),
                        label.state(),
                        label.counties() == null ? null : listed,
                        label.from(),
                        label.until(),
                        label.source()));
    }
}
