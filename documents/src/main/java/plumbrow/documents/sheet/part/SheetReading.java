package plumbrow.documents.sheet.part;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.sheet.FoundSection;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.section.Sections;

/** Lets every part reader read its subject. */
public final class SheetReading {
    /** Ingredients stand before what is said of them. */
    private static final List<Part> PARTS = List.of(
            new IdentityPart(),
            new MakerPart(),
            new DatePart(),
            new HazardPart(),
            new IngredientPart(),
            new TextPart(),
            new StoragePart(),
            new LimitPart(),
            new PropertyPart(),
            new AcutePart(),
            new EcoPart(),
            new TransportPart(),
            new RegulationPart());

    /** A long sheet has 60,000; work with some of them grows faster than they do. */
    private static final int MOST_LETTERS = 300_000;

    private SheetReading() {}

    /**
     * What a paper says.
     *
     * @throws PaperTrouble if it is far longer than any sheet
     */
    public static SafetySheet of(Paper paper) {
        long letters = paper.rows().stream()
                .flatMap(row -> row.cells().stream())
                .flatMap(cell -> cell.words().stream())
                .mapToLong(word -> word.text().length())
                .sum();
        if (letters > MOST_LETTERS) {
            throw new PaperTrouble("The file holds more than " + MOST_LETTERS + " letters; expected one safety sheet.");
        }
        Sections sections = Sections.of(paper);
        SheetText text = new SheetText(paper, sections);
        Readings readings = new Readings();
        PARTS.forEach(part -> part.read(text, readings));
        List<FoundSection> found = sections.all().stream()
                .map(section -> new FoundSection(section.section(), section.heading()))
                .toList();
        return new SafetySheet(
                paper.kind(),
                paper.pages().size(),
                paper.needsTyping(),
                found,
                readings.inOrder(),
                notices(paper, found));
    }

    private static List<String> notices(Paper paper, List<FoundSection> found) {
        List<String> notices = new ArrayList<>(paper.notices());
        if (paper.needsTyping()) {
            notices.add("No page has text in it, as when paper is scanned: someone has to type what it says.");
        } else if (!paper.blankPages().isEmpty()) {
            notices.add("No text on page "
                    + String.join(
                            ", ",
                            paper.blankPages().stream().map(String::valueOf).toList())
                    + ": what stands there has to be typed.");
        }
        if (found.isEmpty() && !paper.needsTyping()) {
            notices.add("None of the sixteen sections was found: this may not be a safety data sheet.");
        }
        return notices;
    }
}
