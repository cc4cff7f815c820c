package plumbrow.documents.workbook.rule;

import java.util.List;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Tables;

/** All that must hold between the rows and sheets of a workbook. */
public final class Rules {
    private static final List<Rule> ALL = List.of(
            new OnlyOnce(),
            new NamesKnown(),
            new OneGroup(),
            new Dates(),
            new LoggedProducts(),
            new LoggedPasses(),
            new ProgramsOfFields(),
            new PassOrder(),
            new PassesFit(),
            new UnitsAgree(),
            new LabelRates(),
            new SeedsComplete(),
            new FurtherCounties(),
            new CountiesFit(),
            new LabelLimitCounties(),
            new SpraysFit(),
            new OneTank(),
            new TillageFits());

    private Rules() {}

    public static void check(Tables tables, Objections objections) {
        ALL.forEach(rule -> rule.check(tables, objections));
    }
}
