package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.Route;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Bound;
import plumbrow.science.safety.GhsAcute;
import plumbrow.science.safety.MixtureAte;

/**
 * How poisonous the product is by its ingredients, where its sheet gives no value of the product itself. Of a range of
 * percent the upper end counts; all that the sheet doesn't name, or names without a value, counts as of unknown toxicity.
 */
final class MixturePart {
    /** At this limit and above an ingredient counts as not poisonous: UN GHS 3.1.3.6.1, from memory. */
    private static final double HARMLESS_MG_PER_KG = 2000;

    private static final double HARMLESS_MG_PER_LITRE = 5;
    private static final double WHOLE_PCT = 100;

    private MixturePart() {}

    /** An ingredient with the lowest of its values by one route. */
    private record Part(double pct, OwnDose dose) {}

    /** The estimate; empty where the sheet has no ingredient with a share and a value. */
    static Optional<CardLine> of(SafetySheet sheet, Ingredients ingredients, Route route) {
        List<Part> known = new ArrayList<>();
        for (Ingredients.One one : ingredients.all()) {
            Double share = share(one.percent());
            Optional<OwnDose> dose = dose(sheet, route, one.name());
            if (share != null && dose.isPresent()) {
                known.add(new Part(share, dose.get()));
            }
        }
        double named = known.stream().mapToDouble(Part::pct).sum();
        List<Part> poisonous =
                known.stream().filter(part -> !harmless(part, route)).toList();
        if (poisonous.isEmpty() || named > WHOLE_PCT) {
            return Optional.empty();
        }
        double unknown = Math.max(0, Math.rint((WHOLE_PCT - named) * 1e6) / 1e6);
        Answer answer = Worked.out(MixtureAte.FIGURE)
                .with("shares_pct", list(poisonous.stream().map(Part::pct).toList()))
                .with(
                        "ates",
                        list(poisonous.stream()
                                .map(part -> part.dose().bound().least())
                                .toList()))
                .with("unknown_pct", unknown)
                .answer();
        double ate = answer.number("ate");
        GhsAcute.Call call = GhsAcute.call(SheetTerms.way(route), ate);
        List<Origin> origins = poisonous.stream()
                .map(part -> Said.origin(part.dose().stated().quote()))
                .collect(Collectors.toList());
        return Optional.of(new CardLine(
                Words.capital(route.word()) + ", calculated from the ingredients",
                "about " + Numbers.plain(Double.parseDouble(String.format(Locale.ROOT, "%.3g", ate)))
                        + (route == Route.INHALED ? " mg/L" : " mg/kg") + " ("
                        + SheetTerms.words(call)
                        + "); the sheet gives no value of the product itself, and nothing is known of "
                        + Numbers.plain(unknown) + " % of it",
                Known.WORKED,
                origins,
                answer));
    }

    private static @Nullable Double share(@Nullable Amount percent) {
        return percent == null || percent.high() <= 0 || percent.high() > WHOLE_PCT ? null : percent.high();
    }

    private static Optional<OwnDose> dose(SafetySheet sheet, Route route, String name) {
        List<OwnDose> found = new ArrayList<>();
        for (Reading.Stated stated : OwnDose.stated(sheet, route)) {
            Content.Acute acute = (Content.Acute) stated.content();
            if (!acute.substance().isEmpty()
                    && plain(acute.substance()).equals(plain(name))
                    && !acute.measure().equals("LDLo")) {
                OwnDose.usable(stated, acute).ifPresent(found::add);
            }
        }
        return found.stream()
                .filter(dose -> dose.bound().least() > 0)
                .min(Comparator.comparingDouble(dose -> dose.bound().least()));
    }

    private static boolean harmless(Part part, Route route) {
        Bound bound = part.dose().bound();
        boolean open = bound.kind() == Bound.Kind.ABOVE || bound.kind() == Bound.Kind.AT_LEAST;
        return open && bound.least() >= (route == Route.INHALED ? HARMLESS_MG_PER_LITRE : HARMLESS_MG_PER_KG);
    }

    private static String list(List<Double> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(","));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "");
    }
}
