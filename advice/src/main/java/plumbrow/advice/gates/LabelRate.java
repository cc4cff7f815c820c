package plumbrow.advice.gates;

import java.util.List;

/**
 * Whether each application's rate is within the label.
 *
 * <p>Protects the law. More than the highest rate is barred. Less than the lowest is barred where the label forbids it,
 * conditional where it does not, unknown where nobody has looked: federal law lets a grower use less than the label
 * rate unless the label forbids it, but a guarantee or resistance guidance may still ask for the full rate, and a
 * state's distribution may differ. A label with a single rate has it as lowest and highest.
 *
 * <p>Source: the label; 7 U.S.C. 136(ee) for less than the label rate (value from memory). Needs: lowest and highest
 * rate and whether less is forbidden. Rates are compared within one kind of unit only: a weight is never held against a
 * volume.
 */
final class LabelRate extends Question {
    LabelRate() {
        super("label-rate", Protects.LAW, "Is the rate within the label?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .flatMap(application -> at.use(application.product()).stream()
                        .map(use -> new RateRange(
                                        this,
                                        application,
                                        use.lowRate(),
                                        use.highRate(),
                                        use.lessForbidden(),
                                        use.crop().word(),
                                        use.source())
                                .judge()))
                .toList();
    }
}
