package plumbrow.advice.lookback;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.weighing.Band;
import plumbrow.science.economics.BrierParts;
import plumbrow.science.economics.IntervalCoverage;

/**
 * How honest odds, ranges and assumptions were, over fields and seasons.
 *
 * @param fields fields that can be held against what was expected
 * @param seasons seasons they are of
 * @param odds chances stated that one program earns more than another, where both were harvested
 * @param levels chances stated that the margin is above its 10, 50 and 90 % points
 * @param coverage ranges of 80 of 100 and how many held: margin, yield, price
 * @param biases by how much assumptions run high or low, by crop and quantity
 */
public record Honesty(
        int fields, int seasons, Tally odds, Tally levels, List<Coverage> coverage, List<AssumptionBias> biases) {
    public Honesty {
        coverage = List.copyOf(coverage);
        biases = List.copyOf(biases);
    }

    /** A chance that was stated, and whether what it was stated for came. */
    public record Stated(double chance, boolean came) {}

    /**
     * Chances in tens, as the reliability picture shows them.
     *
     * @param stated mean of the chances in it
     * @param times how many
     * @param came how many of them came
     */
    public record Group(double stated, int times, int came) {
        public double share() {
            return (double) came / times;
        }
    }

    /**
     * Chances held against what came.
     *
     * @param parts the Brier score and its parts, of the groups; null where none was stated
     */
    public record Tally(List<Group> groups, @Nullable BrierParts parts) {
        public Tally {
            groups = List.copyOf(groups);
        }

        /** How many chances. */
        public int cases() {
            return groups.stream().mapToInt(Group::times).sum();
        }

        /** Mean distance between what was stated and what came, each group by its cases. */
        public double meanGap() {
            return groups.stream()
                            .mapToDouble(group -> group.times() * Math.abs(group.stated() - group.share()))
                            .sum()
                    / Math.max(1, cases());
        }

        /** Gathers chances in tens. */
        public static Tally of(List<Stated> all) {
            double[] sums = new double[10];
            int[] times = new int[10];
            int[] came = new int[10];
            for (Stated one : all) {
                int group = Math.min(9, (int) (one.chance() * 10 + 1e-9));
                sums[group] += one.chance();
                times[group]++;
                came[group] += one.came() ? 1 : 0;
            }
            List<Group> groups = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                if (times[i] > 0) {
                    groups.add(new Group(sums[i] / times[i], times[i], came[i]));
                }
            }
            return new Tally(
                    groups,
                    groups.isEmpty()
                            ? null
                            : BrierParts.of(
                                    groups.stream().mapToDouble(Group::stated).toArray(),
                                    groups.stream().mapToDouble(Group::times).toArray(),
                                    groups.stream().mapToDouble(Group::came).toArray()));
        }
    }

    /**
     * A range that was to hold in 80 of 100.
     *
     * @param what margin, yield or price
     * @param low lower end of the interval for the share that holds, as the figure interval-coverage has it
     * @param high its upper end
     */
    public record Coverage(String what, int inside, int cases, double low, double high) {
        private static Coverage of(String what, List<Boolean> held) {
            int inside = (int) held.stream().filter(one -> one).count();
            return new Coverage(
                    what,
                    inside,
                    held.size(),
                    IntervalCoverage.low(inside, held.size(), IntervalCoverage.NINETY_FIVE),
                    1 - IntervalCoverage.low(held.size() - inside, held.size(), IntervalCoverage.NINETY_FIVE));
        }
    }

    /** Over fields that were harvested; those that lack something count where they can. */
    public static Honesty of(List<FieldLook> looks) {
        List<Stated> odds = new ArrayList<>();
        List<Stated> levels = new ArrayList<>();
        List<Boolean> margins = new ArrayList<>();
        List<Boolean> yields = new ArrayList<>();
        List<Boolean> prices = new ArrayList<>();
        Map<Crop, Map<AssumptionBias.Of, List<AssumptionBias.Case>>> cases = new EnumMap<>(Crop.class);
        List<FieldLook> whole = looks.stream().filter(FieldLook::whole).toList();
        for (FieldLook look : looks) {
            look.strips().forEach(strip -> {
                Double stated = strip.statedAhead();
                if (stated != null) {
                    odds.add(new Stated(stated, strip.ahead()));
                }
            });
            Expectation expected = look.expected();
            if (!look.chosen() || expected == null) {
                continue;
            }
            Map<AssumptionBias.Of, List<AssumptionBias.Case>> of =
                    cases.computeIfAbsent(look.crop(), first -> new EnumMap<>(AssumptionBias.Of.class));
            held(yields, expected.yield(), look.yieldBuPerAcre());
            add(of, AssumptionBias.Of.YIELD, look, look.yieldBuPerAcre(), expected.meanYieldBuPerAcre());
            Double price = look.priceUsdPerBushel();
            if (price != null) {
                held(prices, expected.price(), price);
                add(of, AssumptionBias.Of.PRICE, look, price, expected.meanPriceUsdPerBushel());
            }
            Double cost = look.costTypedUsdPerAcre();
            if (cost != null) {
                add(of, AssumptionBias.Of.COST, look, cost, expected.costUsdPerAcre());
            }
            Double margin = look.marginUsdPerAcre();
            if (margin != null) {
                Band band = expected.margin();
                held(margins, band, margin);
                levels.add(new Stated(0.9, margin > band.low()));
                levels.add(new Stated(0.5, margin > band.middle()));
                levels.add(new Stated(0.1, margin > band.high()));
            }
        }
        List<AssumptionBias> biases = new ArrayList<>();
        cases.forEach((crop, of) -> of.forEach((what, all) -> biases.add(AssumptionBias.of(crop, what, all))));
        return new Honesty(
                whole.size(),
                (int) whole.stream().map(FieldLook::year).distinct().count(),
                Tally.of(odds),
                Tally.of(levels),
                List.of(Coverage.of("margin", margins), Coverage.of("yield", yields), Coverage.of("price", prices))
                        .stream()
                        .filter(one -> one.cases() > 0)
                        .toList(),
                biases);
    }

    private static void held(List<Boolean> to, Band band, double value) {
        to.add(value >= band.low() && value <= band.high());
    }

    private static void add(
            Map<AssumptionBias.Of, List<AssumptionBias.Case>> to,
            AssumptionBias.Of what,
            FieldLook look,
            double came,
            double expected) {
        if (expected > 0) {
            to.computeIfAbsent(what, first -> new ArrayList<>())
                    .add(new AssumptionBias.Case(look.year(), came / expected - 1));
        }
    }
}
