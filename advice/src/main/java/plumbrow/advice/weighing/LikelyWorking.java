package plumbrow.advice.weighing;

import static plumbrow.science.figure.Numbers.inBrackets;
import static plumbrow.science.figure.Numbers.plain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.advice.weighing.ProgramModel.Cut;
import plumbrow.advice.weighing.ProgramModel.Insect;
import plumbrow.advice.weighing.ProgramModel.Lot;
import plumbrow.advice.weighing.ProgramModel.Mode;
import plumbrow.advice.weighing.ProgramModel.Term;
import plumbrow.advice.weighing.ProgramModel.Trigger;
import plumbrow.advice.weighing.ProgramModel.Weed;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.figure.Step;
import plumbrow.science.figure.Working;
import plumbrow.science.stand.CornResponse;
import plumbrow.science.stand.FieldEmergence;
import plumbrow.science.weeds.HyperbolicLoss;

/**
 * One program worked by hand with every input at its mean: what a grower can redo on paper. The same formula as
 * {@link Kernel}; a test holds the two together.
 */
final class LikelyWorking {
    private final FieldModel model;
    private final ProgramModel program;
    private final double[] at;
    private final double[][] columns;
    private final Working working = new Working();

    private LikelyWorking(FieldModel model, ProgramModel program, double[] at) {
        this.model = model;
        this.program = program;
        this.at = at;
        this.columns = Arrays.stream(at).mapToObj(value -> new double[] {value}).toArray(double[][]::new);
    }

    /** @param at each input's value, by its place */
    static List<Step> of(FieldModel model, ProgramModel program, double[] at) {
        return new LikelyWorking(model, program, at).steps();
    }

    /**
     * The money of a harvest, with the yield and price that came.
     *
     * @param at each input's value, by its place, the price among them as it came
     * @param yield what was harvested [bu/ac]
     */
    static List<Step> harvested(FieldModel model, ProgramModel program, double[] at, double yield) {
        LikelyWorking working = new LikelyWorking(model, program, at);
        working.money(yield, "margin of the harvest");
        return working.working.steps();
    }

    private List<Step> steps() {
        for (Trigger trigger : program.triggers()) {
            counted(trigger);
        }
        double attainable = working.step("attainable yield", "mean of the assumptions", at[model.yield()], "bu/ac");
        double kept = keptByField();
        double yield = 0;
        for (Lot lot : program.lots()) {
            yield += lot.share() * lot(lot, attainable, kept);
        }
        if (program.lots().size() > 1) {
            working.step("yield of the field", "seed lots by their share of the acres", yield, "bu/ac");
        }
        money(Math.max(0, yield), "margin at the mean of every input");
        return working.steps();
    }

    private boolean isMade(int trigger) {
        return trigger < 0 || isMade(program.triggers().get(trigger));
    }

    private boolean isMade(Trigger trigger) {
        return trigger.count(columns, 0) >= trigger.from();
    }

    /** What is counted at the mean of every input, and so whether the pass is made: draw by draw it is now the one, now the other. */
    private void counted(Trigger trigger) {
        String unit = trigger.scouting().unit() == null
                ? trigger.insect().measure().unit()
                : trigger.scouting().unit();
        working.step(
                "count of " + trigger.insect().name() + " before " + trigger.product(),
                plain(at[trigger.insect().pressure()]) + " "
                        + trigger.insect().measure().unit()
                        + (trigger.before().isEmpty() ? "" : " × what passes before it leave")
                        + (trigger.scouting().countPerPressure() == 1
                                ? ""
                                : " × " + plain(trigger.scouting().countPerPressure()))
                        + (isMade(trigger) ? ": made" : ": not made") + ", since it waits for "
                        + plain(trigger.from()),
                trigger.count(columns, 0),
                unit);
    }

    private double keptByField() {
        double kept = 1;
        if (!program.weeds().isEmpty()) {
            kept *= 1 - weeds() / 100;
        }
        for (ProgramModel.Injury injury : program.injuries()) {
            if (!isMade(injury.trigger())) {
                continue;
            }
            double loss = working.step(
                    "crop injury by " + injury.label(),
                    plain(at[injury.loss()]) + " % on " + plain(injury.share() * 100) + " % of the acres",
                    at[injury.loss()] * injury.share(),
                    "% of yield");
            kept *= 1 - loss / 100;
        }
        double days = program.delayDays()
                + program.triggers().stream()
                        .filter(this::isMade)
                        .mapToDouble(Trigger::delayDays)
                        .sum();
        if (days > 0) {
            double loss = working.step(
                    "delay",
                    plain(days) + " days × " + plain(at[model.delayLoss()]) + " % per day",
                    Math.min(100, days * at[model.delayLoss()]),
                    "% of yield");
            kept *= 1 - loss / 100;
        }
        return kept;
    }

    private double weeds() {
        ProgramSeason season = program.season();
        return season == null ? weedsLeft() : new SeasonLines(working, program, season, at).lossPct();
    }

