package plumbrow.documents.label.part;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.paper.Paper;

/** Lets every part reader read its subject. */
public final class LabelParts {
    private static final List<Part> PARTS = List.of(
            new FrontPart(),
            new SignalPart(),
            new ActivePart(),
            new GroupPart(),
            new GearPart(),
            new AidPart(),
            new TablePart(),
            new RotationPart(),
            new WaitPart(),
            new RatePart(),
            new MostPart(),
            new SetbackPart(),
            new DriftPart(),
            new SprayPart(),
            new MixPart(),
            new StagePart(),
            new HeightPart(),
            new NoticePart(),
            new AdjuvantPart(),
            new FormulationPart(),
            new MakerPart(),
            new PhonePart(),
            new WherePart(),
            new StoragePart());

    private LabelParts() {}

    public static LabelPaper read(Paper paper) {
        LabelText text = LabelText.of(paper);
        Readings readings = new Readings();
        PARTS.forEach(part -> part.read(text, readings));
        return new LabelPaper(
                paper.kind(), paper.pages().size(), paper.needsTyping(), readings.inOrder(), notices(paper));
    }

    private static List<String> notices(Paper paper) {
        List<String> notices = new ArrayList<>(paper.notices());
        if (paper.needsTyping()) {
            notices.add("No page has text in it, as when paper is scanned: someone has to type what it says.");
        } else if (!paper.blankPages().isEmpty()) {
            List<String> pages =
                    paper.blankPages().stream().map(String::valueOf).toList();
            notices.add("No text on page " + String.join(", ", pages) + ": what stands there has to be typed.");
        }
        notices.add("Rates and limits are proposals: hold each against the page before it is used.");
        return notices;
    }
}
