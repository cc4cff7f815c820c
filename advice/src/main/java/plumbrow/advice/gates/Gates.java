package plumbrow.advice.gates;

import java.util.Comparator;
import java.util.List;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/** All gates, and what they find of a course together. */
public final class Gates {
    private static final List<Gate> ALL = List.of(
            new CropOnLabel(),
            new RegisteredInState(),
            new CountyNotExcluded(),
            new LabelRate(),
            new MostApplications(),
            new ProductSeasonMaximum(),
            new ActiveSeasonMaximum(),
            new PreHarvestInterval(),
            new RightToSave(),
            new RefugeAcres(),
            new RefugePlacement());

    private Gates() {}

    /** Every gate, in the order of asking. */
    public static List<Gate> all() {
        return ALL;
    }

    /** What all gates say of a course, worst first; within a standing in the order of asking. */
    public static List<Finding> check(Season season, Field field, Course course) {
        return ALL.stream()
                .flatMap(gate -> gate.check(season, field, course).stream())
                .sorted(Comparator.comparing(Finding::standing))
                .toList();
    }

    /** The standing of a course: that of its worst finding, clear where no gate has anything to say. */
    public static Standing standing(List<Finding> findings) {
        return findings.stream().map(Finding::standing).reduce(Standing.CLEAR, Standing::worse);
    }
}