    private double weedsLeft() {
        double load = 0;
        double most = 0;
        for (Weed weed : program.weeds()) {
            double left = left(weed.name(), weed.cuts());
            load += working.step(
                    "competition by " + weed.name(),
                    plain(at[weed.density()]) + " plants/m² × " + plain(left * 100) + " % left × "
                            + plain(at[weed.loss()]) + " % per plant/m²",
                    at[weed.density()] * left * at[weed.loss()],
                    "%",
                    "mixed-weed-loss");
            most = Math.max(most, weed.mostLossPct());
        }
        return working.step(
                "yield lost to weeds",
                plain(load) + " % ÷ (1 + " + plain(load) + " ÷ " + plain(most) + ")",
                HyperbolicLoss.ofLoad(load, most),
                "%",
                "mixed-weed-loss");
    }

    private double left(String pest, List<Cut> cuts) {
        double left = 1;
        List<String> factors = new ArrayList<>();
        for (Cut cut : cuts) {
            if (!isMade(cut.trigger())) {
                continue;
            }
            double through = 1;
            for (Term term : cut.terms()) {
                through -= term.weight() * at[term.control()];
            }
            left *= Math.max(0, through);
            factors.add("(1 − " + plain(1 - Math.max(0, through)) + " by " + cut.label() + ")");
        }
        if (!factors.isEmpty()) {
            working.step(
                    "share of " + pest + " left by the passes",
                    String.join(" × ", factors),
                    left,
                    "",
                    "passes-control");
        }
        return left;
    }

    private double lot(Lot lot, double attainable, double keptByField) {
        double stand = at[lot.stand()] / 100;
        double plants = plants(lot) / 100;
        double kept = 1;
        for (int j = 0; j < program.insects().size(); j++) {
            kept *= 1 - insect(program.insects().get(j), lot, lot.modes().get(j));
        }
        double grown = working.step(
                "yield of " + lot.seed(),
                plain(attainable) + " bu/ac × " + plain(plants * 100) + " % kept by the plants × "
                        + (stand == 1 ? "" : plain(stand * 100) + " % vigour × ") + plain(kept * 100)
                        + " % kept from insects × " + plain(keptByField * 100) + " % kept otherwise",
                attainable * plants * stand * kept * keptByField,
                "bu/ac");
        double lag = lot.yearsBehind() * at[model.geneticLag()];
        if (at[lot.gain()] == 0 && lag == 0) {
            return grown;
        }
        return working.step(
                "with the genetics of " + lot.seed(),
                plain(grown) + " + " + plain(at[lot.gain()]) + " − " + plain(lot.yearsBehind()) + " years × "
                        + plain(at[model.geneticLag()]) + " bu/ac per year",
                grown + at[lot.gain()] - lag,
                "bu/ac",
                "genetic-lag");
    }

    /** The final stand of a lot and what it keeps of the yield [%]. */
    private double plants(Lot lot) {
        LotStand stand = lot.plants();
        double living = at[Math.max(stand.counted(), stand.emergence())];
        if (stand.counted() < 0) {
            double share = stand.crop().share(living / 100, stand.seedsThousand());
            living = working.step(
                    "final stand of " + lot.seed(),
                    plain(stand.seedsThousand()) + " thousand seeds/ac × " + plain(stand.germination() * 100)
                            + " % germination × " + plain(share * 100) + " % come up",
                    stand.plantsThousand(living),
                    "1000 plants/ac",
                    "final-stand");
        } else {
            living = working.step(
                    "final stand of " + lot.seed(),
                    "as counted, those that live, in thousands",
                    living / 1000,
                    "1000 plants/ac");
        }
        double best = at[stand.best()];
        double sharp = stand.sharpness() < 0 ? 1 : at[stand.sharpness()];
        double kept = working.step(
                "yield kept by the plants of " + lot.seed(),
                answer(stand, living, stand.crop() == FieldEmergence.WHEAT ? best : best / 1000, sharp),
                stand.answerPct(living, best, sharp),
                "%",
                stand.crop().cropWord() + "-stand-response");
        if (stand.late() >= 0 && stand.dateLossPct() > 0) {
            kept = working.step(
                    "with the planting date",
                    stand.crop() == FieldEmergence.SOYBEAN
                            ? plain(kept) + " % × (1 − " + plain(at[stand.late()]) + " × " + plain(stand.dateLossPct())
                                    + " %)"
                            : plain(kept) + " − " + plain(at[stand.late()]) + " × " + plain(stand.dateLossPct()),
                    stand.onItsDatePct(kept, at[stand.late()]),
                    "%",
                    stand.crop().cropWord() + "-stand-response");
        }
        return stand.gaps() < 0
                ? kept
                : working.step(
                        "with its gaps",
                        plain(kept) + " − " + plain(at[stand.gaps()]),
                        Math.max(0, kept - at[stand.gaps()]),
                        "%");
    }

