package plumbrow.app.desk.rows;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.app.rows.JointForm;
import plumbrow.documents.workbook.edit.EditFaults;

/**
 * A form of several rows, with a box for each cell that is asked for.
 *
 * @param form what is entered
 * @param groups the boxes of each part
 * @param other what is wrong that has no box, in sentences
 */
public record JointView(JointForm form, List<List<Box>> groups, List<String> other) {
    static JointView of(
            @Nullable Season season, JointForm form, Map<String, String> typed, @Nullable EditFaults faults) {
        List<Integer> made = List.copyOf(form.rows(typed).keySet());
        Map<String, List<String>> atBox = new LinkedHashMap<>();
        List<String> other = new ArrayList<>();
        if (faults != null) {
            for (EditFaults.Place place : faults.places()) {
                Optional<String> box = place.change() < 0
                        ? Optional.empty()
                        : form.box(made.get(place.change()), place.fault().column());
                String words = place.fault().words();
                box.ifPresentOrElse(
                        name -> {
                            List<String> there = atBox.computeIfAbsent(name, none -> new ArrayList<>());
                            if (!there.contains(words)) {
                                there.add(words);
                            }
                        },
                        () -> other.add(place.fault().sentence()));
            }
        }
        List<List<Box>> groups = new ArrayList<>();
        for (JointForm.Part part : form.parts()) {
            List<Box> boxes = new ArrayList<>();
            for (JointForm.Asked asked : part.asked()) {
                Map<String, String> row = new LinkedHashMap<>();
                typed.forEach((name, text) -> {
                    if (name.startsWith(part.prefix())) {
                        row.put(name.substring(part.prefix().length()), text);
                    }
                });
                boxes.add(Box.of(
                                season,
                                part.sheet(),
                                asked.column(),
                                row,
                                atBox.getOrDefault(
                                        part.prefix() + asked.column().key(), List.of()),
                                false)
                        .in(part.prefix(), asked));
            }
            groups.add(boxes);
        }
        return new JointView(form, groups, other);
    }

    public List<Box> faulty() {
        return groups.stream().flatMap(List::stream).filter(Box::faulty).toList();
    }

    public boolean wrong() {
        return !faulty().isEmpty() || !other.isEmpty();
    }
}
