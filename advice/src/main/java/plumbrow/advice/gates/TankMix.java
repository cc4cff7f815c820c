package plumbrow.advice.gates;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.ActiveName;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;

/**
 * Whether what goes into one tank may, and whether what a label asks for is in it.
 *
 * <p>Protects the law. A partner is a product, an active ingredient or a kind of product. Barred where a label forbids one
 * that is in the tank or asks for one that is not. Unknown where a label forbids an ingredient and the content of another
 * product in the tank is not in the book. A mix of which no label as read says anything is conditional.
 *
 * <p>Source: the labels; 7 U.S.C. 136(ee). Needs: the mix rules of each product, the tank of each pass, and the
 * ingredients of its products.
 */
final class TankMix extends Question {
    TankMix() {
        super("tank-mix", Protects.LAW, "Do the labels allow what goes into one tank?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .filter(application -> application.plan() != null)
                .flatMap(application -> judge(at, application))
                .toList();
    }

    private Stream<Finding> judge(Case at, Application application) {
        List<String> partners = partners(at, application);
        List<MixRule> rules = at.index().mixRules(application.product());
        Stream<Finding> ruled = rules.stream()
                .flatMap(rule -> held(at, application, rule, partners).stream()
                        .map(finding -> finding.standingIn(rule.source())));
        return Stream.concat(ruled, silent(at, application, rules, partners).stream());
    }

    /** Other products in the tank of a pass; none where it goes out by itself. */
    private static List<String> partners(Case at, Application application) {
        SprayPlan plan = application.plan();
        String tank = plan == null ? null : plan.tank();
        return tank == null
                ? List.of()
                : at.passes().stream()
                        .filter(pass -> at.index()
                                .sprayPlan(at.program(), pass)
                                .filter(other -> tank.equals(other.tank()))
                                .isPresent())
                        .flatMap(pass -> product(pass).stream())
                        .filter(product -> !product.equals(application.product()))
                        .distinct()
                        .toList();
    }

    private static Optional<String> product(Pass pass) {
        return Optional.ofNullable(pass.product());
    }

    private Optional<Finding> held(Case at, Application application, MixRule rule, List<String> partners) {
        Optional<String> found =
                partners.stream().filter(partner -> meant(at, rule, partner)).findFirst();
        if (rule.word() == MixRule.Word.REQUIRED) {
            return Optional.of(
                    found.isPresent()
                            ? clear(
                                    application.subject(),
                                    "The label asks for " + rule.partner() + ", and it is in the tank.")
                            : barred(
                                    application.subject(),
                                    "The label asks for " + rule.partner() + " in the tank, and none is planned.",
                                    "Add " + rule.partner() + " to the tank of this pass."));
        }
        if (found.isPresent()) {
            return Optional.of(barred(
                    application.subject(),
                    "The label forbids " + rule.partner() + " in the tank, and " + found.get() + " is.",
                    "Spray " + found.get() + " in a pass of its own."));
        }
        return partners.stream()
                .filter(partner -> contentUnknown(at, rule, partner))
                .findFirst()
                .map(partner -> unknown(
                        application.subject(),
                        "The label forbids " + rule.partner() + " in the tank, and what is in " + partner
                                + " is not in the book.",
                        "Copy the ingredient statement of " + partner + "."));
    }

    /** A mix that no label speaks of: the strictest of the labels holds, and it may not be compatible. */
    private Optional<Finding> silent(Case at, Application application, List<MixRule> rules, List<String> partners) {
        List<String> unruled = partners.stream()
                .filter(partner -> rules.stream().noneMatch(rule -> meant(at, rule, partner)))
                .toList();
        return unruled.isEmpty()
                ? Optional.empty()
                : Optional.of(conditional(
                                application.subject(),
                                "No rule of its label in the book speaks of " + String.join(", ", unruled)
                                        + " in the same tank.",
                                "Read the tank-mix words of every label in the tank, keep the strictest of each, and try the mix "
                                        + "in a jar.")
                        .standingIn("the tank-mix words of each label; 7 U.S.C. 136(ee)"));
    }

    private static boolean meant(Case at, MixRule rule, String partner) {
        String meant = rule.partner();
        boolean kind = at.index()
                .product(partner)
                .map(Product::kind)
                .filter(one -> one.word().equalsIgnoreCase(meant))
                .isPresent();
        return kind
                || partner.equalsIgnoreCase(meant)
                || at.index().actives(partner).stream().anyMatch(active -> ActiveName.same(active.ingredient(), meant));
    }

    /**
     * Whether what the rule forbids may be in a partner whose content is not in the book. An adjuvant holds no pesticide and is
     * no other product, but it may hold what is neither, such as ammonium sulfate.
     */
    private static boolean contentUnknown(Case at, MixRule rule, String partner) {
        boolean labelled =
                at.index().product(partner).map(one -> one.kind().underLabel()).orElse(true);
        boolean neither = ActiveName.known(rule.partner()).isEmpty()
                && at.index().product(rule.partner()).isEmpty()
                && Arrays.stream(ProductKind.values())
                        .noneMatch(kind -> kind.word().equalsIgnoreCase(rule.partner()));
        return (labelled || neither) && at.index().actives(partner).isEmpty();
    }
}
