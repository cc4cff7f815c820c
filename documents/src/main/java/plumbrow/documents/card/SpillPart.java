package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Numbers;
import plumbrow.science.safety.Spill;
import plumbrow.science.safety.Strength;

/** How bad a broken jug is: pounds in a container, and its share of the quantity that must be reported. */
final class SpillPart {
    private final Optional<Amount> container;
    private final Strengths strengths;
    private final Quantities quantities;
    private final Ingredients ingredients;
    private final List<CardLine> lines = new ArrayList<>();

    private SpillPart(CardInput input, Ingredients ingredients) {
        this.container = input.container();
        this.strengths = new Strengths(input);
        this.quantities = new Quantities(input.sheet(), ingredients);
        this.ingredients = ingredients;
    }

    static CardSection of(CardInput input, Ingredients ingredients) {
        SpillPart part = new SpillPart(input, ingredients);
        part.lines.add(new CardLine(
                "First",
                "control it, contain it, clean it up, then report it",
                Known.RULE,
                List.of(new Origin.Source("common practice, no source"))));
        part.lines.add(Said.once(input.sheet(), ValueKind.SPILL));
        if (input.container().isEmpty()) {
            part.lines.add(CardLine.unknown("Container", "the net contents on the label"));
        }
        part.write();
        return new CardSection(CardPart.SPILL, part.lines, Spill.FIGURE.cautions());
    }

    private void write() {
        List<String> without = new ArrayList<>();
        for (Ingredients.One one : ingredients.all()) {
            Optional<Strengths.Strength> strength = strengths.of(one);
            content(one, strength);
            if (!quantity(one, strength)) {
                without.add(one.cas().isEmpty() ? one.name() : one.name() + " (" + one.cas() + ")");
            }
        }
        for (Quantities.Quantity quantity : quantities.ofTheProduct()) {
            String of = quantity.note().isEmpty() ? "Printed without saying of what" : quantity.note();
            lines.add(new CardLine(
                    of + ", reportable quantity", pounds(quantity), Known.READ, List.of(quantity.origin())));
            share(of + ", taken as pounds of product, the cautious way", strengths.ofProduct(), quantity);
        }
        if (!without.isEmpty() || ingredients.all().isEmpty()) {
            String names = without.isEmpty() ? "none was read" : String.join(", ", without);
            lines.add(new CardLine(
                    "Reportable quantity",
                    "no federal reportable quantity found for these names: " + names
                            + "; look up: 40 CFR 302.4 and your state",
                    Known.UNKNOWN,
                    List.of()));
        }
    }

    private void content(Ingredients.One one, Optional<Strengths.Strength> strength) {
        if (container.isEmpty()) {
            return;
        }
        Amount full = container.get();
        String about = one.name() + " in a container of " + full.text();
        Optional<Answer> held = strength.flatMap(known -> held(full, known));
        if (held.isEmpty()) {
            lines.add(CardLine.unknown(
                    about, "its share by weight and the density on the sheet, or lb/gal on the label"));
            return;
        }
        double pounds = held.get().number(held.get().figure().equals(Strength.DRY) ? "ingredient" : "ai_lb");
        lines.add(new CardLine(
                about,
                Numbers.fixed(pounds, pounds < 10 ? 2 : 1) + " lb",
                Known.WORKED,
                strength.orElseThrow().origins(),
                held.get()));
    }

    private static Optional<Answer> held(Amount full, Strengths.Strength strength) {
        Double perGallon = strength.lbPerGal();
        Double percent = strength.percent();
        if (full.value() <= 0) {
            return Optional.empty();
        }
        if (full.unit().dimension() == Dimension.VOLUME && perGallon != null && perGallon > 0) {
            return Optional.of(Worked.out(Strength.CONTAINER)
                    .with("container_gal", full.inBase())
                    .with("ai_lb_gal", perGallon)
                    .answer());
        }
        if (full.unit().dimension() == Dimension.MASS && percent != null) {
            return Optional.of(Worked.out(Strength.DRY)
                    .with("amount", full.inBase())
                    .with("weight_pct", percent)
                    .answer());
        }
        return Optional.empty();
    }

    private boolean quantity(Ingredients.One one, Optional<Strengths.Strength> strength) {
        Optional<Quantities.Quantity> sheet = quantities.onSheet(one);
        Optional<Quantities.Quantity> kept = quantities.kept(one);
        Optional<Quantities.Quantity> first = sheet.or(() -> kept);
        if (first.isEmpty()) {
            return false;
        }
        Quantities.Quantity quantity = first.get();
        if (sheet.isPresent()
                && kept.isPresent()
                && !Numbers.plain(sheet.get().pounds())
                        .equals(Numbers.plain(kept.get().pounds()))) {
            lines.add(new CardLine(
                    one.name() + ", reportable quantity",
                    "the sheet prints " + pounds(sheet.get()) + ", the reference data keep " + pounds(kept.get())
                            + ": the sheet’s is used here; look up 40 CFR 302.4",
                    Known.DIFFERS,
                    List.of(sheet.get().origin(), kept.get().origin())));
        } else {
            lines.add(new CardLine(
                    one.name() + ", reportable quantity",
                    pounds(quantity) + (quantity.note().isEmpty() ? "" : "; " + quantity.note()),
                    quantity.known(),
                    List.of(quantity.origin())));
        }
        share(one.name(), strength, quantity);
        return true;
    }

    private void share(String name, Optional<Strengths.Strength> strength, Quantities.Quantity quantity) {
        Optional<Answer> spill = strength.flatMap(known -> spill(known, quantity.pounds()));
        if (spill.isEmpty()) {
            lines.add(CardLine.unknown(
                    name + ", how much product reaches it",
                    container.isEmpty() && strength.isPresent()
                            ? "the net contents on the label"
                            : "its share by weight and the density on the sheet, or lb/gal on the label"));
            return;
        }
        List<Origin> origins = new ArrayList<>(strength.orElseThrow().origins());
        origins.add(quantity.origin());
        lines.add(new CardLine(
                name + ", share of it", SpillWords.of(spill.get(), container), Known.WORKED, origins, spill.get()));
    }

    private Optional<Answer> spill(Strengths.Strength strength, double quantity) {
        Double perGallon = strength.lbPerGal();
        Double percent = strength.percent();
        boolean dry =
                container.map(full -> full.unit().dimension() == Dimension.MASS).orElse(false);
        if (dry && percent != null && container.get().value() > 0) {
            return Optional.of(Worked.out(Spill.DRY)
                    .with("product_lb", container.get().inBase())
                    .with("weight_pct", percent)
                    .with("rq_lb", quantity)
                    .with("container_lb", container.get().inBase())
                    .answer());
        }
        if (!dry && perGallon != null && perGallon > 0) {
            double gallons = container.map(Amount::inBase).orElse(1.);
            return Optional.of(Worked.out(Spill.FIGURE)
                    .with("volume_gal", gallons)
                    .with("ai_lb_gal", perGallon)
                    .with("rq_lb", quantity)
                    .with("container_gal", gallons)
                    .answer());
        }
        return Optional.empty();
    }

    private static String pounds(Quantities.Quantity quantity) {
        return Numbers.plain(quantity.pounds()) + " lb";
    }
}
