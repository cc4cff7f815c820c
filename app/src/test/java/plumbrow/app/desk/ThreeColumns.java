package plumbrow.app.desk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/** An invented label in small print, three columns beside each other on one page, as labels on bags are. */
final class ThreeColumns {
    private static final float SMALL = 6.5f;
    private static final float LINE = 8;
    private static final float WIDTH = 170;
    private static final float GUTTER = 16;

    private static final List<String> FRONT = List.of(
            "#Stonefly 3G",
            "!INSECTICIDE",
            "!ACTIVE INGREDIENT:",
            "Tefluthrin ............................. 3.0%",
            "OTHER INGREDIENTS: ............... 97.0%",
            "TOTAL: ............................. 100.0%",
            "!KEEP OUT OF REACH OF CHILDREN",
            "!CAUTION",
            "EPA Reg. No. 99990-63     EPA Est. 99990-IA-1",
            "!FIRST AID",
            "If swallowed: Call a poison control center or doctor at once for treatment advice. Do not induce vomiting"
                    + " unless told to do so by the poison control center or doctor.",
            "If on skin or clothing: Take off contaminated clothing. Rinse skin with plenty of water for 15 to 20"
                    + " minutes.",
            "Net contents 40 lb");
    private static final List<String> PEOPLE = List.of(
            "!PRECAUTIONARY STATEMENTS",
            "!Hazards to Humans and Domestic Animals",
            "Harmful if swallowed. Causes moderate eye irritation. Avoid contact with eyes or clothing. Wash hands with"
                    + " soap and water after handling and before eating, drinking, chewing gum, using tobacco or using"
                    + " the toilet. Remove and wash contaminated clothing before reuse.",
            "!PERSONAL PROTECTIVE EQUIPMENT (PPE)",
            "Mixers, loaders and applicators must wear: long-sleeved shirt and long pants, chemical-resistant gloves,"
                    + " shoes plus socks.",
            "Follow the maker's instructions for cleaning and maintaining protective equipment. If there are no such"
                    + " instructions for washables, use detergent and hot water. Keep and wash protective equipment"
                    + " apart from other laundry.",
            "!USER SAFETY RECOMMENDATIONS",
            "Users should wash hands before eating, drinking, chewing gum, using tobacco or using the toilet. Users"
                    + " should remove clothing at once if pesticide gets inside, then wash thoroughly and put on clean"
                    + " clothing.",
            "!ENVIRONMENTAL HAZARDS",
            "This product is very toxic to fish. Do not apply directly to water. Do not apply within 66 feet of"
                    + " streams.",
            "!AGRICULTURAL USE REQUIREMENTS",
            "Use this product only in accordance with its labeling and with the Worker Protection Standard, 40 CFR part"
                    + " 170. Do not enter or allow worker entry into treated areas during the restricted-entry"
                    + " interval (REI) of 24 hours.");
    private static final List<String> USE = List.of(
            "!DIRECTIONS FOR USE",
            "It is a violation of Federal law to use this product in a manner inconsistent with its labeling.",
            "Do not apply this product in a way that will contact workers or other persons, either directly or through"
                    + " drift. Only protected handlers may be in the area during application. For any requirements"
                    + " specific to your State or Tribe, consult the agency responsible for pesticide regulation.",
            "!PRODUCT INFORMATION",
            "Stonefly 3G is a granular insecticide for the control of corn rootworm larvae and of other soil insects"
                    + " at planting. Place the granules in the seed furrow or in a band over the open furrow and"
                    + " cover them with soil. Calibrate the equipment before the season and check it often, since"
                    + " the flow of granules changes with ground speed, moisture and bag.",
            "!CORN",
            "Apply 4 to 5.5 lb/A in furrow at planting. Make no more than 1 application per year. Do not harvest"
                    + " within 30 days of application.",
            "!ROTATIONAL CROPS",
            "Alfalfa, clover: Do not plant within 24 months of the last application.",
            "Small grains (wheat, barley, oats): Do not plant within 60 days of the last application.",
            "All other crops: Do not plant within 12 months of the last application.",
            "!STORAGE AND DISPOSAL",
            "Store in the closed bag in a cool, dry place. Do not contaminate water, food or feed.");

    private ThreeColumns() {}

    static byte[] label() {
        PDFont plain = new PDType1Font(FontName.HELVETICA);
        PDFont bold = new PDType1Font(FontName.HELVETICA_BOLD);
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.LETTER);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                float left = 36;
                for (List<String> column : List.of(FRONT, PEOPLE, USE)) {
                    float top = 740;
                    for (String paragraph : column) {
                        boolean name = paragraph.startsWith("#");
                        boolean heading = name || paragraph.startsWith("!");
                        float size = name ? 22 : heading ? 7.5f : SMALL;
                        PDFont font = heading ? bold : plain;
                        for (String line : lines(paragraph.replaceFirst("^[#!]", ""), font, size)) {
                            top -= name ? 26 : LINE;
                            content.beginText();
                            content.setFont(font, size);
                            content.newLineAtOffset(left, top);
                            content.showText(line);
                            content.endText();
                        }
                        top -= 4;
                    }
                    left += WIDTH + GUTTER;
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static List<String> lines(String text, PDFont font, float size) throws IOException {
        java.util.ArrayList<String> lines = new java.util.ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (font.getStringWidth(longer) / 1000 * size > WIDTH && !line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
