package plumbrow.advice.pestpage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.weighing.CostKind;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Step;

/**
 * Today's prices of the book for a treatment on a field, at the operator's share.
 *
 * @param costUsdPerAcre product and pass [$/ac]
 * @param valueUsdPerBu price less drying and haul [$/bu]
 * @param yieldBuPerAcre attainable yield [bu/ac]
 */
record Prices(double costUsdPerAcre, double valueUsdPerBu, double yieldBuPerAcre, List<Step> steps) {
    /** What lacks, in words. */
    static final class Lacking extends RuntimeException {
        private static final long serialVersionUID = 1;

        Lacking(String what) {
            super(what);
        }
    }

    /**
     * The prices for one treatment.
     *
     * @throws Lacking naming the sheet, where a price is not in the book
     */
    static Prices of(Season season, Field field, Works works) {
        List<Step> steps = new ArrayList<>();
        Farm farm = season.farm(field.farm()).orElse(null);
        double cropShare = farm == null ? 1 : farm.cropShare();
        double productShare = farm == null
                ? 1
                : CostKind.of(season.shelf().product(works.product()).orElseThrow())
                        .operatorShare(farm);
        double tripShare = farm == null ? 1 : CostKind.TRIP.operatorShare(farm);
        double haulingShare = farm == null ? 1 : farm.haulingShare();
        double dryingShare = farm == null ? 1 : farm.dryingShare();
        double product = product(season, works, steps);
        double trip = trip(season, field, works.product())
                .orElseThrow(
                        () -> new Lacking("what a spray pass costs: enter a charge on a pass of the sheet passes"));
        double cost = keep(
                steps,
                "cost of product and pass, your share",
                Numbers.plain(product) + " × " + Numbers.plain(productShare) + " + " + Numbers.plain(trip) + " × "
                        + Numbers.plain(tripShare) + " $/ac",
                product * productShare + trip * tripShare,
                "$/ac");
        double price = mean(season, field, AssumptionQuantity.PRICE)
                .orElseThrow(() -> new Lacking("a price of " + field.crop().word() + " in the sheet assumptions"));
        double handling = mean(season, field, AssumptionQuantity.HANDLING).orElse(0);
        double drying = mean(season, field, AssumptionQuantity.DRYING).orElse(0);
        double value = keep(
                steps,
                "value of a bushel, your share",
                Numbers.plain(price) + " × " + Numbers.plain(cropShare) + " − " + Numbers.plain(handling) + " × "
                        + Numbers.plain(haulingShare) + " for handling − " + Numbers.plain(drying) + " × "
                        + Numbers.plain(dryingShare) + " $/bu for drying",
                price * cropShare - handling * haulingShare - drying * dryingShare,
                "$/bu");
        if (value <= 0) {
            throw new Lacking("a price above drying and haul");
        }
        double yield = mean(season, field, AssumptionQuantity.YIELD)
                .orElseThrow(() -> new Lacking("an attainable yield of " + field.name() + " in the sheet assumptions"));
        return new Prices(cost, value, yield, steps);
    }

    private static double product(Season season, Works works, List<Step> steps) {
        Product product = season.shelf().product(works.product()).orElseThrow();
        Amount rate = works.rate();
        if (rate == null || !rate.comparableWith(new Amount(1, product.pricedPer()))) {
            throw new Lacking("a rate of " + product.name() + " in the unit of its price");
        }
        Amount sold = rate.in(product.pricedPer());
        return keep(
                steps,
                product.name() + " at " + rate.text() + "/ac",
                Numbers.plain(sold.value()) + " " + product.pricedPer().symbol() + "/ac × $"
                        + Numbers.plain(product.priceUsd()),
                sold.value() * product.priceUsd(),
                "$/ac");
    }

    /** The dearest trip of that product in the season; else the dearest spray trip of the field, else of the book. */
    private static OptionalDouble trip(Season season, Field field, String product) {
        List<Pass> all = season.programs().stream()
                .flatMap(program -> program.passes().stream())
                .toList();
        OptionalDouble own = all.stream()
                .filter(pass -> product.equals(pass.product()))
                .mapToDouble(Pass::chargeUsdPerAcre)
                .max();
        OptionalDouble here = own.isPresent()
                ? own
                : season.programs(field.name()).stream()
                        .flatMap(program -> program.passes().stream())
                        .filter(Prices::charged)
                        .mapToDouble(Pass::chargeUsdPerAcre)
                        .max();
        return here.isPresent()
                ? here
                : all.stream()
                        .filter(Prices::charged)
                        .mapToDouble(Pass::chargeUsdPerAcre)
                        .max();
    }

    private static boolean charged(Pass pass) {
        return pass.kind() == PassKind.SPRAY && pass.chargeUsdPerAcre() > 0;
    }

    private static OptionalDouble mean(Season season, Field field, AssumptionQuantity quantity) {
        Optional<Double> mean = season.assumptions(field, quantity)
                .map(line -> Chances.of(line.distribution()).mean());
        return mean.isPresent() ? OptionalDouble.of(mean.get()) : OptionalDouble.empty();
    }

    private static double keep(List<Step> steps, String label, String arithmetic, double value, String unit) {
        steps.add(new Step(label, arithmetic, value, unit));
        return value;
    }
}