    private static String answer(LotStand stand, double plants, double best, double sharp) {
        return switch (stand.crop()) {
            case CORN ->
                plants >= CornResponse.FEWEST_THOUSAND && plants <= CornResponse.MOST_OF_BEST * best
                        ? "100 − " + plain(sharp) + " × 0.07737 × (30.33 × (" + plain(plants) + " − " + plain(best)
                                + ") ÷ " + plain(best) + ")²"
                        : plain(plants) + " thousand plants, outside the response about " + plain(best) + " thousand";
            case SOYBEAN -> "100 × (1 − 50^(−" + plain(plants) + " ÷ " + plain(best) + "))";
            case WHEAT ->
                plain(plants) + " thousand plants/ac, " + plain(best * 100)
                        + " % by the strict table, else by the forgiving";
        };
    }

    private double insect(Insect insect, Lot lot, List<Mode> modes) {
        double left = left(insect.name(), insect.cuts());
        double pressure = Math.min(insect.cap(), at[insect.pressure()]);
        double bare = working.step(
                insect.name() + " on plants of " + lot.seed() + " without a trait",
                plain(pressure) + " " + insect.measure().unit() + " × " + plain(left) + " left × "
                        + plain(at[insect.loss()]) + " % per "
                        + insect.measure().one(),
                pressure * left * at[insect.loss()],
                "% of yield");
        if (modes.isEmpty()) {
            return Math.min(100, bare) / 100;
        }
        double through = 1;
        List<String> factors = new ArrayList<>();
        for (Mode mode : modes) {
            double works = mode.works() < 0 ? 1 : at[mode.works()];
            double control = works * at[mode.control()] + (1 - works) * mode.ifFailed();
            through *= 1 - control;
            factors.add("(1 − " + plain(control) + " by " + mode.group() + ")");
        }
        working.step("share of injury through the trait", String.join(" × ", factors), through, "", "combined-tactics");
        double refuge = lot.unprotected() * (1 - insect.neighbourShare());
        double loss = working.step(
                insect.name() + " on " + lot.seed() + ", refuge plants and trait plants together",
                plain(bare) + " % × (" + plain(refuge) + " refuge + " + plain(1 - lot.unprotected()) + " × "
                        + plain(through) + ")",
                Math.min(100, bare * (refuge + (1 - lot.unprotected()) * through)),
                "% of yield",
                "refuge-loss");
        return loss / 100;
    }

    private double later() {
        double[] draws = program.laterUsdPerAcre();
        return draws.length == 0
                ? 0
                : working.step(
                        "cost in later years",
                        "mean of the draws: seed left in the soil and resistance selected, in money of this season",
                        SortedDraws.mean(draws),
                        "$/ac");
    }

    private double perBushel(String label, double usd, double share, double yield) {
        return working.step(
                label,
                "$" + plain(usd) + "/bu × " + plain(yield) + " bu/ac"
                        + (share == 1 ? "" : " × " + plain(share * 100) + " % of it the operator's"),
                usd * yield * share,
                "$/ac");
    }

    private void money(double yield, String margin) {
        double share = model.farm().cropShare();
        double gross = working.step(
                "crop sold",
                "$" + plain(at[model.price()]) + "/bu × " + plain(yield) + " bu/ac"
                        + (share == 1 ? "" : " × " + plain(share * 100) + " % crop share"),
                at[model.price()] * yield * share,
                "$/ac");
        double handling = perBushel(
                model.drying() < 0 ? "drying and haul" : "haul and check-off",
                at[model.handling()],
                model.farm().haulingShare(),
                yield);
        if (model.drying() >= 0) {
            handling += perBushel("drying", at[model.drying()], model.farm().dryingShare(), yield);
        }
        List<CostLine> lines = new ArrayList<>(program.costs());
        double paid = program.costUsdPerAcre();
        for (Trigger trigger : program.triggers()) {
            if (isMade(trigger)) {
                lines.addAll(trigger.costs());
                paid += trigger.costUsdPerAcre();
            }
        }
        for (CostLine line : lines) {
            double mine = line.operatorShare(model.farm());
            working.step(
                    line.label(),
                    mine == 1
                            ? line.arithmetic()
                            : line.arithmetic() + "; " + plain(mine * 100) + " % of it the operator's",
                    line.usdPerAcre(),
                    "$/ac");
        }
        boolean own = lines.stream().allMatch(line -> line.operatorShare(model.farm()) == 1);
        double cost = working.step(
                "cost of the program",
                own ? "the lines above together" : "the lines above together, each at the operator's share",
                paid,
                "$/ac");
        double later = later();
        working.step(
                margin,
                plain(gross) + " − " + plain(handling) + " − " + plain(cost)
                        + (later == 0 ? "" : " − " + inBrackets(later)),
                gross - handling - cost - later,
                "$/ac",
                "margin-gain");
    }
}
