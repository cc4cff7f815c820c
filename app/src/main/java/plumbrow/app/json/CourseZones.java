package plumbrow.app.json;

import java.util.List;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.land.Zones;
import plumbrow.advice.season.Season;

/**
 * What setbacks leave of a field under one course, product by product.
 *
 * @param surveyed whether somebody has looked over what lies around the field; where not, it is at most what is left
 */
public record CourseZones(String field, String course, boolean surveyed, List<Zones> passes) {
    public CourseZones {
        passes = List.copyOf(passes);
    }

    public static CourseZones of(Season season, Gates gates, Field field, Course course) {
        return new CourseZones(
                field.name(), course.name(), season.ground().lookedForAll(field.name()), gates.zones(field, course));
    }
}
