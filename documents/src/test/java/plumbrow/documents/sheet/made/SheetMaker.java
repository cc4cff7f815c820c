package plumbrow.documents.sheet.made;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import plumbrow.documents.sheet.SheetSection;

/** Makes sheets: the same seed and house give the same sheet. */
final class SheetMaker {
    private SheetMaker() {}

    static MadeSheet make(House house, long seed) {
        Random random = new Random(seed * 31 + house.name().hashCode());
        Draft draft = new Draft(house, Product.invent(random), random);
        boolean datesFirst = random.nextBoolean();
        for (int place = 1; place <= SheetSection.values().length; place++) {
            SheetSection section = house.wording().at(place);
            draft.blocks.add(new Block.Heading(heading(house, section, place)));
            section(draft, section, datesFirst);
            if (house.press() == House.Press.RUNNING_HEADS && section == SheetSection.PROPERTIES) {
                int middle = draft.blocks.size() - 4;
                draft.blocks.add(middle, new Block.Heading(heading(house, section, place) + " (continued)"));
                draft.blocks.add(middle, new Block.NewPage());
            }
            if (house.second() == House.Second.SPANISH_AFTER) {
                spanish(draft, section, place);
            }
        }
        byte[] file = switch (house.press()) {
            case TWO_COLUMNS, TYPEWRITER, BESIDE -> ColumnPress.print(draft);
            case WEB_PAGE -> WebPress.page(draft);
            case PLAIN_TEXT -> TextPress.print(draft);
            default -> WebPress.print(draft);
        };
        String end = house.press() == House.Press.WEB_PAGE
                ? ".html"
                : house.press() == House.Press.PLAIN_TEXT ? ".txt" : ".pdf";
        String name = house.name().toLowerCase(Locale.ROOT).replaceAll("\\W+", "-") + "-" + seed + end;
        return new MadeSheet(house.name(), name, file, List.copyOf(draft.truth));
    }

    private static String heading(House house, SheetSection section, int place) {
        String heading = house.numbering().heading(place, house.wording().title(section));
        return house.second() == House.Second.FRENCH_SLASH ? heading + " / " + Wording.french(section) : heading;
    }

    private static void section(Draft draft, SheetSection section, boolean datesFirst) {
        switch (section) {
            case IDENTIFICATION -> {
                IdentityWriter.write(draft);
                if (datesFirst) {
                    IdentityWriter.dates(draft);
                }
            }
            case HAZARDS -> HazardWriter.write(draft);
            case COMPOSITION -> IngredientWriter.write(draft);
            case FIRST_AID -> AdviceWriter.firstAid(draft);
            case FIRE -> AdviceWriter.fire(draft);
            case RELEASE -> AdviceWriter.release(draft);
            case HANDLING -> AdviceWriter.handling(draft);
            case EXPOSURE -> {
                LimitWriter.write(draft);
                AdviceWriter.protection(draft);
            }
            case PROPERTIES -> PropertyWriter.write(draft);
            case STABILITY -> AdviceWriter.stability(draft);
            case TOXICOLOGY -> ToxicityWriter.write(draft);
            case ECOLOGY -> EcologyWriter.write(draft);
            case DISPOSAL -> AdviceWriter.disposal(draft);
            case TRANSPORT -> TransportWriter.transport(draft);
            case REGULATION -> TransportWriter.regulation(draft);
            case OTHER -> {
                if (!datesFirst) {
                    IdentityWriter.dates(draft);
                }
                draft.paragraph("The information given here is believed to be right; no warranty is made.");
            }
        }
    }

    /** The same section in Spanish: headings, advice and a number that must not be read twice. */
    private static void spanish(Draft draft, SheetSection section, int place) {
        draft.blocks.add(new Block.Heading("SECCIÓN " + place + ": " + Wording.spanish(section)));
        draft.paragraph("Lea la etiqueta antes de usar el producto y consulte a un médico en caso de duda.");
        if (section == SheetSection.PROPERTIES) {
            draft.pair("Punto de inflamación", "99 °C");
            draft.pair("pH", "7,1");
        }
    }
}
