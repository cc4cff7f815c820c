package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;

/**
 * A labelled product that goes on the field by the plan, or went on by the log.
 *
 * @param pass the pass it is planned as; null where only the log holds it
 * @param date the day; null where none is planned
 * @param rate per treated acre; null where none is planned
 * @param plan how it is to be sprayed, where that is planned
 */
record Application(
        @Nullable Pass pass,
        String product,
        @Nullable LocalDate date,
        @Nullable Amount rate,
        @Nullable SprayPlan plan) {

    /** What a pass puts on; where a line of the log fulfils it, what that says: each application counts once. */
    static Optional<Application> planned(SeasonIndex index, Program program, Pass pass, @Nullable Done done) {
        String product = pass.product();
        if (product == null || !underLabel(index, product).orElse(false)) {
            return Optional.empty();
        }
        return Optional.of(new Application(
                pass,
                product,
                done == null ? pass.date() : done.date(),
                done == null ? pass.rate() : done.rate(),
                index.sprayPlan(program, pass).orElse(null)));
    }

    /** What the log says went on; a product that is not on the shelf is taken for one with a label. */
    static Optional<Application> logged(SeasonIndex index, Done line) {
        return underLabel(index, line.product()).orElse(true)
                ? Optional.of(new Application(null, line.product(), line.date(), line.rate(), null))
                : Optional.empty();
    }

    private static Optional<Boolean> underLabel(SeasonIndex index, String product) {
        return index.product(product).map(Product::kind).map(ProductKind::underLabel);
    }

    /** What a finding on this one application is headed with. */
    String subject() {
        return (pass == null ? "log of " + date : "pass " + pass.number()) + ", " + product;
    }

    /** How it is put on; null where that is not planned. */
    @Nullable
    Method method() {
        if (plan != null) {
            return plan.method();
        }
        return pass != null && pass.kind() == PassKind.SEED ? Method.ON_SEED : null;
    }

    /** Whether it goes through the air as droplets, or may do so for all that is planned. */
    boolean sprayed() {
        Method method = method();
        return pass != null && pass.kind() == PassKind.SPRAY && (method == null || method.sprayed());
    }

    /** Whether any of it goes through the air: also what a sprinkler or a hand-held nozzle throws. */
    boolean throughAir() {
        Method method = method();
        return pass != null
                && pass.kind() == PassKind.SPRAY
                && (sprayed() || method == Method.CHEMIGATION || method == Method.SPOT);
    }

    /** Whether it goes out with irrigation water. */
    boolean chemigated() {
        return method() == Method.CHEMIGATION;
    }

    /** Whether it is put on in the open, not on the seed before planting. */
    boolean outdoors() {
        return pass != null && method() != Method.ON_SEED;
    }
}
