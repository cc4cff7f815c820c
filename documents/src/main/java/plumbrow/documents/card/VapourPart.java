package plumbrow.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbrow.documents.sheet.Content;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;
import plumbrow.science.fate.VolatilityClass;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Bound;
import plumbrow.science.reference.Choice;
import plumbrow.science.reference.Property;
import plumbrow.science.reference.Substance;
import plumbrow.science.safety.PaperUnits;

/** How readily it leaves as vapour, and whether it must be worked in. */
final class VapourPart {
    private static final List<String> CLASSES = List.of("low", "intermediate", "high");
    private int worst = -1;
    private final List<CardLine> lines = new ArrayList<>();

    private VapourPart() {}

    static CardSection of(CardInput input, Ingredients ingredients) {
        VapourPart part = new VapourPart();
        part.sheet(input);
        ingredients.actives().forEach(part::kept);
        part.workingIn();
        return new CardSection(
                CardPart.VAPOUR,
                part.lines,
                List.of("On the sheet of a water-based product the vapour pressure is often that of the water. Drift as"
                        + " droplets is another matter and not in this."));
    }

    private void sheet(CardInput input) {
        Reading reading = input.sheet().of(ValueKind.VAPOUR_PRESSURE);
        Optional<Bound> bound =
                reading instanceof Reading.Stated stated && stated.content() instanceof Content.Measured measured
                        ? Bounds.of(measured.amount(), PaperUnits::pascals)
                        : Optional.empty();
        if (reading instanceof Reading.Stated stated && bound.isPresent()) {
            line("The product, by its sheet", stated.words(), bound.get(), Said.origin(stated.quote()));
        } else {
            CardLine said = Said.line(reading, "The product, by its sheet");
            lines.add(
                    said.known() == Known.READ
                            ? new CardLine(
                                    said.about(),
                                    "unknown; look at the page: " + said.says() + " can’t be classed",
                                    Known.UNKNOWN,
                                    said.origins())
                            : said);
        }
    }

    private void kept(Ingredients.One one) {
        Substance substance = Objects.requireNonNull(one.kept());
        Optional<Choice> choice = substance.choose(Property.VAPOUR_PRESSURE);
        Optional<Bound> bound = choice.flatMap(chosen -> chosen.fact().number())
                .map(milli -> milli.times(PaperUnits.pascals("mPa").orElseThrow()));
        if (choice.isPresent() && bound.isPresent()) {
            var fact = choice.get().fact();
            line(
                    one.keptName(),
                    fact.value().printed() + " " + fact.unit()
                            + (fact.conditions().isEmpty() ? "" : " (" + fact.conditions() + ")"),
                    bound.get(),
                    new Origin.Reference(substance.name(), fact.origin(), fact.backing()));
        } else {
            lines.add(CardLine.unknown(one.name(), "the vapour pressure of the ingredient itself"));
        }
    }

    private void line(String about, String value, Bound pascals, Origin origin) {
        String mildest = VolatilityClass.ofPascals(pascals.low());
        String strongest = VolatilityClass.ofPascals(pascals.high());
        worst = Math.max(worst, CLASSES.indexOf(strongest));
        OptionalDouble number = pascals.number() > 0 ? OptionalDouble.of(pascals.number()) : OptionalDouble.empty();
        Answer answer = number.isPresent()
                ? Worked.out(VolatilityClass.FIGURE)
                        .with("vapour_pressure_pa", number.getAsDouble())
                        .answer()
                : null;
        String index =
                answer == null ? "" : "index " + Numbers.plain(Math.rint(answer.number("index") * 10) / 10) + ", ";
        boolean kept = origin instanceof Origin.Reference;
        lines.add(new CardLine(
                about,
                value + ": " + index + "class " + Words.either(mildest, strongest)
                        + " (Oregon State bands, from memory)",
                kept ? Known.KEPT : Known.WORKED,
                List.of(origin),
                answer));
    }

    private void workingIn() {
        if (worst < 0) {
            lines.add(CardLine.unknown("Working it in", "the label, under directions for soil application"));
            return;
        }
        lines.add(new CardLine(
                "Working it in, unless the label says otherwise",
                VolatilityClass.workingIn(CLASSES.get(worst)),
                Known.RULE,
                List.of(new Origin.Source("common practice, no source; the label’s hours and depth hold"))));
    }
}
