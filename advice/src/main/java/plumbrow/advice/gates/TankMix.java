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
 * that is in the tank, asks for one of several of which none is, or lists what may be in it and something else is. Unknown where
 * what a label names may be in another product of the tank whose content is not in the book. A mix of which no label as read says anything is conditional.
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
                .flatMap(rule ->
                        held(at, application, rule, partners).map(finding -> finding.standingIn(rule.source())));
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

    private Stream<Finding> held(Case at, Application application, MixRule rule, List<String> partners) {
        return switch (rule.word()) {
            case REQUIRED -> Stream.of(asked(at, application, rule, partners));
            case FORBIDDEN ->
                rule.partners().stream().flatMap(named -> forbidden(at, application, named, partners).stream());
            case ONLY -> partners.stream().map(partner -> only(at, application, rule, partner));
        };
    }

    /** Of several that a label asks for, one is enough. */
    private Finding asked(Case at, Application application, MixRule rule, List<String> partners) {
        String named = String.join(" or ", rule.partners());
        if (partners.stream().anyMatch(partner -> meant(at, rule, partner))) {
            return clear(application.subject(), "The label asks for " + named + ", and it is in the tank.");
        }
        return partners.stream()
                .filter(partner -> rule.partners().stream().anyMatch(one -> contentUnknown(at, one, partner)))
                .findFirst()
                .map(partner -> unknown(
                        application.subject(),
                        "The label asks for " + named + " in the tank, and whether " + partner
                                + " is or holds it is not in the book.",
                        "Copy the ingredient statement of " + partner + "."))
                .orElseGet(() -> barred(
                        application.subject(),
                        "The label asks for " + named + " in the tank, and none is planned.",
                        "Add " + named + " to the tank of this pass."));
    }

    private Optional<Finding> forbidden(Case at, Application application, String named, List<String> partners) {
        Optional<String> found =
                partners.stream().filter(partner -> meant(at, named, partner)).findFirst();
        if (found.isPresent()) {
            return Optional.of(barred(
                    application.subject(),
                    "The label forbids " + named + " in the tank, and " + found.get() + " is.",
                    "Spray " + found.get() + " in a pass of its own."));
        }
        return partners.stream()
                .filter(partner -> contentUnknown(at, named, partner))
                .findFirst()
                .map(partner -> unknown(
                        application.subject(),
                        "The label forbids " + named + " in the tank, and what is in " + partner
                                + " is not in the book.",
                        "Copy the ingredient statement of " + partner + "."));
    }

    /** A label that lists what may go in with it bars all else. */
    private Finding only(Case at, Application application, MixRule rule, String partner) {
        String list = "The label allows " + String.join(", ", rule.partners()) + " in the tank and nothing else";
        if (meant(at, rule, partner)) {
            return clear(application.subject(), list + "; " + partner + " is one of them.");
        }
        return rule.partners().stream().anyMatch(named -> contentUnknown(at, named, partner))
                ? unknown(
                        application.subject(),
                        list + ", and what is in " + partner + " is not in the book.",
                        "Copy the ingredient statement of " + partner + ", or spray it in a pass of its own.")
                : barred(
                        application.subject(),
                        list + "; " + partner + " is none of them.",
                        "Spray " + partner + " in a pass of its own.");
    }

    /** A mix that no label speaks of: the strictest of the labels holds, and it may not be compatible. */
    private Optional<Finding> silent(Case at, Application application, List<MixRule> rules, List<String> partners) {
        if (rules.stream().anyMatch(rule -> rule.word() == MixRule.Word.ONLY)) {
            return Optional.empty();
        }
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
        return rule.partners().stream().anyMatch(named -> meant(at, named, partner));
    }

    private static boolean meant(Case at, String meant, String partner) {
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
     * Whether what a rule names may be in a partner whose content is not in the book. What is named by product or kind is told by
     * the shelf. An adjuvant holds no pesticide and is
     * no other product, but it may hold what is neither, such as ammonium sulfate.
     */
    private static boolean contentUnknown(Case at, String named, String partner) {
        Optional<ProductKind> kind = at.index().product(partner).map(Product::kind);
        boolean ofName = at.index().product(named).isPresent()
                || Arrays.stream(ProductKind.values())
                        .anyMatch(one -> one.word().equalsIgnoreCase(named));
        if (ofName && kind.isPresent()) {
            return false;
        }
        boolean labelled = kind.map(ProductKind::underLabel).orElse(true);
        boolean neither = !ofName && ActiveName.known(named).isEmpty();
        return (labelled || neither) && at.index().actives(partner).isEmpty();
    }
}
