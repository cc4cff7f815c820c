package plumbrow.advice.gates;

import java.util.List;

/**
 * Whether workers can see what was applied where, and until when they stay out.
 *
 * <p>Protects people. Asked once of a program that puts a labelled product on in the open. Where it is not shown yet it is
 * a condition. Unknown where nobody has said. A farm on which only the owner's close family works is free of the duty;
 * the desk can't tell, and asks.
 *
 * <p>Source: 40 CFR 170.309(h), 170.311(b) (value from memory). Needs: whether information is shown.
 */
final class CentralDisplay extends Question {
    private static final String DUTY =
            "Show product, registration number, ingredients, field, start, end and restricted-entry "
                    + "interval with the safety sheet, within 24 h and before workers go in, until 30 days after the interval; keep "
                    + "it 2 years.";

    CentralDisplay() {
        super("central-display", Protects.PEOPLE, "Can workers see what was applied where?");
    }

    @Override
    public List<Finding> check(Case at) {
        if (at.planned().stream().noneMatch(Application::outdoors)) {
            return List.of();
        }
        String subject = at.field().name();
        Finding finding = switch (at.season().work().crew().display()) {
            case YES -> clear(subject, "Information on applications is shown where workers can see it.");
            case NO -> conditional(subject, "No place shows workers what was applied.", DUTY);
            case UNKNOWN ->
                unknown(
                        subject,
                        "Whether workers can see what was applied is not known.",
                        "Say whether there is such a place. " + DUTY);
        };
        return List.of(finding.standingIn("40 CFR 170.309(h) and 170.311(b)"));
    }
}
