package plumbrow.advice.gates;

import java.util.List;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelUse;

/**
 * Whether all passes of a product together stay within its season maximum.
 *
 * <p>Protects the law. The total is per treated acre: a pass over part of the field counts in full, because some acre
 * gets every pass. What the log says went on this season counts too. What is known may already be too much even where another pass has no rate. Otherwise unknown.
 *
 * <p>Source: the label. Needs: the season maximum of each product on the crop, and every rate in the same kind of unit.
 */
final class ProductSeasonMaximum extends Question {
    ProductSeasonMaximum() {
        super(
                "product-season-maximum",
                Protects.LAW,
                "Do all passes of a product together stay within its season maximum?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.byProduct().entrySet().stream()
                .flatMap(entry -> at.use(entry.getKey()).stream().map(use -> judge(at, use, entry.getValue())))
                .toList();
    }

    private Finding judge(Case at, LabelUse use, List<Application> applications) {
        Amount most = use.seasonMax();
        if (most == null) {
            return at.index()
                    .noMaximum(use.product(), use.crop(), LabelLimit.SEASON_AMOUNT::equalsIgnoreCase)
                    .map(source -> clear(
                                    use.product(), "The label was read and prints no most of the product in a season.")
                            .standingIn(source))
                    .orElseGet(() -> unknown(
                            use,
                            "The season maximum on " + use.crop().word() + " has not been read.",
                            "Look up the most per acre and season for "
                                    + use.crop().word()
                                    + " on the label; where it prints none, enter that on the sheet label_limits."));
        }
        double known = 0;
        boolean complete = true;
        for (Application application : applications) {
            Amount rate = application.rate();
            if (rate == null || !rate.comparableWith(most)) {
                complete = false;
            } else {
                known += rate.in(most.unit()).value();
            }
        }
        String total = new Amount(known, most.unit()).text() + "/ac over the season" + Logged.among(applications);
        if (Rounding.above(known, most.value())) {
            return measured(
                            use,
                            Standing.BARRED,
                            known,
                            most,
                            total + " is more than the " + most.text() + "/ac allowed.")
                    .clearedBy("Cut the passes of " + use.product() + " to " + most.text() + "/ac together.");
        }
        return complete
                ? measured(use, Standing.CLEAR, known, most, total + "; the label allows " + most.text() + "/ac.")
                : unknown(
                        use,
                        "A pass has no rate in the unit of the season maximum, " + most.text() + "/ac.",
                        "Write every rate of " + use.product() + " in the label's unit.");
    }

    private Finding measured(LabelUse use, Standing standing, double total, Amount most, String says) {
        return Finding.of(this, standing, use.product(), says)
                .against(total, most.value(), most.unit().symbol() + "/ac")
                .standingIn(use.source());
    }

    private Finding unknown(LabelUse use, String says, String clears) {
        return Finding.of(this, Standing.UNKNOWN, use.product(), says)
                .standingIn(use.source())
                .clearedBy(clears);
    }
}
