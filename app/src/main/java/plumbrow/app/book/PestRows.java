package plumbrow.app.book;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.InsectPressure.Measure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;

/** What presses on the fields: insects, weeds, and the doubt whether traits still work. */
final class PestRows {
    static final RowKind<InsectPressure> INSECT = new RowKind<>(
            "insect_pressure",
            "field insect measure pressure loss_pct neighbour_share sample_size sample_spread sample_cost_usd scouted source",
            season -> season.pests().insects(),
            PestRows::writeInsect,
            row -> new InsectPressure(
                    row.text(),
                    row.text(),
                    row.word(Measure.class),
                    row.distribution(),
                    row.distribution(),
                    row.real(),
                    sample(row),
                    row.maybeDate(),
                    row.text()));

    static final RowKind<TraitDoubt> TRAIT_DOUBT = new RowKind<>(
            "trait_doubt",
            "field trait_group insect chance control_if_failed source",
            season -> season.pests().traitDoubts(),
            (doubt, cells) -> cells.text(doubt.field())
                    .text(doubt.group())
                    .text(doubt.insect())
                    .real(doubt.chance())
                    .real(doubt.controlIfFailed())
                    .text(doubt.source()),
            row -> new TraitDoubt(row.text(), row.text(), row.text(), row.real(), row.real(), row.text()));

    static final RowKind<WeedPressure> WEED = new RowKind<>(
            "weed_pressure",
            "field weed density_m2 first_plant_loss_pct most_loss_pct source first_plant_loss_distribution",
            season -> season.pests().weeds(),
            (weed, cells) -> cells.text(weed.field())
                    .text(weed.weed())
                    .distribution(weed.densityPerSquareMetre())
                    .real(weed.firstPlantLossPct())
                    .real(weed.mostLossPct())
                    .text(weed.source())
                    .maybeDistribution(
                            weed.lossPerPlantPct() instanceof Distribution.Fixed ? null : weed.lossPerPlantPct()),
            PestRows::weed);

    static final RowKind<KnownResistance> RESISTANCE = new RowKind<>(
            "known_resistance",
            "field weed action_group source share_pct",
            season -> season.pests().resistance(),
            (known, cells) -> cells.text(known.field())
                    .text(known.weed())
                    .text(known.group())
                    .text(known.source())
                    .real(known.sharePct()),
            PestRows::resistance);

    private PestRows() {}

    /** The loss per plant is one number, or a distribution where it was entered as one; older books have the number alone. */
    private static WeedPressure weed(Row row) throws SQLException {
        String field = row.text();
        String weed = row.text();
        Distribution density = row.distribution();
        double lossPct = row.real();
        double mostLossPct = row.real();
        String source = row.text();
        Distribution entered = row.maybeDistribution();
        return new WeedPressure(
                field, weed, density, entered == null ? new Distribution.Fixed(lossPct) : entered, mostLossPct, source);
    }

    private static KnownResistance resistance(Row row) throws SQLException {
        String field = row.text();
        String weed = row.text();
        String group = row.text();
        String source = row.text();
        return new KnownResistance(field, weed, group, row.maybeReal(), source);
    }

    private static void writeInsect(InsectPressure insect, Cells cells) {
        cells.text(insect.field())
                .text(insect.insect())
                .word(insect.measure())
                .distribution(insect.pressure())
                .distribution(insect.lossPerUnitPct())
                .real(insect.neighbourShare());
        ScoutingSample sample = insect.sample();
        cells.whole(sample == null ? null : sample.size())
                .real(sample == null ? null : sample.spread())
                .real(sample == null ? null : sample.costUsd());
        cells.date(insect.scouted()).text(insect.source());
    }

    private static @Nullable ScoutingSample sample(Row row) throws SQLException {
        Integer size = row.maybeWhole();
        Double spread = row.maybeReal();
        Double costUsd = row.maybeReal();
        return size == null || spread == null || costUsd == null ? null : new ScoutingSample(size, spread, costUsd);
    }
}
