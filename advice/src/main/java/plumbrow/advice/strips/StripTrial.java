package plumbrow.advice.strips;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A harvested trial whose strips can be compared: two treatments or more, each twice or more, and blocks that tie all of them
 * together.
 *
 * @param check the treatment that the others are held against
 * @param strips in any order
 */
public record StripTrial(String check, List<Strip> strips) {
    private static final int MOST_STRIPS = 1000;

    /**
     * @throws IllegalArgumentException with a sentence for the person, where the strips can't answer
     */
    public StripTrial {
        strips = List.copyOf(strips);
        if (strips.size() > MOST_STRIPS) {
            throw new IllegalArgumentException("There are " + strips.size() + " strips; expected at most " + MOST_STRIPS
                    + ". Points of a yield monitor are averaged by strip first.");
        }
        Map<String, Integer> times = times(strips);
        if (!times.containsKey(check)) {
            throw new IllegalArgumentException(
                    "No strip has the treatment '" + check + "' that the others are held against;"
                            + " the treatments are " + String.join(", ", times.keySet()) + ".");
        }
        if (times.size() < 2) {
            throw new IllegalArgumentException(
                    "All strips have the treatment '" + check + "'; expected a second one to compare it with.");
        }
        times.forEach((treatment, count) -> {
            if (count < 2) {
                throw new IllegalArgumentException(
                        "'" + treatment
                                + "' has one strip; expected two or more of each. One strip each way is a demonstration, not a trial.");
            }
        });
        if (!tiedTogether(strips)) {
            throw new IllegalArgumentException(
                    "The blocks don't tie the treatments together: some treatments never share a"
                            + " block, or share none with a treatment that does, so what lies between them may be the ground alone.");
        }
        if (strips.size() - times.size() - blocks(strips).size() + 1 < 1) {
            throw new IllegalArgumentException(
                    "Nothing is left to judge the chance by: expected more strips than treatments"
                            + " and blocks together.");
        }
        Set<Double> yields = new HashSet<>();
        strips.forEach(strip -> yields.add(strip.yieldBuPerAcre()));
        if (yields.size() == 1) {
            throw new IllegalArgumentException("All strips have the same yield, "
                    + strips.get(0).yieldBuPerAcre() + " bu/ac; expected yields as weighed.");
        }
    }

    /** The treatments as they first come, the check at the head. */
    public List<String> treatments() {
        Set<String> all = new LinkedHashSet<>();
        all.add(check);
        strips.forEach(strip -> all.add(strip.treatment()));
        return List.copyOf(all);
    }

    /** The blocks as they first come. */
    public List<String> blocks() {
        return blocks(strips);
    }

    /** Whether every strip says where it lies, and no two say the same. */
    public boolean placed() {
        Set<Double> places = new HashSet<>();
        for (Strip strip : strips) {
            Double place = strip.place();
            if (place == null || !places.add(place)) {
                return false;
            }
        }
        return true;
    }

    private static List<String> blocks(List<Strip> strips) {
        Set<String> all = new LinkedHashSet<>();
        strips.forEach(strip -> all.add(strip.block()));
        return List.copyOf(all);
    }

    private static Map<String, Integer> times(List<Strip> strips) {
        Map<String, Integer> times = new LinkedHashMap<>();
        strips.forEach(strip -> times.merge(strip.treatment(), 1, Integer::sum));
        return times;
    }

    /** Whether each treatment is reached from each other by blocks they share. */
    private static boolean tiedTogether(List<Strip> strips) {
        Set<String> treatments = new HashSet<>();
        Set<String> blocks = new HashSet<>();
        treatments.add(strips.get(0).treatment());
        int before = -1;
        while (before != treatments.size() + blocks.size()) {
            before = treatments.size() + blocks.size();
            for (Strip strip : strips) {
                if (treatments.contains(strip.treatment()) || blocks.contains(strip.block())) {
                    treatments.add(strip.treatment());
                    blocks.add(strip.block());
                }
            }
        }
        return strips.stream().allMatch(strip -> treatments.contains(strip.treatment()));
    }
}
