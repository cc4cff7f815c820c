package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.reference.ReportableQuantities;
import plumbrow.science.reference.ReportableQuantity;
import plumbrow.science.safety.PaperUnits;

/** Reportable quantities: what the user's own sheet prints goes before what is kept. */
final class Quantities {
    private final List<Printed> printed = new ArrayList<>();
    private final Ingredients ingredients;

    /** @param of the substance named beside it; empty where none is */
    private record Printed(String of, double pounds, Origin origin) {}

    /** A quantity [lb] of one substance. */
    record Quantity(double pounds, Known known, Origin origin, String note) {}

    Quantities(SafetySheet sheet, Ingredients ingredients) {
        this.ingredients = ingredients;
        for (Reading.Stated stated : sheet.all(ValueKind.REPORTABLE_QUANTITY)) {
            Content.Reportable each = (Content.Reportable) stated.content();
            OptionalDouble worth = PaperUnits.pounds(each.amount().unit());
            if (worth.isPresent() && each.amount().low() > 0) {
                printed.add(new Printed(
                        each.substance(), each.amount().low() * worth.getAsDouble(), Said.origin(stated.quote())));
            }
        }
    }

    /** What the sheet prints for an ingredient; the smallest where there are several. */
    Optional<Quantity> onSheet(Ingredients.One one) {
        boolean only = ingredients.all().size() == 1;
        return printed.stream()
                .filter(each ->
                        each.of().equalsIgnoreCase(one.name()) || (each.of().isEmpty() && only))
                .min(Comparator.comparingDouble(Printed::pounds))
                .map(each -> new Quantity(each.pounds(), Known.READ, each.origin(), ""));
    }

    /** What the sheet prints without saying of what, or of something that is no ingredient of it. */
    List<Quantity> ofTheProduct() {
        return printed.stream()
                .filter(each ->
                        ingredients.all().stream().noneMatch(one -> each.of().equalsIgnoreCase(one.name())))
                .filter(each -> !(each.of().isEmpty() && ingredients.all().size() == 1))
                .map(each -> new Quantity(each.pounds(), Known.READ, each.origin(), each.of()))
                .toList();
    }

    /** What is kept for an ingredient, by number, by name, or by the active behind its form; the smallest. */
    Optional<Quantity> kept(Ingredients.One one) {
        List<ReportableQuantity> listed = new ArrayList<>(ReportableQuantities.find(one.name()));
        if (!one.cas().isEmpty()) {
            listed.addAll(ReportableQuantities.find(one.cas()));
        }
        var substance = one.kept();
        boolean stem = listed.isEmpty() && substance != null;
        if (substance != null && stem) {
            listed.addAll(ReportableQuantities.find(substance.cas()));
            listed.addAll(ReportableQuantities.find(substance.name()));
        }
        return listed.stream()
                .min(Comparator.comparingDouble(ReportableQuantity::rqLb))
                .map(each -> new Quantity(
                        each.rqLb(),
                        Known.KEPT,
                        new Origin.Reference(each.name(), each.origin(), each.backing()),
                        stem && !one.sameForm()
                                ? "listed for " + each.name() + "; a form may be listed otherwise"
                                : ""));
    }
}
