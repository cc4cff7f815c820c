package plumbrow.app.book;

import plumbrow.advice.means.FarmLimit;
import plumbrow.advice.means.Machine;
import plumbrow.advice.means.MachineKind;
import plumbrow.advice.means.PriceBreak;
import plumbrow.advice.means.Supply;
import plumbrow.advice.means.WorkWindow;

/** What farms have to work with. */
final class MeansRows {
    static final RowKind<Machine> MACHINE = new RowKind<>(
            "machine",
            "farm name kind width_ft speed_mph efficiency_pct source",
            season -> season.work().means().machines(),
            (machine, cells) -> cells.text(machine.farm())
                    .text(machine.name())
                    .word(machine.kind())
                    .real(machine.widthFt())
                    .real(machine.speedMph())
                    .real(machine.efficiencyPct())
                    .text(machine.source()),
            row -> new Machine(
                    row.text(),
                    row.text(),
                    row.word(MachineKind.class),
                    row.real(),
                    row.real(),
                    row.real(),
                    row.text()));

    static final RowKind<WorkWindow> WINDOW = new RowKind<>(
            "work_window",
            "farm name kind from_date until_date fit_days hours_per_day source",
            season -> season.work().means().windows(),
            (window, cells) -> cells.text(window.farm())
                    .text(window.name())
                    .word(window.kind())
                    .date(window.from())
                    .date(window.until())
                    .real(window.fitDays())
                    .real(window.hoursPerDay())
                    .text(window.source()),
            row -> new WorkWindow(
                    row.text(),
                    row.text(),
                    row.word(MachineKind.class),
                    row.date(),
                    row.date(),
                    row.real(),
                    row.real(),
                    row.text()));

    static final RowKind<FarmLimit> LIMIT = new RowKind<>(
            "farm_limit",
            "farm capital_usd least_in_worst_tenth_usd least_refuge_pct yield_tie source",
            season -> season.work().means().limits(),
            (limit, cells) -> cells.text(limit.farm())
                    .real(limit.capitalUsd())
                    .real(limit.leastInWorstTenthUsd())
                    .real(limit.leastRefugePct())
                    .real(limit.yieldTie())
                    .text(limit.source()),
            row -> new FarmLimit(
                    row.text(), row.maybeReal(), row.maybeReal(), row.maybeReal(), row.real(), row.text()));

    static final RowKind<PriceBreak> BREAK = new RowKind<>(
            "price_break",
            "farm product from_quantity price_usd source",
            season -> season.work().means().breaks(),
            (step, cells) -> cells.text(step.farm())
                    .text(step.product())
                    .real(step.fromQuantity())
                    .real(step.priceUsd())
                    .text(step.source()),
            row -> new PriceBreak(row.text(), row.text(), row.real(), row.real(), row.text()));

    static final RowKind<Supply> SUPPLY = new RowKind<>(
            "supply",
            "farm product most_quantity source",
            season -> season.work().means().supplies(),
            (supply, cells) -> cells.text(supply.farm())
                    .text(supply.product())
                    .real(supply.mostQuantity())
                    .text(supply.source()),
            row -> new Supply(row.text(), row.text(), row.real(), row.text()));

    private MeansRows() {}
}
