package plumbrow.documents.label.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Texture;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.label.Of;
import plumbrow.documents.label.Soil;
import plumbrow.documents.label.Way;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** Rows for one crop: rates, limits, terms, and rates by soil. */
final class UseRows {
    private UseRows() {}

    static Proposal<LabelUse> use(CropReadings label, String product) {
        LabelReading rate = rate(label);
        LabelReading season = label.of(
                LabelKind.SEASON_MAX, content -> content instanceof LabelContent.Most most && most.of() == Of.PRODUCT);
        LabelReading applications = label.of(LabelKind.APPLICATIONS);
        LabelReading harvest = label.of(LabelKind.PRE_HARVEST);
        Map<String, LabelReading> grounds = new LinkedHashMap<>();
        grounds.put("low_rate", rate);
        grounds.put("high_rate", rate);
        grounds.put("season_max", season);
        grounds.put("most_applications", applications);
        grounds.put("phi_days", harvest);
        Amount rates = rate instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Use one
                ? one.rate()
                : null;
        boolean both =
                rates != null && (rates.qualifier() == Qualifier.EXACTLY || rates.qualifier() == Qualifier.RANGE);
        LabelUse row = new LabelUse(
                product,
                label.crop(),
                rates == null || !both ? null : Values.perAcre(rates.low(), rates.unit()),
                rates == null || !(both || rates.qualifier() == Qualifier.AT_MOST)
                        ? null
                        : Values.perAcre(rates.high(), rates.unit()),
                Ask.UNKNOWN,
                most(season),
                applications instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Count one
                        ? one.most()
                        : null,
                Values.days(harvest),
                Values.source(product, rate, season, harvest));
        return new Proposal<>(row, grounds);
    }

    /** One rate for any soil; where a label has several, by timing or soil, a person must say which one is meant. */
    private static LabelReading rate(CropReadings label) {
        return label.of(LabelKind.USE_RATE);
    }

    private static plumbrow.advice.quantity.@Nullable Amount most(LabelReading reading) {
        return reading instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Most one
                ? Values.perAcre(one.amount().high(), one.amount().unit())
                : null;
    }

    static Proposal<UseTerms> terms(CropReadings label, String product) {
        LabelReading entry = label.of(LabelKind.REENTRY);
        LabelReading apart = label.of(LabelKind.REAPPLICATION);
        LabelReading grazing = label.of(LabelKind.GRAZING);
        LabelReading carrier = label.of(
                LabelKind.CARRIER,
                content -> content instanceof LabelContent.Measured one
                        && one.way() != Way.AIR
                        && one.amount().qualifier() == Qualifier.AT_LEAST);
        LabelReading drops = label.of(
                LabelKind.DROPLETS, content -> content instanceof LabelContent.Drops one && one.way() != Way.AIR);
        LabelReading boom = label.of(
                LabelKind.BOOM, content -> content instanceof LabelContent.Measured one && one.way() != Way.AIR);
        LabelReading high = label.of(
                LabelKind.WIND,
                content -> content instanceof LabelContent.Measured one
                        && one.amount().qualifier() != Qualifier.AT_LEAST);
        LabelReading low = label.of(
                LabelKind.WIND,
                content -> content instanceof LabelContent.Measured one
                        && one.amount().qualifier() != Qualifier.AT_MOST);
        LabelReading rain = label.of(LabelKind.RAINFAST);
        LabelReading first = label.of(
                LabelKind.STAGE,
                content -> content instanceof LabelContent.Stage one
                        && !one.earliest().isEmpty());
        LabelReading last = label.of(
                LabelKind.STAGE,
                content -> content instanceof LabelContent.Stage one && !(one.latest() + one.before()).isEmpty());
        LabelReading tall = label.of(LabelKind.CROP_HEIGHT);
        LabelReading weeds = label.of(LabelKind.WEED_HEIGHT);
        LabelReading warm = label.of(LabelKind.AIR_TEMPERATURE);
        Map<String, LabelReading> grounds = new LinkedHashMap<>();
        grounds.put("rei_hours", entry);
        grounds.put("days_between", apart);
        grounds.put("grazing_days", grazing);
        grounds.put("feeding_forbidden", grazing);
        grounds.put("earliest_stage", first);
        grounds.put("latest_stage", last);
        grounds.put("highest_crop_in", tall);
        grounds.put("highest_weed_in", weeds);
        grounds.put("methods", label.of(LabelKind.METHOD));
        grounds.put("carrier_low_gal_ac", carrier);
        grounds.put("finest", drops);
        grounds.put("coarsest", drops);
        grounds.put("boom_highest_in", boom);
        grounds.put("wind_lowest_mph", low);
        grounds.put("wind_highest_mph", high);
        grounds.put("warmest_f", warm);
        grounds.put("rain_free_hours", rain);
        LabelContent.Drops classes =
                drops instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Drops one
                        ? one
                        : null;
        boolean banned = grazing instanceof LabelReading.Stated stated && stated.content() instanceof LabelContent.Ban;
        Amount least = Values.measured(carrier);
        Amount fastest = Values.measured(high);
        Amount slowest = Values.measured(low);
        Amount dry = Values.measured(rain);
        UseTerms row = new UseTerms(
                product,
                label.crop(),
                Values.hours(entry),
                Values.days(apart),
                Values.days(grazing),
                banned ? Ask.YES : Ask.UNKNOWN,
                Stages.earliest(first, label.crop()),
                Stages.latest(last, label.crop()),
                Values.height(tall),
                Values.height(weeds),
                null,
                least == null ? null : Double.valueOf(least.low()),
                classes == null ? null : classes.finest(),
                classes == null ? null : classes.coarsest(),
                inches(Values.measured(boom)),
                slowest == null ? null : Double.valueOf(slowest.low()),
                fastest == null ? null : Double.valueOf(fastest.high()),
                Values.fahrenheit(Values.measured(warm)),
                dry == null ? null : Double.valueOf(dry.high()),
                Values.source(product, entry, carrier, drops));
        return new Proposal<>(row, grounds);
    }

