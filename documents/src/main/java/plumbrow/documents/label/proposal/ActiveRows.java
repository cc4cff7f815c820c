package plumbrow.documents.label.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.label.Of;
import plumbrow.documents.label.grammar.CropWords;

/** Rows about active ingredients: how much is in the product, and how much a season may have. */
final class ActiveRows {
    private ActiveRows() {}

    /** Only where the label itself gives pounds of active in a gallon, or a percent of a dry product by the pound. */
    static List<Proposal<ActiveContent>> contents(LabelPaper label, String product) {
        List<Proposal<ActiveContent>> rows = new ArrayList<>();
        List<LabelReading.Stated> actives = label.all(LabelKind.ACTIVE);
        for (LabelReading.Stated stated : actives) {
            if (!(stated.content() instanceof LabelContent.Active active)) {
                continue;
            }
            String name = commonName(active.name());
            Optional<LabelReading.Stated> pounds = strength(label, name, Of.ACTIVE, "lb/gal", actives.size() == 1);
            Optional<LabelReading.Stated> acid = strength(label, name, Of.ACID, "lb/gal", actives.size() == 1);
            Map<String, LabelReading> grounds = new LinkedHashMap<>();
            grounds.put("ingredient", stated);
            pounds.ifPresent(one -> grounds.put("pounds", one));
            acid.ifPresent(one -> grounds.put("ae_ratio", one));
            pounds.flatMap(ActiveRows::amount)
                    .ifPresent(lb -> rows.add(new Proposal<>(
                            new ActiveContent(
                                    product, name, lb, FarmUnit.GAL, ratio(acid.flatMap(ActiveRows::amount), lb)),
                            grounds)));
        }
        return rows;
    }

    private static @Nullable Double ratio(Optional<Double> acid, double pounds) {
        return acid.filter(lb -> lb <= pounds && pounds > 0)
                .map(lb -> lb / pounds)
                .orElse(null);
    }

    private static Optional<Double> amount(LabelReading.Stated stated) {
        return stated.content() instanceof LabelContent.Strength strength
                ? Optional.of(strength.amount().low())
                : Optional.empty();
    }

    private static Optional<LabelReading.Stated> strength(
            LabelPaper label, String name, Of of, String unit, boolean only) {
        List<LabelReading.Stated> found = label.all(LabelKind.STRENGTH).stream()
                .filter(one -> one.content() instanceof LabelContent.Strength strength
                        && strength.of() == of
                        && strength.amount().unit().equals(unit)
                        && (strength.ingredient().toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT))
                                || (only && strength.ingredient().isEmpty())))
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** The name before its chemistry and its salt: "Glyphosate, potassium salt" is glyphosate; the comma of 2,4-D stays. */
    static String commonName(String printed) {
        String plain = printed.split(",(?!\\d)|[:(]", 2)[0].strip();
        boolean letters = plain.matches("\\p{Lu}[\\p{Ll}-]+.*");
        return letters ? plain.substring(0, 1).toLowerCase(Locale.ROOT) + plain.substring(1) : plain;
    }

    static List<Proposal<ActiveLimit>> limits(LabelPaper label, String product) {
        List<Proposal<ActiveLimit>> rows = new ArrayList<>();
        List<LabelReading.Stated> actives = label.all(LabelKind.ACTIVE);
        for (LabelReading.Stated stated : label.all(LabelKind.SEASON_MAX)) {
            boolean pounds = stated.content() instanceof LabelContent.Most most
                    && (most.of() == Of.ACTIVE || most.of() == Of.ACID)
                    && most.amount().unit().equals("lb/ac");
            if (!pounds || !(stated.content() instanceof LabelContent.Most most)) {
                continue;
            }
            String name = most.ingredient();
            if (name.isEmpty() && actives.size() == 1 && actives.get(0).content() instanceof LabelContent.Active only) {
                name = commonName(only.name());
            }
            boolean sure = label.sameMatter(stated) instanceof LabelReading.Stated;
            for (Crop crop : CropWords.shelf(most.crop())) {
                if (!name.isEmpty()) {
                    rows.add(new Proposal<>(
                            new ActiveLimit(
                                    product,
                                    crop,
                                    name,
                                    sure ? most.amount().high() : null,
                                    most.of() == Of.ACID
                                            ? ActiveLimit.Basis.ACID_EQUIVALENT
                                            : ActiveLimit.Basis.ACTIVE_INGREDIENT,
                                    Values.source(product, stated)),
                            Map.of("season_max_lb_ac", label.sameMatter(stated))));
                }
            }
        }
        return rows;
    }
}
