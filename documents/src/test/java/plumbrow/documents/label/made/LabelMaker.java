package plumbrow.documents.label.made;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Makes labels: the same seed and layout give the same label. */
final class LabelMaker {
    private LabelMaker() {}

    static MadeLabel make(Layout layout, long seed) {
        Random random = new Random(seed * 37 + layout.name().hashCode());
        Pesticide product = Pesticide.invent(random);
        Draft draft = new Draft(layout, random);
        FrontWriter.write(draft, product);
        PeopleWriter.write(draft);
        EarthWriter.write(draft, product);
        DirectionsWriter.write(draft, product);
        UseWriter.write(draft, product);
        RotationWriter.write(draft);
        StorageWriter.write(draft);
        byte[] file = switch (layout.press()) {
            case BOOKLET, TYPEWRITER, THREE_COLUMNS, FOUR_COLUMNS, PANELS -> ColumnPress.print(draft);
            case TEXT -> TextPress.print(draft);
            case WEB_PAGE -> WebPress.page(draft);
            default -> WebPress.print(draft, product.name());
        };
        String end = switch (layout.press()) {
            case TEXT -> ".txt";
            case WEB_PAGE -> ".html";
            default -> ".pdf";
        };
        String name = layout.name().toLowerCase(Locale.ROOT).replaceAll("\\W+", "-") + "-" + seed + end;
        return new MadeLabel(layout.name(), name, file, List.copyOf(draft.truth));
    }
}
