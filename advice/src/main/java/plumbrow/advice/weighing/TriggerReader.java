package plumbrow.advice.weighing;

import static plumbrow.science.figure.Numbers.plain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.ProgramModel.Cut;
import plumbrow.advice.weighing.ProgramModel.Insect;
import plumbrow.advice.weighing.ProgramModel.Trigger;

/** Reads the passes of a field's programs that wait for scouting. */
final class TriggerReader {
    /** Draws of scouting are no inputs that a person could know or change: they are luck. */
    private static final String LUCK = "scouting: ";

    private static final Distribution EVEN = new Distribution.Even(0, 1);

    private final Season season;
    private final Field field;
    private final Farm farm;
    private final Variables variables;
    private final List<Insect> pressures;
    private final List<String> cautions;

    TriggerReader(
            Season season, Field field, Farm farm, Variables variables, List<Insect> pressures, List<String> cautions) {
        this.season = season;
        this.field = field;
        this.farm = farm;
        this.variables = variables;
        this.pressures = pressures;
        this.cautions = cautions;
    }

    /** Whether an input is the luck of scouting: drawn, but nothing that could be found out beforehand or set at the desk. */
    static boolean luck(Variable variable) {
        return variable.id().startsWith(LUCK);
    }

    /**
     * What scouting for some passes costs, whatever it finds. One round of scouting serves all passes that wait for the same insect
     * and state no cost of their own.
     */
    List<CostLine> scouting(List<Pass> waiting) {
        List<CostLine> lines = new ArrayList<>();
        Set<String> sampled = new HashSet<>();
        for (Pass pass : waiting) {
            ScoutingTrigger scouting = scouting(pass);
            Double own = scouting.scoutingUsdPerAcre();
            Optional<ScoutingSample> sample = sample(scouting.insect());
            if (own != null && own > 0) {
                lines.add(line(scouting, "$" + plain(own) + "/ac", own));
            } else if (own == null && sample.isPresent() && sampled.add(scouting.insect())) {
                double usd = sample.get().costUsd();
                lines.add(line(
                        scouting,
                        "$" + plain(usd) + " for the sample ÷ " + plain(field.acres()) + " ac",
                        usd / field.acres()));
            }
        }
        return lines;
    }

    private static CostLine line(ScoutingTrigger scouting, String arithmetic, double usdPerAcre) {
        return new CostLine(CostKind.TRIP, "Scouting: " + scouting.insect(), arithmetic, usdPerAcre);
    }

    /** @param before what passes before it take of an insect in any case */
    Trigger of(Program program, Pass pass, Function<Insect, List<Cut>> before) {
        ScoutingTrigger scouting = scouting(pass);
        Insect insect = pressures.stream()
                .filter(one -> one.name().equals(scouting.insect()))
                .findFirst()
                .orElseThrow(() -> gap(
                        program,
                        pass,
                        "waits for a count of " + scouting.insect() + ", which the insects sheet does not have on "
                                + field.name()));
        String product = Optional.ofNullable(pass.product())
                .orElseThrow(() -> gap(program, pass, "waits for a count, but puts out nothing"));
        if (season.pests().weeds().stream()
                .anyMatch(weed -> weed.field().equals(field.name())
                        && !season.shelf().controls(product, weed.weed()).isEmpty())) {
            throw gap(
                    program,
                    pass,
                    "waits for a count of " + scouting.insect() + ", but " + product
                            + " controls weeds of the field too; only passes against insects can wait for a count");
        }
        List<CostLine> costs = ProgramCosts.of(season, program, pass);
        Optional<ScoutingSample> sample = sample(scouting.insect());
        if (sample.isEmpty()) {
            say("No sample is entered for " + scouting.insect() + " on " + field.name()
                    + ": its count is taken as exact, which makes scouting worth more than it is. Enter size and spread of the"
                    + " sample on the insects sheet.");
        }
        return new Trigger(
                pass.number(),
                product,
                scouting,
                insect,
                scouting.threshold(),
                before.apply(insect),
                scouting.withinTimes() > 1
                        ? place(scouting.insect(), "what comes of a count of " + scouting.insect())
                        : -1,
                Math.log(scouting.withinTimes()) / Distribution.EIGHT_OF_TEN,
                sample.isPresent() ? place(scouting.insect(), "error of the count of " + scouting.insect()) : -1,
                sample.map(taken -> taken.spread() / Math.sqrt(taken.size()) * scouting.countPerPressure())
                        .orElse(0.0),
                costs,
                costs.stream()
                        .mapToDouble(line -> line.operatorUsdPerAcre(farm))
                        .sum(),
                pass.delayDays() * pass.sharePct() / 100);
    }

    private int place(String insect, String what) {
        return variables.place(
                LUCK + what,
                what,
                "",
                EVEN,
                "the luck of scouting",
                what + " on " + field.name() + ", scouting " + insect,
                DoubtKind.YEAR);
    }

    private static ScoutingTrigger scouting(Pass pass) {
        ScoutingTrigger trigger = pass.trigger();
        if (trigger == null) {
            throw new IllegalArgumentException("pass " + pass.number() + " waits for nothing");
        }
        return trigger;
    }

    private Optional<ScoutingSample> sample(String insect) {
        return season.pests().insects().stream()
                .filter(pressure -> pressure.field().equals(field.name())
                        && pressure.insect().equals(insect))
                .findFirst()
                .flatMap(pressure -> Optional.ofNullable(pressure.sample()));
    }

    private void say(String sentence) {
        if (!cautions.contains(sentence)) {
            cautions.add(sentence);
        }
    }

    private SeasonGapException gap(Program program, Pass pass, String what) {
        return new SeasonGapException(field.name() + ", program '" + program.name() + "' can't be weighed: pass "
                + pass.number() + " " + what + ".");
    }
}
