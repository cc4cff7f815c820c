package plumbrow.app.desk.fieldplan;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.fieldplan.FieldPlans;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.Choice;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.desk.Weighings;
import plumbrow.app.weather.Decided;

/** Field plans out of the book and what is weighed of it. */
@Component
public final class PlansOfFields {
    private final DeskBook book;
    private final Weighings weighings;

    public PlansOfFields(DeskBook book, Weighings weighings) {
        this.book = book;
        this.weighings = weighings;
    }

    /** The plan of one field. */
    public FieldPlan of(Season season, Field field) {
        return of(season, List.of(field)).get(0);
    }

    /** The plans of some fields, in their order. */
    public List<FieldPlan> of(Season season, List<Field> fields) {
        FieldPlans plans = new FieldPlans(season);
        List<Choice> choices = book.choices(season.year());
        return fields.parallelStream()
                .map(field -> plan(season, field, plans, choices))
                .toList();
    }

    private FieldPlan plan(Season season, Field field, FieldPlans plans, List<Choice> choices) {
        FieldAdvice advice = null;
        NextInputs next = null;
        String gap = "";
        try {
            advice = weighings.field(season, field, WeighingOptions.DEFAULT);
            next = weighings.next(season, field);
        } catch (SeasonGapException lacking) {
            gap = String.valueOf(lacking.getMessage());
        }
        return plans.of(field, Decided.decision(season, field, choices), advice, gap, Optional.ofNullable(next));
    }
}
