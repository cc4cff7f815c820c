package plumbrow.advice.weighing;

import static plumbrow.science.figure.Numbers.plain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.advice.assumptions.SiteSpread;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.LossPerPlant;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.planting.Planting;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.Trait;
import plumbrow.advice.weedseason.FieldSeason;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.advice.weedseason.WeedSeasons;
import plumbrow.advice.weighing.ProgramModel.Cut;
import plumbrow.advice.weighing.ProgramModel.Injury;
import plumbrow.advice.weighing.ProgramModel.Insect;
import plumbrow.advice.weighing.ProgramModel.Lot;
import plumbrow.advice.weighing.ProgramModel.Mode;
import plumbrow.advice.weighing.ProgramModel.Trigger;
import plumbrow.advice.weighing.ProgramModel.Weed;

/** Boils the programs of one field down for the kernel. */
final class ProgramModels {
    private static final int WEEK_DAYS = 7;

    private final Season season;
    private final Field field;
    private final Variables variables;
    private final List<Insect> pressures;
    private final List<String> cautions;
    private final @Nullable FieldSeason followed;
    private final Farm farm;
    private final StandReader stands;
    private final DoneWork done;
    private final TriggerReader triggers;

    ProgramModels(
            Season season,
            Field field,
            Farm farm,
            Variables variables,
            List<Insect> pressures,
            List<String> cautions,
            @Nullable FieldSeason followed,
            DoneWork done) {
        this.done = done;
        this.season = season;
        this.field = field;
        this.variables = variables;
        this.pressures = pressures;
        this.cautions = cautions;
        this.followed = followed;
        this.farm = farm;
        this.stands = new StandReader(season, field, variables, cautions);
        this.triggers = new TriggerReader(season, field, farm, variables, pressures, cautions);
    }

    ProgramModel of(Program planned) {
        Program program = done.made(planned);
        List<Pass> passes = program.passes().stream()
                .sorted(Comparator.comparingInt(Pass::number))
                .toList();
        Set<Integer> tooFew = done.tooFew(planned).keySet();
        List<Pass> waiting =
                passes.stream().filter(pass -> pass.trigger() != null).toList();
        List<CostLine> costs = ProgramCosts.of(
                season,
                program,
                passes.stream().filter(pass -> pass.trigger() == null).toList());
        costs.addAll(triggers.scouting(
                waiting.stream().filter(pass -> !tooFew.contains(pass.number())).toList()));
        return new ProgramModel(
                planned,
                costs.stream()
                        .mapToDouble(line -> line.operatorUsdPerAcre(farm))
                        .sum(),
                costs,
                lots(program),
                pressures.stream()
                        .map(insect -> against(insect, passes, waiting))
                        .toList(),
                weeds(passes, waiting),
                injuries(program, passes, waiting),
                passes.stream()
                        .filter(pass -> pass.trigger() == null)
                        .mapToDouble(pass -> pass.delayDays() * pass.sharePct() / 100)
                        .sum(),
                waiting.stream()
                        .map(pass -> {
                            Trigger trigger = triggers.of(program, pass, insect -> before(insect, pass, passes));
                            return tooFew.contains(pass.number()) ? trigger.answeredTooFew() : trigger;
                        })
                        .toList(),
                follow(program));
    }

    /** What passes that are made in any case have taken of an insect when another pass is due. */
    private List<Cut> before(Insect insect, Pass due, List<Pass> passes) {
        return against(
                        insect,
                        passes.stream()
                                .filter(pass -> pass.number() < due.number() && pass.trigger() == null)
                                .toList(),
                        List.of())
                .cuts();
    }

    /** The season of weeds under a program; what it does not know stands among the cautions. */
    private @Nullable ProgramSeason follow(Program program) {
        FieldSeason field = followed;
        if (field == null) {
            return null;
        }
        ProgramSeason season = field.program(program);
        season.notes().stream().filter(note -> !cautions.contains(note)).forEach(cautions::add);
        return season;
    }

