package plumbrow.app.desk.field;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.app.book.Choice;
import plumbrow.app.desk.shown.Shown;

/** What the page of a field shows. */
public record FieldSheet(Season season, Field field, FieldAdvice advice, List<Choice> choices) {

    static FieldSheet of(Season season, Field field, FieldAdvice advice, List<Choice> choices) {
        return new FieldSheet(
                season,
                field,
                advice,
                choices.stream()
                        .filter(choice -> choice.field().equals(field.name()))
                        .sorted(Comparator.comparing(Choice::when).reversed())
                        .toList());
    }

    public Optional<Farm> farm() {
        return season.farm(field.farm());
    }

    /** What is known of the ground, and where to look up what is not. */
    public List<Fact> facts() {
        return List.of(
                new Fact("Area", Shown.acres(field.acres()) + " ac", ""),
                new Fact("County", field.county() + ", " + field.state(), ""),
                new Fact("Crop this season", field.crop().word(), ""),
                new Fact(
                        "Soil texture",
                        field.texture() == null ? null : field.texture().word(),
                        "the county soil survey, or feel a handful"),
                new Fact("Organic matter", measured(field.organicMatterPct(), " %"), "the last soil test"),
                new Fact("Soil pH", measured(field.ph(), ""), "the last soil test"),
                new Fact("Slope", measured(field.slopePct(), " %"), "the county soil survey"));
    }

    /** What was done this season and how it was planned, what is not clear, and which programs it contradicts. */
    public List<String> done() {
        return DoneWork.of(season, field).sentences();
    }

    /** Earlier years, latest first. */
    public List<CropYear> history() {
        return season.history().stream()
                .filter(year -> year.field().equals(field.name()))
                .sorted(Comparator.comparingInt(CropYear::year).reversed())
                .toList();
    }

    public List<InsectPressure> insects() {
        return season.pests().insects().stream()
                .filter(insect -> insect.field().equals(field.name()))
                .toList();
    }

    public List<WeedPressure> weeds() {
        return season.pests().weeds().stream()
                .filter(weed -> weed.field().equals(field.name()))
                .toList();
    }

    public List<TraitDoubt> doubts() {
        return season.pests().traitDoubts().stream()
                .filter(doubt -> doubt.field().equals(field.name()))
                .toList();
    }

    private static @Nullable String measured(@Nullable Double value, String unit) {
        return value == null ? null : Shown.number(value) + unit;
    }
}
