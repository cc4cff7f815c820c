package plumbrow.advice.pestpage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.Sources;
import plumbrow.science.weeds.CriticalWindow;
import plumbrow.science.weeds.WeedDensity;

/** When and how to look: weeds by their flush and the size that the ratings hold for, insects by the figures kept. */
final class ScoutingLines {
    private static final String PRACTICE = "common practice, no source";

    private ScoutingLines() {}

    static List<Scouting> of(PestKind kind, String name, List<Coming> coming, List<Works> works) {
        return kind == PestKind.WEED ? weed(coming, works) : insect(name);
    }

    private static List<Scouting> weed(List<Coming> coming, List<Works> works) {
        List<Scouting> lines = new ArrayList<>();
        String first = coming.stream()
                .filter(one -> !one.days().isEmpty())
                .map(one -> one.days().get(0).date())
                .filter(Objects::nonNull)
                .min(LocalDate::compareTo)
                .map(day -> "Look first about " + day + ", when a tenth is up on the earliest field. ")
                .orElse("");
        lines.add(new Scouting(
                first + "Count plants in a frame at ten places or more, and write down how they differ.",
                WeedDensity.COUNT.id(),
                PRACTICE));
        OptionalDouble height = works.stream()
                .filter(one -> one.reach() == Works.Reach.LEAF && one.works())
                .flatMap(one -> java.util.Optional.ofNullable(one.heightIn()).stream())
                .mapToDouble(Double::doubleValue)
                .min();
        lines.add(
                height.isPresent()
                        ? new Scouting(
                                "Spray before the tallest is " + Numbers.fixed(height.getAsDouble(), 0)
                                        + " in: the lowest height that a leaf rating here holds for.",
                                null,
                                "ratings below; 4 in where none is written down")
                        : new Scouting(
                                "At which size a pass on leaves still works is unknown: no leaf rating here. Read the label.",
                                null,
                                PRACTICE));
        lines.add(new Scouting(
                "Keep the crop clean through its critical weeks; what comes later costs less.",
                CriticalWindow.FIGURE.id(),
                Sources.full(CriticalWindow.FIGURE.cited())));
        lines.add(new Scouting(
                "Go back two weeks after each pass, look for survivors beside dead ones of their size, and write down what"
                        + " they were sprayed with.",
                null,
                PRACTICE));
        return lines;
    }

    private static List<Scouting> insect(String name) {
        List<Scouting> lines = new ArrayList<>();
        KnownInsect.find(name)
                .ifPresent(known -> known.figures()
                        .forEach(figure -> lines.add(new Scouting(
                                figure.question() + " " + figure.validity(),
                                figure.id(),
                                Sources.full(figure.cited())))));
        if (lines.isEmpty()) {
            lines.add(new Scouting(
                    "How to count it and from which count on to treat is not kept here: ask the state’s extension office"
                            + " for its bulletin.",
                    null,
                    PRACTICE));
        }
        return lines;
    }
}