    private static @Nullable Double inches(@Nullable Amount height) {
        if (height == null) {
            return null;
        }
        return switch (height.unit()) {
            case "in" -> height.high();
            case "ft" -> height.high() * 12;
            default -> null;
        };
    }

    static List<Proposal<SoilRate>> soils(CropReadings label, String product) {
        List<Proposal<SoilRate>> rows = new ArrayList<>();
        for (LabelReading.Stated stated : label.statements(LabelKind.USE_RATE, true, content -> true)) {
            if (stated.content() instanceof LabelContent.Use use && !use.soil().equals(Soil.ANY)) {
                Set<Texture> textures = textures(use.soil().texture());
                if (!use.soil().texture().isEmpty() && textures.isEmpty()) {
                    continue;
                }
                Amount matter = use.soil().organicMatter();
                SoilRate row = new SoilRate(
                        product,
                        label.crop(),
                        textures,
                        matter == null || below(matter) ? null : Double.valueOf(matter.low()),
                        matter == null || above(matter) ? null : Double.valueOf(matter.high()),
                        null,
                        null,
                        false,
                        Values.perAcre(use.rate().low(), use.rate().unit()),
                        Values.perAcre(use.rate().high(), use.rate().unit()),
                        Values.source(product, stated));
                Map<String, LabelReading> grounds = new LinkedHashMap<>();
                grounds.put("low_rate", stated);
                grounds.put("high_rate", stated);
                rows.add(new Proposal<>(row, grounds));
            }
        }
        return rows;
    }

    private static boolean below(Amount matter) {
        return matter.qualifier() == Qualifier.LESS_THAN || matter.qualifier() == Qualifier.AT_MOST;
    }

    private static boolean above(Amount matter) {
        return matter.qualifier() == Qualifier.AT_LEAST || matter.qualifier() == Qualifier.MORE_THAN;
    }

    /** The texture classes that the words list; none where they only say coarse, medium or fine. */
    private static Set<Texture> textures(String words) {
        Set<Texture> found = EnumSet.noneOf(Texture.class);
        String text = words.toLowerCase(Locale.ROOT);
        List<Texture> longestFirst = new ArrayList<>(List.of(Texture.values()));
        longestFirst.sort(
                Comparator.comparingInt((Texture each) -> each.word().length()).reversed());
        for (Texture texture : longestFirst) {
            String whole = "\\b" + texture.word() + "s?\\b";
            if (text.matches(".*" + whole + ".*")) {
                found.add(texture);
                text = text.replaceAll(whole, " ");
            }
        }
        return found;
    }
}
