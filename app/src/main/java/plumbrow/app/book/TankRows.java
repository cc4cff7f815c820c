package plumbrow.app.book;

import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.tank.Addition;
import plumbrow.advice.tank.HourLimit;
import plumbrow.advice.tank.MixCare;
import plumbrow.advice.tank.Nozzle;
import plumbrow.advice.tank.Sprayer;
import plumbrow.advice.tank.TankBook;
import plumbrow.advice.tank.WaterTest;

/** What goes into the tank and through which nozzles. */
final class TankRows {
    static final RowKind<Sprayer> SPRAYER = new RowKind<>(
            "sprayer",
            "farm machine tank_gal spacing_in pump_gpm agitation_gpm fill_min most_left_gal source",
            season -> tank(season).sprayers(),
            (sprayer, cells) -> cells.text(sprayer.farm())
                    .text(sprayer.machine())
                    .real(sprayer.tankGal())
                    .real(sprayer.spacingIn())
                    .real(sprayer.pumpGpm())
                    .real(sprayer.agitationGpm())
                    .real(sprayer.fillMinutes())
                    .real(sprayer.mostLeftGal())
                    .text(sprayer.source()),
            row -> new Sprayer(
                    row.text(),
                    row.text(),
                    row.real(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.text()));

    static final RowKind<Nozzle> NOZZLE = new RowKind<>(
            "nozzle",
            "farm nozzle size low_psi high_psi droplets source",
            season -> tank(season).nozzles(),
            (nozzle, cells) -> cells.text(nozzle.farm())
                    .text(nozzle.nozzle())
                    .text(nozzle.size())
                    .real(nozzle.lowPsi())
                    .real(nozzle.highPsi())
                    .word(nozzle.droplets())
                    .text(nozzle.source()),
            row -> new Nozzle(
                    row.text(), row.text(), row.text(), row.real(), row.real(), row.word(Droplets.class), row.text()));

    static final RowKind<MixCare> MIXING = new RowKind<>(
            "mixing",
            "product formulation container container_unit mark mark_unit mix_order clean_out ams ams_low_lb ams_high_lb source",
            season -> tank(season).mixing(),
            (care, cells) -> cells.text(care.product())
                    .text(care.formulation())
                    .amount(care.container())
                    .amount(care.mark())
                    .text(care.order())
                    .text(care.cleanOut())
                    .word(care.ams())
                    .real(care.amsLowLb())
                    .real(care.amsHighLb())
                    .text(care.source()),
            row -> new MixCare(
                    row.text(),
                    row.maybeText(),
                    row.maybeAmount(),
                    row.maybeAmount(),
                    row.maybeText(),
                    row.maybeText(),
                    row.maybeWord(MixCare.Conditioner.class),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.text()));

    static final RowKind<WaterTest> WATER = new RowKind<>(
            "water_test",
            "farm tested calcium_ppm magnesium_ppm sodium_ppm potassium_ppm iron_ppm ph source",
            season -> tank(season).water(),
            (test, cells) -> cells.text(test.farm())
                    .date(test.tested())
                    .real(test.calcium())
                    .real(test.magnesium())
                    .real(test.sodium())
                    .real(test.potassium())
                    .real(test.iron())
                    .real(test.ph())
                    .text(test.source()),
            row -> new WaterTest(
                    row.text(),
                    row.date(),
                    row.real(),
                    row.real(),
                    row.real(),
                    row.real(),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.text()));

    static final RowKind<Addition> ADDITION = new RowKind<>(
            "addition",
            "product field addition rate basis source",
            season -> tank(season).additions(),
            (addition, cells) -> cells.text(addition.product())
                    .text(addition.field())
                    .text(addition.addition())
                    .real(addition.rate())
                    .word(addition.basis())
                    .text(addition.source()),
            row -> new Addition(
                    row.text(), row.maybeText(), row.text(), row.real(), row.word(Addition.Basis.class), row.text()));

    static final RowKind<HourLimit> HOUR_LIMIT = new RowKind<>(
            "hour_limit",
            "state product measure least most source",
            season -> tank(season).limits(),
            (limit, cells) -> cells.text(limit.state())
                    .text(limit.product())
                    .word(limit.measure())
                    .real(limit.least())
                    .real(limit.most())
                    .text(limit.source()),
            row -> new HourLimit(
                    row.maybeText(),
                    row.maybeText(),
                    row.word(HourLimit.Measure.class),
                    row.maybeReal(),
                    row.maybeReal(),
                    row.text()));

    private TankRows() {}

    private static TankBook tank(Season season) {
        return season.work().means().tank();
    }
}
