package plumbrow.advice.pestpage;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.season.Season;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.FigureInputException;
import plumbrow.science.figure.Step;
import plumbrow.science.insects.EconomicInjuryLevel;
import plumbrow.science.weeds.WeedThreshold;

/**
 * From which pressure on the treatment that pays soonest does so: the figures as on their own pages, with the book's prices.
 * Against weeds only what works counts; against insects anything that is rated, since a part of the injury may be worth it.
 */
final class Thresholds {
    private static final MathContext DIGITS = new MathContext(6);
    private static final String DENSITY = "density";
    private static final String WEED_DENSITY = "density_m2";

    private Thresholds() {}

    static Threshold weed(Season season, Field field, WeedPressure row, List<Works> works, List<FailedSite> failed) {
        List<String> failing = failed.stream()
                .filter(one -> one.field().equals(field.name()))
                .map(FailedSite::group)
                .toList();
        Predicate<Works> fits = one ->
                one.reach() == Works.Reach.LEAF || (one.reach() == Works.Reach.UNSAID && one.rank() == Works.Rank.BOOK);
        return of(
                season,
                field,
                works.stream()
                        .filter(fits)
                        .filter(Works::works)
                        .filter(one -> one.groups() == null || !failing.containsAll(one.groups()))
                        .toList(),
                WeedThreshold.FIGURE,
                WEED_DENSITY,
                "plants/m²",
                (prices, share) -> {
                    Map<String, String> asked = new LinkedHashMap<>();
                    asked.put("cost_usd_ac", typed(prices.costUsdPerAcre()));
                    asked.put("price_usd_bu", typed(prices.valueUsdPerBu()));
                    asked.put("yield_bu_ac", typed(prices.yieldBuPerAcre()));
                    asked.put("i_pct", typed(row.firstPlantLossPct()));
                    asked.put("a_pct", typed(row.mostLossPct()));
                    asked.put("control_share", typed(share));
                    return asked;
                },
                Double.POSITIVE_INFINITY,
                row.source());
    }

    static Threshold insect(Season season, Field field, InsectPressure row, List<Works> works) {
        double each = Chances.of(row.lossPerUnitPct()).mean();
        return of(
                season,
                field,
                works.stream()
                        .filter(one -> season.shelf().seed(one.product()).isEmpty())
                        .toList(),
                EconomicInjuryLevel.FIGURE,
                DENSITY,
                row.measure().unit(),
                (prices, share) -> {
                    Map<String, String> asked = new LinkedHashMap<>();
                    asked.put("cost", typed(prices.costUsdPerAcre()));
                    asked.put("value", typed(prices.valueUsdPerBu()));
                    asked.put("injury", "1");
                    asked.put("damage", typed(prices.yieldBuPerAcre() * each / 100));
                    asked.put("control_share", typed(share));
                    return asked;
                },
                row.measure().cap(),
                row.source());
    }

    /** What a figure is asked, from prices and the share that the treatment prevents. */
    private interface Question {
        Map<String, String> asked(Prices prices, double share);
    }

    private static Threshold of(
            Season season,
            Field field,
            List<Works> candidates,
            Figure figure,
            String key,
            String unit,
            Question question,
            double most,
            String source) {
        List<Threshold> found = new ArrayList<>();
        String lacking = null;
        for (Works works : candidates) {
            Double mean = works.meanPct();
            if (works.crop() != field.crop() || mean == null || mean <= 0) {
                continue;
            }
            try {
                Prices prices = Prices.of(season, field, works);
                Map<String, String> asked = question.asked(prices, mean / 100);
                Answer answer = figure.answer(asked);
                List<Step> steps = new ArrayList<>(prices.steps());
                steps.addAll(answer.working());
                Object value = answer.outputs().get(key);
                Double density = value instanceof Double number && number <= most ? number : null;
                found.add(new Threshold(
                        field.name(),
                        works.product() + ", "
                                + String.valueOf(
                                        works.rate() == null ? "" : works.rate().text()) + "/ac",
                        density,
                        unit,
                        figure.id(),
                        asked,
                        steps,
                        "loss: " + source + "; control: " + works.source(),
                        answer.cautions(),
                        null));
            } catch (Prices.Lacking missing) {
                lacking = missing.getMessage();
            } catch (FigureInputException outside) {
                lacking = outside.getMessage();
            }
        }
        return found.stream()
                .min(Comparator.comparingDouble(one -> density(one.density())))
                .orElse(Threshold.unknown(field.name(), figure.id(), missing(lacking)));
    }

    private static double density(@Nullable Double density) {
        return density == null ? Double.POSITIVE_INFINITY : density;
    }

    private static String missing(@Nullable String lacking) {
        return lacking == null
                ? "No treatment on this shelf has a rating that would hold here: rate one, or ask what others see."
                : "Missing is " + lacking + ".";
    }

    /** Six digits, so that the figure's own page, opened with what stands here, shows the same. */
    private static String typed(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
