package plumbrow.advice.gates;

import java.util.List;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelUse;

/**
 * Whether a product goes on no more often than its label allows.
 *
 * <p>Protects the law. Each pass with the product counts, whatever share of the field it covers: some acre may get them
 * all. What the log says went on this season counts too. Unknown where the number was not read; clear where
 * the label was read and prints none.
 *
 * <p>Source: the label. Needs: the most applications per season of each product on the crop.
 */
final class MostApplications extends Question {
    MostApplications() {
        super("applications", Protects.LAW, "Does it go on no more often than the label allows?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.byProduct().entrySet().stream()
                .flatMap(entry -> at.use(entry.getKey()).stream().map(use -> judge(at, use, entry.getValue())))
                .toList();
    }

    private Finding judge(Case at, LabelUse use, List<Application> applications) {
        Integer most = use.mostApplications();
        int count = applications.size();
        String times = (count == 1 ? "1 application" : count + " applications") + Logged.among(applications);
        if (most == null) {
            return at.index()
                    .noMaximum(use.product(), use.crop(), LabelLimit.APPLICATIONS::equalsIgnoreCase)
                    .map(source -> clear(
                                    use.product(), times + "; the label was read and prints no most of applications.")
                            .standingIn(source))
                    .orElseGet(() -> unread(use, times));
        }
        Finding finding = count > most
                ? barred(use.product(), times + ", but the label allows " + most + ".", "Drop to " + most + ".")
                : clear(use.product(), times + "; the label allows " + most + ".");
        return finding.against(count, most, "applications").standingIn(use.source());
    }

    private Finding unread(LabelUse use, String times) {
        return unknown(
                        use.product(),
                        "The program has " + times + "; how many the label allows has not been read.",
                        "Look up the most applications per season for "
                                + use.crop().word()
                                + " on the label; where it prints none, enter that on the sheet label_limits.")
                .standingIn(use.source());
    }
}
