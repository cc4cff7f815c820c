package plumbrow.advice.lookback;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.EarnedMargin;
import plumbrow.advice.weighing.SeasonGapException;

/**
 * Seasons after harvest: each field that was harvested, and over all of them how honest odds, ranges and assumptions were.
 *
 * @param fields in the order of seasons and harvests
 * @param honesty over all of them
 */
public record LookBack(List<FieldLook> fields, Honesty honesty) {
    public LookBack {
        fields = List.copyOf(fields);
    }

    /**
     * Looks back.
     *
     * @param seasons of the harvest years, with what was confirmed on labels
     * @param decided what was chosen, in the order of choosing: the last before the harvest counts
     * @param harvests in the order of writing: the last of a program counts
     */
    public static LookBack of(List<Season> seasons, List<Decided> decided, List<Harvest> harvests) {
        List<FieldLook> looks = new ArrayList<>();
        for (Season season : seasons) {
            Map<String, Map<String, Harvest>> byField = new LinkedHashMap<>();
            harvests.stream()
                    .filter(one -> one.year() == season.year())
                    .forEach(one -> byField.computeIfAbsent(one.field(), first -> new LinkedHashMap<>())
                            .put(one.program() + (one.strip() ? "\nstrip" : ""), one));
            byField.forEach((name, lines) -> season.field(name).ifPresent(field -> {
                Optional<Harvest> whole =
                        lines.values().stream().filter(Harvest::whole).reduce((one, later) -> later);
                Decided last = decided.stream()
                        .filter(one ->
                                one.year() == season.year() && one.field().equals(name))
                        .reduce((one, later) -> later)
                        .orElse(null);
                whole.ifPresent(harvest -> looks.add(look(season, field, harvest, last, List.copyOf(lines.values()))));
            }));
        }
        return new LookBack(looks, Honesty.of(looks));
    }

    private static FieldLook look(
            Season season, Field field, Harvest harvest, @Nullable Decided decided, List<Harvest> lines) {
        double yield = harvest.standardYieldBuPerAcre(field.crop());
        Double price = harvest.priceUsdPerBushel();
        boolean chosen = decided != null && decided.program().equals(harvest.program());
        Expectation expected =
                decided == null ? null : decided.of(harvest.program()).orElse(null);
        String lacks = lacks(harvest, decided, chosen, expected);
        EarnedMargin earned = null;
        FieldLook.Other other = null;
        List<FieldLook.Strip> strips = new ArrayList<>();
        if (price != null) {
            try {
                EarnedMargin.OfField money = EarnedMargin.on(season, field);
                earned = money.of(harvest.program(), yield, price, harvest.costUsdPerAcre());
                other = decided == null ? null : other(money, yield, price, earned, expected, decided);
                for (Harvest line : lines) {
                    if (line.strip()) {
                        strips.add(strip(money, field, line, price, earned, chosen ? decided : null));
                    }
                }
            } catch (SeasonGapException gap) {
                lacks = String.valueOf(gap.getMessage());
            }
        }
        return new FieldLook(
                season.year(),
                field.name(),
                field.crop(),
                field.acres(),
                harvest.program(),
                chosen,
                yield,
                price,
                harvest.costUsdPerAcre(),
                earned == null ? null : earned.costUsdPerAcre(),
                earned == null ? null : earned.marginUsdPerAcre(),
                chosen ? expected : null,
                chosen && decided != null ? decided.meanMarginUsdPerAcre() : null,
                other,
                strips,
                earned == null ? List.of() : earned.working(),
                lacks);
    }

    private static String lacks(
            Harvest harvest, @Nullable Decided decided, boolean chosen, @Nullable Expectation expected) {
        if (harvest.priceUsdPerBushel() == null) {
            return "No price yet: what it earned can't be told.";
        }
        if (decided == null) {
            return "Nothing was chosen for it, so nothing was expected.";
        }
        if (!chosen) {
            return decided.program() + " was chosen; " + harvest.program()
                    + " grew. What was expected is not held against it.";
        }
        return expected == null
                ? "What was expected of it then was not written down beside its mean and its odds."
                : "";
    }

    private static FieldLook.@Nullable Other other(
            EarnedMargin.OfField money,
            double yield,
            double price,
            EarnedMargin earned,
            @Nullable Expectation expected,
            Decided decided) {
        Expectation next = decided.next().orElse(null);
        if (next == null || expected == null || next.program().equals(expected.program())) {
            return null;
        }
        EarnedMargin same = money.of(next.program(), yield, price, null);
        return new FieldLook.Other(
                next.program(),
                same.marginUsdPerAcre(),
                (earned.marginUsdPerAcre() + same.costUsdPerAcre()) / same.netUsdPerBushel(),
                next.meanYieldBuPerAcre() - expected.meanYieldBuPerAcre());
    }

    private static FieldLook.Strip strip(
            EarnedMargin.OfField money,
            Field field,
            Harvest line,
            double price,
            EarnedMargin earned,
            @Nullable Decided decided) {
        double yield = line.standardYieldBuPerAcre(field.crop());
        EarnedMargin strip = money.of(line.program(), yield, price, line.costUsdPerAcre());
        Double stated = decided == null
                ? null
                : decided.of(line.program()).map(Expectation::chosenAhead).orElse(null);
        return new FieldLook.Strip(
                line.program(),
                yield,
                strip.marginUsdPerAcre(),
                stated,
                earned.marginUsdPerAcre() > strip.marginUsdPerAcre());
    }
}
