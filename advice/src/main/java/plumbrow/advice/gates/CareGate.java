package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.shelf.ProductCare;

/**
 * A gate on what the label asks of whoever handles a product, once for each product of the program. Where nothing of it was
 * read it is silent: {@link CareRead} asks for it once.
 */
abstract class CareGate extends Question {
    CareGate(String id, Protects protects, String question) {
        super(id, protects, question);
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .map(Application::product)
                .distinct()
                .flatMap(product -> at.care(product).stream())
                .flatMap(care -> judge(at, care)
                        .map(finding -> finding.source().isEmpty() ? finding.standingIn(care.source()) : finding))
                .toList();
    }

    abstract Stream<Finding> judge(Case at, ProductCare care);
}
