package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.shelf.UseTerms;

/**
 * A gate on what the label asks of one use beyond its rates. Where the terms of a use were not read at all it is silent:
 * {@link TermsRead} asks for them once.
 */
abstract class UseGate extends Question {
    UseGate(String id, Protects protects, String question) {
        super(id, protects, question);
    }

    @Override
    public final List<Finding> check(Case at) {
        return at.planned().stream()
                .flatMap(application -> at.terms(application.product()).stream()
                        .flatMap(terms -> judge(at, application, terms)
                                .map(finding ->
                                        finding.source().isEmpty() ? finding.standingIn(terms.source()) : finding)))
                .toList();
    }

    abstract Stream<Finding> judge(Case at, Application application, UseTerms terms);
}
