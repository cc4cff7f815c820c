package plumbrow.app.book;

import java.util.List;
import java.util.Set;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Texture;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.UseTerms;

/** What labels ask of each use beyond its rates. */
final class LabelRows {
    /** Terms; the methods themselves come with {@link #METHOD}. */
    static final RowKind<UseTerms> TERMS = new RowKind<>(
            "use_terms",
            "product crop rei_hours days_between grazing_days feeding_forbidden earliest_stage latest_stage "
                    + "highest_crop_in highest_weed_in methods_read carrier_low_gal_ac finest coarsest boom_highest_in "
                    + "wind_lowest_mph wind_highest_mph warmest_f rain_free_hours source",
            season -> season.shelf().labels().terms(),
            (terms, cells) -> cells.text(terms.product())
                    .word(terms.crop())
                    .whole(terms.reentryHours())
                    .whole(terms.daysBetween())
                    .whole(terms.grazingDays())
                    .word(terms.feedingForbidden())
                    .text(terms.earliestStage())
                    .text(terms.latestStage())
                    .real(terms.highestCropIn())
                    .real(terms.highestWeedIn())
                    .yes(terms.methods() != null)
                    .real(terms.carrierLowGalPerAcre())
                    .word(terms.finest())
                    .word(terms.coarsest())
                    .real(terms.boomHighestIn())
                    .real(terms.windLowestMph())
                    .real(terms.windHighestMph())
                    .real(terms.warmestF())
                    .real(terms.rainFreeHours())
                    .text(terms.source()),
            row -> new UseTerms(
                    row.text(),
                    row.word(Crop.class),
                    row.maybeWhole(),
                    row.maybeWhole(),
                    row.maybeWhole(),
                    row.word(Ask.class),
                    row.maybeText(),
                    row.maybeText(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.looked(),
                    row.maybeReal(),
                    row.maybeWord(Droplets.class),
                    row.maybeWord(Droplets.class),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.text()));

    static final RowKind<Listed> METHOD = Listed.kind(
            "use_method",
            "use_terms method",
            season -> season.shelf().labels().terms(),
            terms -> Listed.words(terms.methods()));

    /** Rates by soil; the textures come with {@link #TEXTURE}. */
    static final RowKind<SoilRate> SOIL_RATE = new RowKind<>(
            "soil_rate",
            "product crop organic_matter_from_pct organic_matter_below_pct ph_from ph_below forbidden low_rate "
                    + "low_rate_unit high_rate high_rate_unit source",
            season -> season.shelf().labels().soilRates(),
            (rate, cells) -> cells.text(rate.product())
                    .word(rate.crop())
                    .real(rate.organicMatterLowPct())
                    .real(rate.organicMatterHighPct())
                    .real(rate.phLow())
                    .real(rate.phHigh())
                    .yes(rate.forbidden())
                    .amount(rate.lowRate())
                    .amount(rate.highRate())
                    .text(rate.source()),
            row -> new SoilRate(
                    row.text(),
                    row.word(Crop.class),
                    Set.of(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.yes(),
                    row.maybeAmount(),
                    row.maybeAmount(),
                    row.text()));

    static final RowKind<Listed> TEXTURE = Listed.kind(
            "soil_rate_texture",
            "soil_rate texture",
            season -> season.shelf().labels().soilRates(),
            rate -> Listed.words(rate.textures()));

    static final RowKind<Setback> SETBACK = new RowKind<>(
            "setback",
            "product kind distance_ft downwind_only source",
            season -> season.shelf().labels().setbacks(),
            (setback, cells) -> cells.text(setback.product())
                    .word(setback.kind())
                    .real(setback.feet())
                    .yes(setback.downwindOnly())
                    .text(setback.source()),
            row -> new Setback(row.text(), row.word(FeatureKind.class), row.maybeReal(), row.yes(), row.text()));

    static final RowKind<PlantBack> PLANT_BACK = new RowKind<>(
            "plant_back",
            "product next_crop days ph_from ph_below condition source",
            season -> season.shelf().labels().plantBacks(),
            (back, cells) -> cells.text(back.product())
                    .text(back.nextCrop())
                    .whole(back.days())
                    .real(back.forPhFrom())
                    .real(back.forPhBelow())
                    .text(back.condition())
                    .text(back.source()),
            row -> new PlantBack(
                    row.text(),
                    row.text(),
                    row.maybeWhole(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.text(),
                    row.text()));

    static final RowKind<MixRule> MIX_RULE = new RowKind<>(
            "mix_rule",
            "product partner word source",
            season -> season.shelf().labels().mixRules(),
            (rule, cells) -> cells.text(rule.product())
                    .text(rule.partner())
                    .word(rule.word())
                    .text(rule.source()),
            row -> new MixRule(row.text(), row.text(), row.word(MixRule.Word.class), row.text()));

    static final RowKind<ToleranceRule> TOLERANCE = new RowKind<>(
            "tolerance",
            "product crop trait earliest_stage latest_stage source",
            season -> season.shelf().labels().tolerances(),
            (rule, cells) -> cells.text(rule.product())
                    .word(rule.crop())
                    .text(rule.trait())
                    .text(rule.earliestStage())
                    .text(rule.latestStage())
                    .text(rule.source()),
            row -> new ToleranceRule(
                    row.text(), row.word(Crop.class), row.maybeText(), row.maybeText(), row.maybeText(), row.text()));

    static final RowKind<LabelLimit> LIMIT = new RowKind<>(
            "label_limit",
            "product crop kind value source",
            season -> season.shelf().labels().limits(),
            (limit, cells) -> cells.text(limit.product())
                    .word(limit.crop())
                    .word(limit.kind())
                    .text(limit.value())
                    .text(limit.source()),
            row -> new LabelLimit(
                    row.text(), row.maybeWord(Crop.class), row.word(LabelLimit.Kind.class), row.text(), row.text()));

    private LabelRows() {}

    /** The terms with the methods that somebody read on their labels. */
    static List<UseTerms> withMethods(List<UseTerms> terms, List<Listed> methods) {
        return Listed.joined(
                terms,
                methods,
                (use, listed) -> new UseTerms(
                        use.product(),
                        use.crop(),
                        use.reentryHours(),
                        use.daysBetween(),
                        use.grazingDays(),
                        use.feedingForbidden(),
                        use.earliestStage(),
                        use.latestStage(),
                        use.highestCropIn(),
                        use.highestWeedIn(),
                        use.methods() == null ? null : Words.read(Method.class, listed),
                        use.carrierLowGalPerAcre(),
                        use.finest(),
                        use.coarsest(),
                        use.boomHighestIn(),
                        use.windLowestMph(),
                        use.windHighestMph(),
                        use.warmestF(),
                        use.rainFreeHours(),
                        use.source()));
    }

    /** The rates with the textures they are for. */
    static List<SoilRate> withTextures(List<SoilRate> rates, List<Listed> textures) {
        return Listed.joined(
                rates,
                textures,
                (rate, listed) -> new SoilRate(
                        rate.product(),
                        rate.crop(),
                        Words.read(Texture.class, listed),
                        rate.organicMatterLowPct(),
                        rate.organicMatterHighPct(),
                        rate.phLow(),
                        rate.phHigh(),
                        rate.forbidden(),
                        rate.lowRate(),
                        rate.highRate(),
                        rate.source()));
    }
}