    private List<Lot> lots(Program program) {
        Planting planting = Planting.of(season, program);
        double planted = planting.standing().stream()
                .mapToDouble(lot -> lot.pass().sharePct())
                .sum();
        double again = planting.replantedShare();
        if (Math.abs(planted - 100) > 0.01) {
            boolean twice = planted > 100 && season.work().stand(field.name()).isEmpty();
            throw gap(
                    program,
                    "its seed passes cover " + plain(planted) + " % of the field; expected 100 %"
                            + (again > 0 ? ", and what replants them later besides" : "")
                            + (twice
                                    ? ". Where a later pass replants, enter the stand on the sheet stand_counts"
                                    : ""));
        }
        if (again > 1 + 1e-4) {
            throw gap(
                    program,
                    "its seed passes replant " + plain(again * 100) + " % of the field; expected 100 % or less");
        }
        List<Lot> lots = new ArrayList<>();
        planting.standing().stream()
                .filter(lot -> lot.share() > 1e-9)
                .forEach(lot -> lots.add(lot(program, lot, false)));
        planting.replanted().forEach(lot -> lots.add(lot(program, lot, true)));
        return lots;
    }

    private SeasonGapException gap(Program program, String what) {
        return new SeasonGapException(
                field.name() + ", program '" + program.name() + "' can't be weighed: " + what + ".");
    }

    private Lot lot(Program program, Planting.Lot planted, boolean replanted) {
        Pass pass = planted.pass();
        String name = String.valueOf(pass.product());
        Seed seed = season.shelf()
                .seed(name)
                .orElseThrow(() -> new SeasonGapException(
                        field.name() + " can't be weighed: '" + name + "' has no row in the seeds sheet."));
        int stand = variables.place(
                "stand: " + name,
                "yield kept by vigour and evenness of " + name,
                "%",
                seed.standPct(),
                "seeds sheet",
                "stand of " + name,
                DoubtKind.YEAR);
        int gain = variables.place(
                "gain: " + name,
                "genetic gain of " + name,
                "bu/ac",
                seed.gainBuPerAcre(),
                "seeds sheet",
                "gain of " + name + " on " + field.name(),
                DoubtKind.FIELD);
        List<List<Mode>> modes =
                pressures.stream().map(insect -> modes(seed, insect.name())).toList();
        double yearsBehind = seed.saved() == null ? 0 : seed.saved().yearsBehind();
        stands.cautionAboutKept(seed);
        return new Lot(
                name,
                planted.share(),
                stands.of(program, pass, seed, replanted),
                stand,
                gain,
                yearsBehind,
                seed.blendRefugePct() / 100,
                modes);
    }

    /** The trait groups of a seed against an insect. Proteins of one group count once, by the first that is named. */
    private List<Mode> modes(Seed seed, String insect) {
        List<Mode> modes = new ArrayList<>();
        for (String name : seed.traits()) {
            for (Trait trait : season.shelf().traits()) {
                if (trait.name().equals(name)
                        && trait.insect().equals(insect)
                        && modes.stream().noneMatch(mode -> mode.group().equals(trait.group()))) {
                    modes.add(mode(trait));
                }
            }
        }
        return modes;
    }

    private Mode mode(Trait trait) {
        SiteSpread.Drawn drawn = SiteSpread.trait(trait.control());
        int control = variables.place(
                "trait: " + trait.name() + " on " + trait.insect(),
                "control of " + trait.insect() + " by " + trait.name() + " where it works",
                "share",
                drawn.distribution(),
                drawn.source(trait.source()),
                drawn.stream("trait " + trait.name() + " on " + trait.insect(), field.name()),
                DoubtKind.FIELD);
        for (TraitDoubt doubt : season.pests().traitDoubts()) {
            if (doubt.field().equals(field.name())
                    && doubt.group().equals(trait.group())
                    && doubt.insect().equals(trait.insect())) {
                int works = variables.place(
                        "trait works: " + trait.group() + " on " + trait.insect(),
                        "chance that " + trait.group() + " works on " + trait.insect() + " here",
                        "chance",
                        new Distribution.Chance(1 - doubt.chance()),
                        doubt.source(),
                        trait.group() + " works on " + trait.insect() + " in " + field.name(),
                        DoubtKind.FIELD);
                return new Mode(trait.group(), works, control, doubt.controlIfFailed());
            }
        }
        return new Mode(trait.group(), -1, control, 0);
    }

