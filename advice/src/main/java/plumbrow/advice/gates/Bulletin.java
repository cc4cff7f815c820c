package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether the endangered-species bulletin for the place and month of each application was looked up, and what it said.
 *
 * <p>Protects wildlife. Where a label sends the user to a bulletin, the bulletin is part of the label. Unknown until somebody
 * has looked it up for the county and the month of use, no more than six months before the day. Clear where it sets no
 * limits; where it does, they are a condition. Unknown where the label was not read for it. What the log holds is judged by
 * the look that was valid then.
 *
 * <p>Source: the label; bulletins of the federal agency, which may be looked up six months ahead (value from memory). Needs:
 * whether the label names them; for each county and month, who looked it up, when, and what it said.
 */
final class Bulletin extends Question {
    private static final int MONTHS_AHEAD = 6;

    Bulletin() {
        super("bulletin", Protects.WILDLIFE, "Was the endangered-species bulletin looked up?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .flatMap(application -> at.care(application.product()).stream()
                        .flatMap(care -> judge(at, application, care)
                                .map(finding ->
                                        finding.source().isEmpty() ? finding.standingIn(care.source()) : finding)))
                .distinct()
                .toList();
    }

    private Stream<Finding> judge(Case at, Application application, ProductCare care) {
        return switch (care.bulletin()) {
            case NO -> Stream.of(clear(care.product(), "The label names no endangered-species bulletin."));
            case UNKNOWN ->
                Stream.of(unknown(
                        care.product(),
                        "Whether the label names endangered-species bulletins has not been read.",
                        "Look for endangered species on the label."));
            case YES -> at.places().stream().flatMap(place -> looked(at, application, place));
        };
    }

    private Stream<Finding> looked(Case at, Application application, Place place) {
        LocalDate day = application.date();
        String product = application.product();
        if (day == null) {
            return Stream.of(unknown(
                    application.subject(),
                    "The label makes an endangered-species bulletin part of itself, and the pass has no planned day.",
                    "Plan a day for the pass, then look up the bulletin for " + place.words() + " and that month."));
        }
        List<BulletinLook> looks = at.index().bulletins(product).stream()
                .filter(look -> place.inState(look.state())
                        && place.named(look.county())
                        && look.month().equals(YearMonth.from(day)))
                .toList();
        List<BulletinLook> inTime = looks.stream()
                .filter(look -> !look.looked().isAfter(day) && !look.looked().isBefore(day.minusMonths(MONTHS_AHEAD)))
                .toList();
        if (inTime.isEmpty()) {
            Optional<BulletinLook> last = looks.stream().max(Comparator.comparing(BulletinLook::looked));
            return Stream.of(unknown(
                    product + ", " + place.words() + " " + YearMonth.from(day),
                    "The label makes an endangered-species bulletin part of itself; "
                            + last.map(look -> "for " + place.words() + " it was looked up on " + look.looked()
                                            + ", which is not within the " + MONTHS_AHEAD + " months before " + day
                                            + ".")
                                    .orElseGet(() -> "nobody has looked it up for " + place.words() + " and "
                                            + YearMonth.from(day) + "."),
                    "Look up the bulletin for " + place.words() + " and " + YearMonth.from(day)
                            + ", at most six months ahead, and enter on the sheet bulletins who looked, when and what it "
                            + "said."));
        }
        return inTime.stream().map(look -> said(product, place, look));
    }

    private Finding said(String product, Place place, BulletinLook look) {
        String who = "The bulletin for " + place.words() + " and " + look.month() + ", looked up by " + look.by()
                + " on " + look.looked() + ", ";
        Finding finding = look.says().isEmpty()
                ? clear(product, who + "sets no limits.")
                : conditional(
                        product,
                        who + "says: " + look.says() + ".",
                        "Keep to the bulletin for " + place.words() + " in " + look.month() + ": " + look.says() + ".");
        return finding.standingIn("bulletin for " + look.month());
    }
}
