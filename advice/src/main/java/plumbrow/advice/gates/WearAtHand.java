package plumbrow.advice.gates;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether what the label makes handlers wear is at hand.
 *
 * <p>Protects people who mix, load and spray. Things are compared word by word as the label lists them, capitals ignored.
 * What is missing is a condition: it is got before the product is opened. Unknown where the label was not read for it, or
 * nobody has looked what is at hand.
 *
 * <p>Source: the label; 40 CFR 156.212(e) for the least of it (value from memory). Needs: what the label asks handlers to
 * wear, and the gear of the crew.
 */
final class WearAtHand extends CareGate {
    WearAtHand() {
        super("wear", Protects.PEOPLE, "Is what the label makes handlers wear at hand?");
    }

    @Override
    Stream<Finding> judge(Case at, ProductCare care) {
        Set<String> asked = care.wear();
        Set<String> gear = at.season().work().crew().gear();
        if (asked == null) {
            return Stream.of(unknown(
                    care.product(),
                    "What handlers must wear has not been read.",
                    "Look up personal protective equipment (PPE) on the label."));
        }
        List<String> things = asked.stream().sorted().toList();
        if (things.isEmpty()) {
            return Stream.of(clear(care.product(), "The label lists nothing to wear."));
        }
        if (gear == null) {
            return Stream.of(unknown(
                    care.product(),
                    "The label asks for " + String.join(", ", things) + "; what is at hand nobody has looked.",
                    "Look what protective equipment is at hand and write it down."));
        }
        List<String> have = gear.stream().map(WearAtHand::plain).toList();
        List<String> missing =
                things.stream().filter(thing -> !have.contains(plain(thing))).toList();
        Finding finding = missing.isEmpty()
                ? clear(care.product(), "At hand: " + String.join(", ", things) + ".")
                : conditional(
                        care.product(),
                        "Not at hand: " + String.join(", ", missing) + ".",
                        "Have " + String.join(", ", missing) + " at hand before the product is opened.");
        return Stream.of(finding.against(things.size() - missing.size(), things.size(), "things"));
    }

    /** Whether two entries name one piece of equipment. */
    static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String thing) {
        return thing.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }
}
