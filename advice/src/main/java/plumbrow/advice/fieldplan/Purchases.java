package plumbrow.advice.fieldplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.field.Farm;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.means.PriceBreak;
import plumbrow.advice.means.Supply;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.tank.MixCare;
import plumbrow.advice.weighing.Bought;
import plumbrow.advice.weighing.CostKind;
import plumbrow.science.figure.Numbers;

/**
 * What the plans of a farm take and is bought, in whole packages, at the price of the quantity. Where a greater quantity costs less
 * because of a price break, it is that which is bought.
 *
 * @param lines by product, in the order in which the plans need them
 * @param says what they come to and what they leave out
 */
record Purchases(List<FarmPage.Purchase> lines, List<String> says) {
    /** Less than this of a package is rounding. */
    private static final double DUST = 1e-9;

    Purchases {
        lines = List.copyOf(lines);
        says = List.copyOf(says);
    }

    /** A quantity bought and what it costs. */
    record Order(double quantity, double priceUsd) {
        double costUsd() {
            return quantity * priceUsd;
        }
    }

    static Purchases of(Season season, Farm farm, List<FieldPlan> plans) {
        return new Reckoning(season, farm).of(plans);
    }

    /**
     * What to order to have at least so much.
     *
     * @param least in the unit of the price
     * @param packageSize one package, in that unit; null where it is not known, then any quantity can be bought
     * @param listUsd price of one unit, {@code breaks} lower ones from a quantity on, for all that is bought
     */
    static Order order(double least, @Nullable Double packageSize, double listUsd, List<PriceBreak> breaks) {
        Order best = null;
        List<Double> quantities = new ArrayList<>();
        quantities.add(least);
        breaks.stream()
                .map(PriceBreak::fromQuantity)
                .filter(from -> from > least)
                .forEach(quantities::add);
        for (double wanted : quantities) {
            double quantity = packageSize == null ? wanted : packages(wanted, packageSize) * packageSize;
            double price = breaks.stream()
                    .filter(one -> one.fromQuantity() <= quantity + DUST)
                    .max(Comparator.comparingDouble(PriceBreak::fromQuantity))
                    .map(PriceBreak::priceUsd)
                    .orElse(listUsd);
            Order order = new Order(quantity, price);
            if (best == null || order.costUsd() < best.costUsd() - 0.005) {
                best = order;
            }
        }
        return Objects.requireNonNull(best);
    }

    private static double packages(double quantity, double size) {
        return Math.ceil(quantity / size - DUST);
    }

    /** What is taken of one product, in the unit of its price, and the operator's part of it. */
    private static final class Taken {
        private double all;
        private double own;
        private boolean waits;
    }

    /** Adds up one farm. */
    private static final class Reckoning {
        private final Season season;
        private final Farm farm;
        private final Map<String, Taken> taken = new LinkedHashMap<>();
        private final Map<String, Double> added = new LinkedHashMap<>();
        private final Set<String> apart = new TreeSet<>();

        private Reckoning(Season season, Farm farm) {
            this.season = season;
            this.farm = farm;
        }

        Purchases of(List<FieldPlan> plans) {
            plans.forEach(this::take);
            List<FarmPage.Purchase> lines = new ArrayList<>();
            double cost = 0;
            double own = 0;
            for (Map.Entry<String, Taken> one : taken.entrySet()) {
                Product product = season.shelf().product(one.getKey()).orElseThrow();
                FarmPage.Purchase line = line(product, one.getValue());
                lines.add(line);
                Double usd = line.costUsd();
                if (usd != null) {
                    cost += usd;
                    own += usd * one.getValue().own / one.getValue().all;
                }
            }
            added.forEach((what, amount) -> lines.add(addition(what, amount)));
            List<String> says = new ArrayList<>();
            if (!lines.isEmpty()) {
                says.add("Together " + Numbers.dollars(cost, 0)
                        + (own < cost - 0.5 ? ", " + Numbers.dollars(own, 0) + " of it yours by the lease" : "")
                        + ", without what has no price here.");
            }
            if (!apart.isEmpty()) {
                says.add("Not in the list, because rate and price can’t be turned into one another: "
                        + String.join(", ", apart) + ".");
            }
            return new Purchases(lines, says);
        }

        private void take(FieldPlan plan) {
            Program program = FarmPages.program(season, plan).orElse(null);
            if (program == null) {
                return;
            }
            Set<Integer> done = DoneWork.fulfilled(season, program, DoneWork.thisSeason(season, plan.field()))
                    .done()
                    .keySet();
            for (Pass pass : program.passes()) {
                if (!done.contains(pass.number())) {
                    take(plan, pass);
                }
            }
            FarmPages.loadCards(season, plan).forEach(this::additions);
        }

        private void take(FieldPlan plan, Pass pass) {
            String name = pass.product();
            Product product = name == null ? null : season.shelf().product(name).orElse(null);
            if (product == null) {
                return;
            }
            try {
                OptionalDouble perAcre = Bought.perAcre(season, pass);
                if (perAcre.isPresent() && perAcre.getAsDouble() > 0) {
                    Taken of = taken.computeIfAbsent(product.name(), first -> new Taken());
                    double takes = perAcre.getAsDouble() * plan.field().acres();
                    of.all += takes;
                    of.own += takes * CostKind.of(product).operatorShare(farm);
                    of.waits |= pass.trigger() != null;
                }
            } catch (IllegalArgumentException units) {
                apart.add(product.name());
            }
        }

