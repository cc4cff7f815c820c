package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.figure.Answer;
import plumbrow.science.safety.GhsAcute;

/** What the values call for by the rule of the sheets (GHS), held against the sheet's own codes and signal word. */
final class SheetTerms {
    private final SafetySheet sheet;
    private final Map<Route, OwnDose> doses;
    private final List<CardLine> lines;

    private SheetTerms(SafetySheet sheet, Map<Route, OwnDose> doses, List<CardLine> lines) {
        this.sheet = sheet;
        this.doses = doses;
        this.lines = lines;
    }

    static void write(SafetySheet sheet, Map<Route, OwnDose> doses, List<CardLine> lines) {
        SheetTerms terms = new SheetTerms(sheet, doses, lines);
        doses.forEach(terms::route);
        terms.signalWord();
    }

    private void route(Route route, OwnDose dose) {
        GhsAcute.Call worst = GhsAcute.call(way(route), dose.bound().least());
        GhsAcute.Call mildest = GhsAcute.call(way(route), dose.bound().most());
        String calls =
                Words.either(words(worst), words(mildest)) + (route == Route.INHALED ? ", taken as dust or mist" : "");
        Optional<Reading.Stated> printed = code(route);
        String code = printed.map(stated -> ((Content.Statement) stated.content()).code())
                .orElse("");
        boolean agrees = code.equals(worst.hazardCode())
                || code.equals(mildest.hazardCode())
                || between(code, worst.category(), mildest.category(), route);
        List<Origin> origins = new ArrayList<>();
        origins.add(Said.origin(dose.stated().quote()));
        printed.ifPresent(stated -> origins.add(Said.origin(stated.quote())));
        Answer answer = Worked.out(GhsAcute.FIGURE)
                .with("route", way(route))
                .with("value", dose.bound().number())
                .answer();
        lines.add(new CardLine(
                Words.capital(route.word()) + ", by the sheets’ rule (GHS)",
                calls
                        + (agrees
                                ? ": the sheet agrees"
                                : code.isEmpty()
                                        ? ": the sheet prints no code for this route"
                                        : ": the sheet prints " + code),
                agrees ? Known.WORKED : Known.DIFFERS,
                origins,
                answer));
    }

    private static boolean between(String code, int worst, int mildest, Route route) {
        for (int category = worst; category > 0 && category <= (mildest == 0 ? 4 : mildest); category++) {
            if (code.equals("H" + first(route) + Math.max(0, category - 2))) {
                return true;
            }
        }
        return false;
    }

    private void signalWord() {
        CardLine printed = Said.once(sheet, ValueKind.SIGNAL_WORD);
        CardLine named =
                new CardLine("Signal word of the sheet (GHS)", printed.says(), printed.known(), printed.origins());
        int asked = doses.entrySet().stream()
                .mapToInt(each -> rank(GhsAcute.call(
                                way(each.getKey()), each.getValue().bound().most())
                        .signalWord()))
                .max()
                .orElse(0);
        if (named.known() == Known.READ && rank(named.says()) < asked) {
            List<Origin> origins = new ArrayList<>(named.origins());
            doses.values().forEach(dose -> origins.add(Said.origin(dose.stated().quote())));
            named = new CardLine(
                    named.about(),
                    named.says() + ", but its acute values call for " + (asked == 2 ? "Danger" : "Warning"),
                    Known.DIFFERS,
                    origins);
        }
        lines.add(named);
    }

    private Optional<Reading.Stated> code(Route route) {
        return sheet.all(ValueKind.HAZARD_STATEMENT).stream()
                .filter(stated -> ((Content.Statement) stated.content()).code().matches("H" + first(route) + "[0-3]"))
                .findFirst();
    }

    /** The first two digits of a route's codes. */
    private static String first(Route route) {
        return switch (route) {
            case SKIN -> "31";
            case INHALED -> "33";
            default -> "30";
        };
    }

    static String way(Route route) {
        return switch (route) {
            case SKIN -> "dermal";
            case INHALED -> "dust-mist";
            default -> "oral";
        };
    }

    private static int rank(String word) {
        return word.equalsIgnoreCase("danger") ? 2 : word.equalsIgnoreCase("warning") ? 1 : 0;
    }

    static String words(GhsAcute.Call call) {
        return call.category() == 0
                ? "not classified"
                : "category " + call.category() + ", " + call.hazardCode() + ", " + call.signalWord();
    }
}
