package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody needs who stands beside a spill or a person in trouble: whom to call, what to wear, what to do with the spill, when
 * people may go back into the field. All of it stands on the card too, with its sources.
 *
 * @param calls each with its number, as on the card
 * @param wear what must be worn; one line that says that it is unknown where it is
 * @param spill the first thing to do and whether it must be reported
 * @param reentry the re-entry interval, or that it is unknown
 */
public record FirstScreen(List<Call> calls, List<CardLine> wear, List<CardLine> spill, List<CardLine> reentry) {
    private static final Pattern NUMBER = Pattern.compile("\\+?\\d[\\d ().-]{1,22}\\d");
    private static final int LONGEST_SPILL = 220;
    private static final String REENTRY = "Back into the field after";
    private static final String EARLY = "early entry";

    /**
     * A number to call.
     *
     * @param address what a telephone dials, such as tel:18002221222
     */
    public record Call(String whom, String number, String address) {}

    public FirstScreen {
        calls = List.copyOf(calls);
        wear = List.copyOf(wear);
        spill = List.copyOf(spill);
        reentry = List.copyOf(reentry);
    }

    static FirstScreen of(ProductCard card) {
        List<Call> calls = new ArrayList<>();
        for (CardLine line : card.lines(CardPart.FIRST_AID)) {
            if (line.known() == Known.RULE || line.known() == Known.READ) {
                call(line, calls);
            }
        }
        List<CardLine> worn = card.lines(CardPart.WEAR);
        List<CardLine> byLabel = worn.stream()
                .filter(line -> !line.about().equals(REENTRY) && !line.about().contains(EARLY) && ofLabel(line))
                .toList();
        return new FirstScreen(
                calls,
                byLabel.isEmpty()
                        ? worn.stream()
                                .filter(line -> !line.about().equals(REENTRY))
                                .limit(3)
                                .toList()
                        : byLabel,
                spill(card),
                worn.stream().filter(line -> line.about().equals(REENTRY)).toList());
    }

    private static void call(CardLine line, List<Call> calls) {
        Matcher number = NUMBER.matcher(line.says());
        boolean whole = number.find() && number.group().equals(line.says().strip());
        String digits = whole ? number.group().replaceAll("[^\\d+]", "") : "";
        if (whole && digits.length() >= 3 && digits.length() <= 16) {
            Call call = new Call(line.about(), line.says(), "tel:" + digits);
            if (calls.stream().noneMatch(other -> other.address.equals(call.address))) {
                calls.add(call);
            }
        }
    }

    private static boolean ofLabel(CardLine line) {
        return line.origins().stream()
                .map(origin -> origin instanceof Origin.Mended mended ? mended.paper() : origin)
                .anyMatch(origin -> origin instanceof Origin.OnPaper paper && paper.paper() == Origin.PaperKind.LABEL);
    }

    /** What to do first, and what must be reported; where nothing must, what is known of it. */
    private static List<CardLine> spill(ProductCard card) {
        List<CardLine> lines = card.lines(CardPart.SPILL);
        List<CardLine> said = new ArrayList<>(lines.stream().limit(1).toList());
        List<CardLine> report =
                lines.stream().filter(line -> line.says().contains("REPORT it")).toList();
        said.addAll(
                report.isEmpty()
                        ? lines.stream()
                                .filter(line -> line.about()
                                        .toLowerCase(java.util.Locale.ROOT)
                                        .contains("reportable quantity"))
                                .limit(2)
                                .toList()
                        : report);
        return said.stream().map(FirstScreen::shortened).toList();
    }

    private static CardLine shortened(CardLine line) {
        if (line.says().length() <= LONGEST_SPILL) {
            return line;
        }
        int blank = line.says().lastIndexOf(' ', LONGEST_SPILL);
        return new CardLine(
                line.about(),
                line.says().substring(0, blank > 0 ? blank : LONGEST_SPILL) + " …",
                line.known(),
                line.origins());
    }
}
