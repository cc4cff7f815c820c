package plumbrow.advice.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.outlook.OutlookLine;
import plumbrow.advice.outlook.OutlookQuantity;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.shelf.Shelf;

/**
 * All that an evaluation needs to know, and nothing that changes while it runs.
 *
 * @param year harvest year
 * @param asOf the day the outlook was drawn up; advice is as of this day
 * @param adviser who gives the advice
 */
public record Season(
        int year,
        LocalDate asOf,
        String adviser,
        List<Farm> farms,
        List<Field> fields,
        List<CropYear> history,
        Shelf shelf,
        Pests pests,
        List<Course> courses,
        List<OutlookLine> outlook,
        Ground ground,
        Work work) {
    public Season {
        farms = List.copyOf(farms);
        fields = List.copyOf(fields);
        history = List.copyOf(history);
        courses = List.copyOf(courses);
        outlook = List.copyOf(outlook);
    }

    /** A season of which nobody has said what lies around its fields, nor how it is sprayed. */
    public Season(
            int year,
            LocalDate asOf,
            String adviser,
            List<Farm> farms,
            List<Field> fields,
            List<CropYear> history,
            Shelf shelf,
            Pests pests,
            List<Course> courses,
            List<OutlookLine> outlook) {
        this(year, asOf, adviser, farms, fields, history, shelf, pests, courses, outlook, Ground.UNKNOWN, Work.NONE);
    }

    /** The same season with other courses. */
    public Season withCourses(List<Course> others) {
        return withCourses(others, work);
    }

    /** The same season with other courses and spray plans in the place of its own. */
    public Season withCourses(List<Course> others, Work work) {
        return new Season(year, asOf, adviser, farms, fields, history, shelf, pests, others, outlook, ground, work);
    }

    /** The same season with other fields in the place of its own. */
    public Season withFields(List<Field> others) {
        return new Season(year, asOf, adviser, farms, others, history, shelf, pests, courses, outlook, ground, work);
    }

    /** The same season with another shelf. */
    public Season withShelf(Shelf other) {
        return new Season(year, asOf, adviser, farms, fields, history, other, pests, courses, outlook, ground, work);
    }

    /** The same season with another outlook. */
    public Season withOutlook(List<OutlookLine> others) {
        return new Season(year, asOf, adviser, farms, fields, history, shelf, pests, courses, others, ground, work);
    }

    /** The same season with something else around its fields and after them. */
    public Season withGround(Ground other) {
        return new Season(year, asOf, adviser, farms, fields, history, shelf, pests, courses, outlook, other, work);
    }

    /** The same season with something else that presses on its fields. */
    public Season withPests(Pests others) {
        return new Season(year, asOf, adviser, farms, fields, history, shelf, others, courses, outlook, ground, work);
    }

    public Optional<Field> field(String name) {
        return fields.stream().filter(field -> field.name().equals(name)).findFirst();
    }

    public Optional<Farm> farm(String name) {
        return farms.stream().filter(farm -> farm.name().equals(name)).findFirst();
    }

    /** The courses of a field, in the order they were entered. */
    public List<Course> courses(String field) {
        return courses.stream().filter(course -> course.field().equals(field)).toList();
    }

    /** The outlook line that holds for a field: its own before its crop's. */
    public Optional<OutlookLine> outlook(Field field, OutlookQuantity quantity) {
        return outlook.stream()
                .filter(line -> line.quantity() == quantity && field.name().equals(line.field()))
                .findFirst()
                .or(() -> outlook.stream()
                        .filter(line -> line.quantity() == quantity && field.crop() == line.crop())
                        .findFirst());
    }
}