    private Insect against(Insect insect, List<Pass> passes, List<Pass> waiting) {
        return new Insect(
                insect.name(),
                insect.measure(),
                insect.pressure(),
                insect.cap(),
                insect.loss(),
                insect.neighbourShare(),
                cuts(
                        insect.name(),
                        passes,
                        waiting,
                        pass -> insect.measure() == InsectPressure.Measure.NODE_INJURY
                                ? SiteSpread::soilInsecticide
                                : SiteSpread::leaf));
    }

    private List<Weed> weeds(List<Pass> passes, List<Pass> waiting) {
        List<Weed> weeds = new ArrayList<>();
        for (WeedPressure weed : season.pests().weeds()) {
            if (weed.field().equals(field.name())) {
                int density = variables.place(
                        "density: " + weed.weed(),
                        "density of " + weed.weed() + " if nothing is done",
                        "plants/m²",
                        weed.densityPerSquareMetre(),
                        weed.source(),
                        "density of " + weed.weed() + " on " + field.name(),
                        DoubtKind.FIELD);
                SiteSpread.Drawn perPlant =
                        SiteSpread.lossPerWeed(weed.lossPerPlantPct(), WeedSeasons.borrowed(season, weed.weed()));
                int loss = variables.place(
                        LossPerPlant.id(weed.weed()),
                        LossPerPlant.label(weed.weed()),
                        LossPerPlant.UNIT,
                        perPlant.distribution(),
                        perPlant.source(weed.source()),
                        LossPerPlant.stream(weed.weed(), field.name()),
                        DoubtKind.FIELD);
                weeds.add(new Weed(
                        weed.weed(),
                        density,
                        loss,
                        weed.mostLossPct(),
                        followed == null
                                ? cuts(weed.weed(), passes, waiting, pass -> beforeWeeds(pass, passes))
                                : List.of()));
            }
        }
        return weeds;
    }

    /**
     * What is sprayed up to a week after planting meets the weed in the soil; its rain is not drawn where weeds are weighed by what
     * passes leave.
     */
    private static Function<Distribution, SiteSpread.Drawn> beforeWeeds(Pass pass, List<Pass> passes) {
        LocalDate date = pass.date();
        boolean soil = date != null
                && passes.stream()
                        .filter(one -> one.kind() == PassKind.SEED)
                        .map(Pass::date)
                        .anyMatch(planted -> planted != null && !date.isAfter(planted.plusDays(WEEK_DAYS)));
        return soil ? distribution -> SiteSpread.soil(distribution, false) : SiteSpread::leaf;
    }

    private List<Cut> cuts(
            String pest,
            List<Pass> passes,
            List<Pass> waiting,
            Function<Pass, Function<Distribution, SiteSpread.Drawn>> spread) {
        List<Cut> cuts = new ArrayList<>();
        for (Pass pass : passes) {
            if (pass.product() != null && pass.rate() != null) {
                List<Control> known = season.shelf().controls(pass.product(), pest);
                if (!known.isEmpty()) {
                    cuts.add(ControlAtRate.cut(
                            pass, known, spread.apply(pass), field.name(), variables, cautions, waiting.indexOf(pass)));
                }
            }
        }
        return cuts;
    }

    private List<Injury> injuries(Program program, List<Pass> passes, List<Pass> waiting) {
        List<Injury> injuries = new ArrayList<>();
        for (Pass pass : passes) {
            if (!pass.injuryPct().equals(new Distribution.Fixed(0))) {
                String what = pass.product() == null ? pass.kind().word() : pass.product();
                String id = "injury: " + what + " in " + program.name();
                int loss = variables.place(
                        id,
                        "crop injury by " + what,
                        "% of yield",
                        pass.injuryPct(),
                        "passes sheet",
                        id + " on " + field.name(),
                        DoubtKind.YEAR);
                injuries.add(new Injury(what, loss, pass.sharePct() / 100, waiting.indexOf(pass)));
            }
        }
        return injuries;
    }
}
