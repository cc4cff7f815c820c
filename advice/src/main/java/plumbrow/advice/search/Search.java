package plumbrow.advice.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Escape;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.search.ProgramSearch.Candidate;
import plumbrow.advice.search.SearchRoom.Proposal;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.CostLine;
import plumbrow.advice.weighing.EqualRule;
import plumbrow.advice.weighing.Leads;
import plumbrow.advice.weighing.ProgramDraws;
import plumbrow.advice.weighing.ProgramDraws.Weighed;
import plumbrow.advice.weighing.Quantities;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.figure.Numbers;

/**
 * Finds the program of a field that returns most among all lawful ones that the shelf makes, with its proof, its runner-up
 * and the frontiers of margin against risk and against resistance.
 *
 * <p>Same season, field and options give the same answer to the bit.
 */
public final class Search {
    private static final int MOST_TOLD = 300;

    private final Season season;
    private final Field field;
    private final SearchOptions options;
    private final ProgramSearch search;

    private Search(Season season, Field field, SearchOptions options) {
        this.season = season;
        this.field = field;
        this.options = options;
        this.search = new ProgramSearch(season, field, options).run();
    }

    /**
     * The answer for a field.
     *
     * @throws SeasonGapException where the season lacks what weighing needs, a program to start from among it
     */
    public static SearchAnswer of(Season season, Field field, SearchOptions options) {
        if (season.programs(field.name()).isEmpty()) {
            throw new SeasonGapException(
                    field.name()
                            + " can't be searched: it has no program yet; enter one with its seed and the days you could spray.");
        }
        return new Search(season, field, options).answer();
    }

    /** The season with a program that was found, under its name, in the place of an earlier one of that name. */
    public static Season with(Season season, Found found) {
        String name = found.name();
        String at = found.program().field();
        List<Program> programs = new ArrayList<>(season.programs().stream()
                .filter(program ->
                        !(program.field().equals(at) && program.name().equals(name)))
                .toList());
        programs.add(found.program());
        var plans = new ArrayList<>(season.work().sprayPlans().stream()
                .filter(plan -> !(plan.field().equals(at) && plan.program().equals(name)))
                .toList());
        plans.addAll(found.plans());
        var tillage = new ArrayList<>(season.pests().weedBook().tillage().stream()
                .filter(work -> !(work.field().equals(at) && work.program().equals(name)))
                .toList());
        tillage.addAll(found.tillage());
        return season.withPrograms(programs, season.work().withSprayPlans(plans))
                .withPests(season.pests().withTillage(tillage));
    }

    private SearchAnswer answer() {
        List<Candidate> candidates = search.advisable();
        List<Found> near = candidates.stream()
                .filter(one -> one.mean() >= candidates.get(0).mean() - options.widthUsdPerAcre() - 1e-9)
                .limit(MOST_TOLD)
                .map(this::found)
                .toList();
        Found best = near.isEmpty() ? null : near.get(0);
        Found runnerUp = candidates.size() < 2 ? null : near.size() > 1 ? near.get(1) : found(candidates.get(1));
        Candidate open = search.open();
        Found lookUp =
                open == null || (best != null && open.mean() <= best.meanMarginUsdPerAcre()) ? null : found(open);
        Map<String, double[]> own = ownPrograms();
        String ownName = own.entrySet().stream()
                .max(Comparator.comparingDouble(one -> SortedDraws.mean(one.getValue())))
                .map(Map.Entry::getKey)
                .orElse(null);
        double[] ownMargins = ownName == null ? null : own.get(ownName);
        Double ownMean = ownMargins == null ? null : Double.valueOf(SortedDraws.mean(ownMargins));
        return new SearchAnswer(
                field,
                options.draws(),
                options.seed(),
                best,
                runnerUp,
                best == null || runnerUp == null ? List.of() : lost(candidates.get(0), candidates.get(1)),
                lookUp,
                ownMean,
                ownName,
                near,
                Frontier.of(near, Found::shortfallUsdPerAcre),
                Frontier.of(near, one -> -one.escapeShare()),
                search.proof(SearchWords.proof(search.proof(""))),
                SearchWords.answer(
                        field,
                        best,
                        lookUp,
                        ownName,
                        ownMean,
                        best == null || ownMargins == null ? new Leads(1, 0, 0) : leads(candidates.get(0), ownMargins)),
                limits(candidates.size()));
    }

    private Found found(Candidate candidate) {
        Proposal proposal = search.room().proposal(candidate.frame(), candidate.tanks(), name(candidate), note());
        Program searched = search.room().program(candidate.frame(), candidate.tanks());
        List<Finding> unknown = search.gates().check(field, searched).stream()
                .filter(finding -> finding.standing() == Standing.UNKNOWN)
                .toList();
        return new Found(
                proposal.program(),
                proposal.plans(),
                proposal.tillage(),
                candidate.cost(),
                candidate.yield(),
                candidate.mean(),
                candidate.shortfall(),
                candidate.standing(),
                candidate.sites(),
                Escape.worst(search.gates(), field, searched, search.drivers()).orElse(null),
                unknown);
    }

