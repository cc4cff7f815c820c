package plumbrow.advice.gates;

import java.util.List;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/** One check that a course must pass. Pure: the same season, field and course give the same findings. */
public interface Gate {
    /** Its name in findings and docs, such as "season-maximum". */
    String id();

    Protects protects();

    /** What it asks, as a person would. */
    String question();

    /** One finding for each thing it looked at; none where it has nothing to say of this course. */
    List<Finding> check(Season season, Field field, Course course);
}