        /** Adjuvants and conditioners that go into the tank beside the products of the passes. */
        private void additions(LoadCard card) {
            LoadCard.Loads loads = card.loads();
            for (LoadCard.Line line : card.lines()) {
                LoadCard.Measured full = line.full();
                LoadCard.Measured last = line.last();
                if (loads == null || card.products().contains(line.product()) || (full == null && last == null)) {
                    continue;
                }
                double amount =
                        (full == null ? 0 : full.measured() * loads.full()) + (last == null ? 0 : last.measured());
                String unit = full == null ? Objects.requireNonNull(last).unit() : full.unit();
                added.merge(line.product() + "|" + unit, amount, Double::sum);
            }
        }

        private FarmPage.Purchase addition(String what, double amount) {
            String product = what.substring(0, what.lastIndexOf('|'));
            String unit = what.substring(what.lastIndexOf('|') + 1);
            double gallons = unit.equals(FarmUnit.FL_OZ.symbol())
                    ? new Amount(amount, FarmUnit.FL_OZ).in(FarmUnit.GAL).value()
                    : 0;
            String takes = gallons >= 1 ? written(gallons, "gal") : written(amount, unit);
            return new FarmPage.Purchase(product, takes, "", takes, null, "", null, "no price on the shelf");
        }

        private FarmPage.Purchase line(Product product, Taken of) {
            FarmUnit unit = product.pricedPer();
            List<String> says = new ArrayList<>();
            Amount hand = product.onHand();
            double shed = 0;
            String inShed = "";
            if (hand != null && hand.unit().dimension() == unit.dimension()) {
                inShed = hand.text();
                if (usedElsewhere(product.name())) {
                    says.add("other farms may use the shed too: not taken off");
                } else {
                    shed = hand.in(unit).value();
                }
            }
            double least = Math.max(0, of.all - shed);
            Double size = packageSize(product);
            List<PriceBreak> breaks = season.work().means().breaks().stream()
                    .filter(one ->
                            one.farm().equals(farm.name()) && one.product().equals(product.name()))
                    .toList();
            Order order =
                    least <= DUST ? new Order(0, product.priceUsd()) : order(least, size, product.priceUsd(), breaks);
            if (order.priceUsd() < product.priceUsd()) {
                says.add("price of a larger quantity; list " + Numbers.dollars(product.priceUsd(), 2));
            }
            season.work().means().supplies().stream()
                    .filter(one ->
                            one.farm().equals(farm.name()) && one.product().equals(product.name()))
                    .map(Supply::mostQuantity)
                    .filter(most -> most < least - DUST)
                    .findFirst()
                    .ifPresent(most -> says.add("only " + written(most, unit.symbol()) + " can be bought"));
            if (of.waits) {
                says.add("some of it only if scouting asks for it");
            }
            if (order.quantity() > least * 1.001 + DUST && size == null) {
                says.add("more than is needed, for the lower price");
            }
            return new FarmPage.Purchase(
                    product.name(),
                    written(of.all, unit.symbol()),
                    inShed,
                    bought(order.quantity(), size, product),
                    order.quantity() == 0 ? null : order.priceUsd(),
                    unit.symbol(),
                    order.costUsd(),
                    String.join("; ", says));
        }

        private String bought(double quantity, @Nullable Double size, Product product) {
            String unit = product.pricedPer().symbol();
            if (quantity == 0) {
                return "nothing";
            }
            if (size == null) {
                return written(quantity, unit) + ", package size not on file";
            }
            return size == 1 && product.pricedPer().dimension() == Dimension.UNITS
                    ? Numbers.fixed(quantity, 0) + (quantity == 1 ? " unit" : " units")
                    : Numbers.fixed(packages(quantity, size), 0) + " × "
                            + season.work()
                                    .means()
                                    .tank()
                                    .mixing(product.name())
                                    .map(MixCare::container)
                                    .map(Amount::text)
                                    .orElse(written(size, unit));
        }

        /** One package in the unit of the price; a unit of seed is one. */
        private @Nullable Double packageSize(Product product) {
            if (season.shelf().seed(product.name()).map(Seed::product).isPresent()
                    && product.pricedPer().dimension() == Dimension.UNITS) {
                return 1.0;
            }
            Amount container = season.work()
                    .means()
                    .tank()
                    .mixing(product.name())
                    .map(MixCare::container)
                    .orElse(null);
            return container == null
                            || container.value() <= 0
                            || container.unit().dimension()
                                    != product.pricedPer().dimension()
                    ? null
                    : Double.valueOf(container.in(product.pricedPer()).value());
        }

        private boolean usedElsewhere(String product) {
            Set<String> others = season.fields().stream()
                    .filter(field -> !field.farm().equals(farm.name()))
                    .map(field -> field.name())
                    .collect(Collectors.toSet());
            return season.programs().stream()
                    .filter(program -> others.contains(program.field()))
                    .flatMap(program -> program.passes().stream())
                    .anyMatch(pass -> product.equals(pass.product()));
        }

        /** Up to the tenth below a hundred, else up to the whole. */
        private static String written(double quantity, String unit) {
            boolean large = quantity >= 100;
            double up = large ? Math.ceil(quantity - 1e-6) : Math.ceil(quantity * 10 - 1e-6) / 10;
            String named = unit.equals(FarmUnit.UNIT.symbol()) && up != 1 ? unit + "s" : unit;
            return Numbers.fixed(up, large || up == Math.rint(up) ? 0 : 1) + " " + named;
        }
    }
}