    private String name(Candidate candidate) {
        String seeds = candidate.frame().seeds().stream().sorted().collect(Collectors.joining(" and "));
        boolean alike = search.room().frames().stream()
                .anyMatch(frame -> !frame.equals(candidate.frame())
                        && frame.seeds().equals(candidate.frame().seeds()));
        String frame = alike ? seeds + ", the rest as " + candidate.frame().from() : seeds;
        String tanks = candidate.tanks().stream()
                .map(tank -> {
                    var day = search.room().windows().get(tank.window()).date();
                    return tank.text() + (day == null ? "" : " " + day.getMonthValue() + "/" + day.getDayOfMonth());
                })
                .collect(Collectors.joining(", "));
        return frame + (tanks.isEmpty() ? ", nothing more" : ": " + tanks);
    }

    private String note() {
        return "Found by the search of " + season.asOf() + ".";
    }

    /** How often a program found leads one of the season's own. */
    private Leads leads(Candidate candidate, double[] own) {
        double[] margins = search.draws()
                .weigh(search.room().program(candidate.frame(), candidate.tanks()))
                .margins();
        return EqualRule.DEFAULT.leads(margins, own, 1);
    }

    /** Margins of the season's own programs that may be advised, on the same draws. */
    private Map<String, double[]> ownPrograms() {
        Gates gates = Gates.of(season);
        ProgramDraws draws = new ProgramDraws(season, field, new DrawSource(options.draws(), options.seed()));
        Map<String, double[]> means = new TreeMap<>();
        for (Program program : season.programs(field.name())) {
            if (Gates.standing(gates.check(field, program)).advisable()) {
                means.put(program.name(), draws.weigh(program).margins());
            }
        }
        return means;
    }

    /** The difference of two mean margins: what the yields bring, then each cost that only one of them has. */
    private List<LostBy> lost(Candidate best, Candidate other) {
        Weighed a = search.draws().weigh(search.room().program(best.frame(), best.tanks()));
        Weighed b = search.draws().weigh(search.room().program(other.frame(), other.tanks()));
        double bushels = a.meanYieldBuPerAcre() - b.meanYieldBuPerAcre();
        double brought = a.meanMarginUsdPerAcre() + a.costUsdPerAcre() - b.meanMarginUsdPerAcre() - b.costUsdPerAcre();
        List<LostBy> lines = new ArrayList<>();
        lines.add(new LostBy(
                "It brings " + Numbers.fixed(Math.abs(bushels), 1) + " bu/ac " + (bushels >= 0 ? "less" : "more")
                        + ", worth " + Quantities.drawnDollars(Math.abs(brought)) + "/ac.",
                brought));
        Farm farm = season.farm(field.farm()).orElseThrow();
        Map<String, Double> costs = new TreeMap<>();
        b.costs().forEach(line -> costs.merge(key(line), line.operatorUsdPerAcre(farm), Double::sum));
        a.costs().forEach(line -> costs.merge(key(line), -line.operatorUsdPerAcre(farm), Double::sum));
        costs.forEach((label, usd) -> {
            if (Math.abs(usd) > 0.005) {
                lines.add(new LostBy(
                        label + ": "
                                + Numbers.dollars(Math.abs(usd), 2) + "/ac "
                                + (usd > 0 ? "that the best does not pay." : "that only the best pays."),
                        usd));
            }
        });
        return lines;
    }

    private static String key(CostLine line) {
        return line.label() + " (" + line.arithmetic() + ")";
    }

    private List<String> limits(int found) {
        List<String> limits = new ArrayList<>();
        for (String weed : search.drivers()) {
            int has = search.needed().getOrDefault(weed, 0);
            if (has < options.sites()) {
                limits.add("The shelf has " + Numbers.plain(has) + " working " + (has == 1 ? "site" : "sites")
                        + " of action on " + weed + ", not " + options.sites()
                        + ": the search asked for that. A product of another group that controls 80 % of it would "
                        + "add one.");
            }
        }
        if (found == 0 && !search.drivers().isEmpty()) {
            limits.add(
                    "No lawful program has that many sites of action on every driver weed; ask for fewer with sites.");
        }
        search.room().windows().stream()
                .filter(window -> window.chargeUsdPerAcre() == 0 && window.kind() == PassKind.SPRAY)
                .map(window -> window.date())
                .distinct()
                .forEach(day -> limits.add("No program charges anything for the trip"
                        + (day == null ? " without a day" : " of " + day.getMonthValue() + "/" + day.getDayOfMonth())
                        + ", so it is free here: enter its charge."));
        search.room().notTried().forEach(one -> limits.add("Not tried: " + one));
        if (search.room().windows().isEmpty()) {
            limits.add(
                    "No program of this field puts on a herbicide or insecticide: enter one with its day, so that the "
                            + "search knows when the field can be sprayed.");
        }
        limits.add("Tried: the seed, tillage and days of the field's own programs; products by themselves or up to "
                + options.mates() + " in a tank; both ends of each label's rates and the rates in the control sheet.");
        return limits;
    }
}
