package plumbrow.advice.years;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.weighing.EqualRule;
import plumbrow.advice.weighing.Leads;
import plumbrow.advice.weighing.Odds;
import plumbrow.advice.weighing.Quantities;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.figure.Numbers;

/** Says where the comparison of one season and a look ahead name different programs, and why. */
final class NowAndLater {
    /** Less yield than this between two programs is no reason [% of the yield]. */
    private static final double SEEN_PCT = .5;

    private NowAndLater() {}

    /**
     * A rotation with what came of it.
     *
     * @param repeated whether it is one program of the field every year, as the comparison has it
     */
    @SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose; read only.
    record Looked(
            String name, boolean advisable, boolean repeated, double presentValue, double perYear, FieldLook.Run run) {
        double now() {
            return SortedDraws.mean(run.margins()[0]);
        }
    }

    /** The sentence for both pages; empty where the same program is best in both, or none is to be compared. */
    static String says(List<Looked> all, int seasons, int firstYear) {
        Optional<Looked> now = best(all, true);
        Optional<Looked> later = best(all, false);
        if (now.isEmpty()
                || later.isEmpty()
                || seasons < 2
                || now.get().name().equals(later.get().name())) {
            return "";
        }
        Looked one = now.get();
        Looked many = later.get();
        double ahead = one.now() - many.now();
        String alone = "In " + firstYear + " alone " + one.name()
                + (EqualRule.DEFAULT.ahead(ahead, leads(one, many, 1))
                        ? " earns most, " + Quantities.drawnDollars(ahead) + "/ac more than " + many.name() + "; "
                        : " and " + many.name() + " are about equal; ");
        double more = many.perYear() - one.perYear();
        Leads leads = leads(many, one, seasons);
        return EqualRule.DEFAULT.ahead(more, leads)
                ? alone + "over " + seasons + " seasons " + many.name() + " does best, " + Quantities.drawnDollars(more)
                        + "/ac a year more and ahead of it in " + often(leads) + ", "
                        + because(one, many, firstYear) + "."
                : alone + "over " + seasons + " seasons the two are about equal.";
    }

    private static String often(Leads leads) {
        return leads.manyLevel() ? leads.words() : Odds.words(leads.ahead() + leads.level() / 2);
    }

    private static Optional<Looked> best(List<Looked> all, boolean now) {
        return all.stream()
                .filter(one -> one.advisable() && one.repeated())
                .max((a, b) ->
                        now ? Double.compare(a.now(), b.now()) : Double.compare(a.presentValue(), b.presentValue()));
    }

    /** How often one leads another over the first so many years, money of every year alike. */
    private static Leads leads(Looked one, Looked other, int years) {
        return EqualRule.DEFAULT.leads(sum(one, years), sum(other, years), years);
    }

    private static double[] sum(Looked one, int years) {
        double[] sum = one.run().margins()[0].clone();
        for (int y = 1; y < years; y++) {
            for (int k = 0; k < sum.length; k++) {
                sum[k] += one.run().margins()[y][k];
            }
        }
        return sum;
    }

    private static String because(Looked one, Looked many, int firstYear) {
        int last = one.run().margins().length - 1;
        @Nullable String reason = null;
        double most = SEEN_PCT;
        for (int j = 0; j < one.run().weeds().size(); j++) {
            WeedRun weed = one.run().weeds().get(j);
            WeedRun beside = many.run().weeds().get(j);
            double more = grown(weed.lossPct(), last) - grown(beside.lossPct(), last);
            if (more > most) {
                most = more;
                reason = "since it leaves less seed of " + weed.weed() + ", which under " + one.name() + " costs "
                        + percent(SortedDraws.mean(weed.lossPct()[last])) + " of the yield by "
                        + (firstYear + last) + " and under this " + percent(SortedDraws.mean(beside.lossPct()[last]))
                        + resistance(weed, beside, last);
            }
        }
        for (int j = 0; j < one.run().insects().size(); j++) {
            InsectRun insect = one.run().insects().get(j);
            InsectRun beside = many.run().insects().get(j);
            if (insect.aimed()[last] && worn(insect, last) - worn(beside, last) > 10 * SEEN_PCT && reason == null) {
                reason = "since the trait of " + one.name() + " against " + insect.insect() + " wears out: by "
                        + (firstYear + last) + " it spares "
                        + percent(SortedDraws.mean(insect.preventedPct()[last]))
                        + " of the injury, now "
                        + percent(SortedDraws.mean(insect.preventedPct()[0]));
            }
        }
        return reason == null ? "since the margins of " + one.name() + " fall more in later years" : reason;
    }

    private static String percent(double value) {
        return Numbers.fixed(value, 0) + " %";
    }

    private static double grown(double[][] pct, int last) {
        return SortedDraws.mean(pct[last]) - SortedDraws.mean(pct[0]);
    }

    private static double worn(InsectRun run, int last) {
        return run.aimed()[last]
                ? SortedDraws.mean(run.preventedPct()[0]) - SortedDraws.mean(run.preventedPct()[last])
                : 0;
    }

    /** The site of action to which resistance spreads most under one and not under the other. */
    private static String resistance(WeedRun weed, WeedRun beside, int last) {
        double most = .05;
        String says = "";
        for (int l = 0; l < weed.groups().size(); l++) {
            double more = SortedDraws.mean(weed.resistant()[l][last]) - SortedDraws.mean(beside.resistant()[l][last]);
            if (more > most) {
                most = more;
                says = ", much of it resistant to group " + weed.groups().get(l);
            }
        }
        return says;
    }
}
