package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.figure.Answer;
import plumbrow.science.safety.IngredientPerGallon;
import plumbrow.science.safety.PaperUnits;

/**
 * How much of an ingredient is in a gallon or a pound of the product. The sheet's share by weight goes first: it is of the
 * very substance that lists of the law name; of a range the upper end is taken.
 */
final class Strengths {
    private final CardInput input;

    /**
     * @param lbPerGal [lb/gal]; null for a dry product
     * @param percent share by weight [%]; null where only pounds per gallon are known
     * @param working null where nothing had to be worked
     */
    record Strength(
            @Nullable Double lbPerGal,
            @Nullable Double percent,
            List<Origin> origins,
            @Nullable Answer working) {}

    Strengths(CardInput input) {
        this.input = input;
    }

    Optional<Strength> of(Ingredients.One one) {
        return share(one.percent())
                .map(percent -> byWeight(percent, one.origin()))
                .filter(found -> found.lbPerGal() != null || !liquid())
                .or(() -> onShelf(one));
    }

    /** The product as a whole, for a quantity that is printed without saying of what. */
    Optional<Strength> ofProduct() {
        return Optional.of(byWeight(100, null)).filter(found -> found.lbPerGal() != null || !liquid());
    }

    private boolean liquid() {
        return input.container()
                .map(one -> one.unit().dimension() == FarmUnit.GAL.dimension())
                .orElse(true);
    }

    private static Optional<Double> share(@Nullable Amount percent) {
        if (percent == null || percent.high() <= 0 || percent.high() > 100) {
            return Optional.empty();
        }
        return switch (percent.qualifier()) {
            case MORE_THAN, AT_LEAST -> Optional.empty();
            default -> Optional.of(percent.high());
        };
    }

    private Strength byWeight(double percent, @Nullable Origin share) {
        List<Origin> origins = new ArrayList<>();
        if (share != null) {
            origins.add(share);
        }
        if (liquid()
                && input.sheet().of(ValueKind.DENSITY) instanceof Reading.Stated stated
                && stated.content() instanceof Content.Measured density) {
            OptionalDouble weight = PaperUnits.poundsPerGallon(
                    density.amount().high(), density.amount().unit());
            if (weight.isPresent() && weight.getAsDouble() > 0 && weight.getAsDouble() <= 50) {
                Answer answer = Worked.out(IngredientPerGallon.FIGURE)
                        .with("weight_pct", percent)
                        .with("density_lb_gal", weight.getAsDouble())
                        .answer();
                origins.add(Said.origin(stated.quote()));
                return new Strength(answer.number("lb_gal"), percent, origins, answer);
            }
        }
        return new Strength(null, percent, origins, null);
    }

    private Optional<Strength> onShelf(Ingredients.One one) {
        if (input.shelf().isEmpty()) {
            return Optional.empty();
        }
        CardInput.OnShelf entry = input.shelf().get();
        return entry.actives().stream()
                .filter(active -> active.per() == FarmUnit.GAL && names(one, active))
                .findFirst()
                .map(active -> new Strength(
                        active.pounds(),
                        null,
                        List.of(new Origin.Shelf(entry.product().source())),
                        null));
    }

    private static boolean names(Ingredients.One one, ActiveContent active) {
        var kept = one.kept();
        return active.ingredient().equalsIgnoreCase(one.name())
                || (kept != null && active.ingredient().equalsIgnoreCase(kept.name()));
    }
}
