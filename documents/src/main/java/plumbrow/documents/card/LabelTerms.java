package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.figure.Answer;
import plumbrow.science.reference.Bound;
import plumbrow.science.safety.EpaToxicity;

/** What the values call for by the rule of the labels (EPA), held against the signal word of the label. */
final class LabelTerms {
    private static final List<String> WORDS = List.of("DANGER", "WARNING", "CAUTION", "none");

    private final CardInput input;
    private final Map<Route, OwnDose> doses;
    private final List<CardLine> lines;

    private LabelTerms(CardInput input, Map<Route, OwnDose> doses, List<CardLine> lines) {
        this.input = input;
        this.doses = doses;
        this.lines = lines;
    }

    static void write(CardInput input, Map<Route, OwnDose> doses, List<CardLine> lines) {
        LabelTerms terms = new LabelTerms(input, doses, lines);
        terms.byRoute();
        terms.signalWord();
    }

    private void byRoute() {
        doses.forEach((route, dose) -> lines.add(new CardLine(
                Words.capital(route.word()) + ", by the labels’ rule (EPA)",
                "category "
                        + Words.either(
                                category(route, dose.bound().least()),
                                category(route, dose.bound().most())),
                Known.WORKED,
                List.of(Said.origin(dose.stated().quote())),
                working())));
    }

    private void signalWord() {
        Optional<CardLine> label = onLabel();
        if (label.isEmpty()) {
            lines.add(CardLine.unknown("Signal word of the label (EPA)", "the front of the label"));
            if (!doses.isEmpty()) {
                lines.add(called("Signal word that the values call for (EPA)", ""));
            }
            return;
        }
        CardLine said = label.get();
        if (said.known() != Known.READ || doses.isEmpty()) {
            lines.add(said);
            return;
        }
        int printed = WORDS.indexOf(plain(said.says()));
        int strongest = strongest();
        int mildest = mildest();
        if (printed < 0) {
            lines.add(said);
        } else if (printed > mildest) {
            lines.add(new CardLine(
                    said.about(),
                    said.says() + ", but the acute values call for " + range(strongest, mildest)
                            + "; the label’s word holds, ask why",
                    Known.DIFFERS,
                    said.origins(),
                    working()));
        } else if (printed < strongest) {
            lines.add(new CardLine(
                    said.about(),
                    said.says() + ", stronger than the acute values call for (" + range(strongest, mildest)
                            + "): it may come from eyes or skin, or from a route that is not known here",
                    Known.READ,
                    said.origins(),
                    working()));
        } else {
            lines.add(new CardLine(
                    said.about(), said.says() + ": the acute values agree", Known.READ, said.origins(), working()));
        }
    }

    private CardLine called(String about, String before) {
        List<Origin> origins = new ArrayList<>();
        doses.values().forEach(dose -> origins.add(Said.origin(dose.stated().quote())));
        return new CardLine(
                about,
                before + range(strongest(), mildest())
                        + (doses.size() < 3 ? " or stronger: not every route is known" : "")
                        + "; eyes and skin are not in it: labels grade them by tests that sheets seldom print",
                Known.WORKED,
                origins,
                working());
    }

    /** The label's own word; else the word of the label that the sheet quotes. */
    private Optional<CardLine> onLabel() {
        List<LabelSaid.Value> own = input.label(LabelSaid.Topic.SIGNAL_WORD);
        if (!own.isEmpty()) {
            return Optional.of(Said.line(own.get(0), "Signal word of the label (EPA)"));
        }
        Reading quoted = input.sheet().of(ValueKind.LABEL_SIGNAL_WORD);
        return quoted instanceof Reading.NotStated
                ? Optional.empty()
                : Optional.of(Said.line(quoted, "Signal word of the label (EPA), as the sheet quotes it"));
    }

    private int strongest() {
        return doses.entrySet().stream()
                .mapToInt(each -> word(each.getKey(), each.getValue().bound().least()))
                .min()
                .orElse(WORDS.size() - 1);
    }

    private int mildest() {
        return doses.entrySet().stream()
                .mapToInt(each -> word(each.getKey(), each.getValue().bound().most()))
                .min()
                .orElse(WORDS.size() - 1);
    }

    private static int word(Route route, double value) {
        return WORDS.indexOf(EpaToxicity.signalWord(category(route, value)));
    }

    private static String range(int strongest, int mildest) {
        return Words.either(WORDS.get(strongest), WORDS.get(mildest));
    }

    private static String category(Route route, double value) {
        return EpaToxicity.category(way(route), value);
    }

    private static EpaToxicity.Route way(Route route) {
        return switch (route) {
            case SKIN -> EpaToxicity.Route.DERMAL;
            case INHALED -> EpaToxicity.Route.INHALATION;
            default -> EpaToxicity.Route.ORAL;
        };
    }

    /** At the numbers printed; what a limit leaves open is said in words. */
    private Answer working() {
        Worked figure = Worked.out(EpaToxicity.FIGURE);
        doses.forEach((route, dose) -> {
            Bound bound = dose.bound();
            figure.with(way(route).key(), bound.kind() == Bound.Kind.ABOVE ? bound.least() : bound.number());
        });
        return figure.answer();
    }

    private static String plain(String says) {
        String upper = says.toUpperCase(Locale.ROOT);
        return WORDS.stream().filter(upper::startsWith).findFirst().orElse("");
    }
}
