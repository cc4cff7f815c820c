package plumbrow.advice.gates;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether the label allows the way of application.
 *
 * <p>Protects the law and neighbours: aerial use and chemigation are often barred. Barred where the way is not among
 * those read as allowed. Federal law lets a method be used that the label does not name unless it says only those;
 * whoever reads the label for the book decides that. Seed goes in with the way on seed.
 *
 * <p>Source: the label; 7 U.S.C. 136(ee). Needs: the ways the label allows, and the way planned.
 */
final class MethodAllowed extends UseGate {
    MethodAllowed() {
        super("method", Protects.LAW, "Does the label allow this way of application?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        Set<Method> allowed = terms.methods();
        Method method = application.method();
        Pass pass = application.pass();
        if (allowed == null) {
            return Stream.of(unknown(
                    application.subject(),
                    "The ways of application that the label allows have not been read.",
                    "Look up on the label how it may be put on: ground, band, in furrow, air, chemigation."));
        }
        if (method == null) {
            boolean asked = application.plan() != null || pass == null || pass.kind() == PassKind.SEED;
            return asked && allowed.size() < Method.values().length
                    ? Stream.of(unknown(
                            application.subject(),
                            "How it is put on is not planned; the label allows " + words(allowed) + ".",
                            "Plan the way of application of this pass."))
                    : Stream.of();
        }
        return Stream.of(
                allowed.contains(method)
                        ? clear(application.subject(), "The label allows " + method.word() + ".")
                        : barred(
                                application.subject(),
                                "The label allows " + words(allowed) + ", not " + method.word() + ".",
                                "Put it on as " + words(allowed) + "."));
    }

    private static String words(Set<Method> methods) {
        return methods.stream().sorted().map(Method::word).collect(Collectors.joining(" or "));
    }
}
