package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;
import plumbrow.science.reference.County.Ring;

/**
 * Reads the packed lines of counties.
 *
 * <p>A line that begins with g gives the grid: two steps and two origins [degrees]. One with a is an arc of grid points,
 * each but the first by its step from the one before. One with c is a county: code, name, rings of arcs.
 */
final class CountyFile {
    /** A closed triangle has so many numbers; an islet or hole with fewer was straightened to a line. */
    private static final int TRIANGLE = 8;

    private final List<double[]> arcs = new ArrayList<>();
    private final List<County> counties = new ArrayList<>();
    private double[] grid = {};

    CountyFile(String text) {
        text.lines().forEach(this::line);
    }

    List<County> counties() {
        return counties;
    }

    private void line(String line) {
        switch (line.charAt(0)) {
            case 'g' -> grid = numbers(line);
            case 'a' -> arcs.add(degrees(numbers(line)));
            default -> counties.add(county(line.split("\t", -1)));
        }
    }

    private static double[] numbers(String line) {
        StringTokenizer words = new StringTokenizer(line);
        words.nextToken();
        double[] numbers = new double[words.countTokens()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Double.parseDouble(words.nextToken());
        }
        return numbers;
    }

    private double[] degrees(double[] steps) {
        double[] degrees = new double[steps.length];
        double[] at = {0, 0};
        for (int i = 0; i < steps.length; i++) {
            at[i % 2] += steps[i];
            degrees[i] = at[i % 2] * grid[i % 2] + grid[2 + i % 2];
        }
        return degrees;
    }

    private County county(String[] cells) {
        List<Ring> rings = new ArrayList<>();
        for (String ring : cells[3].split("/", -1)) {
            boolean hole = ring.startsWith("h");
            double[] corners = joined((hole ? ring.substring(1) : ring).split(",", -1));
            if (corners.length >= TRIANGLE) {
                rings.add(new Ring(hole, corners));
            }
        }
        String state = Counties.STATES.get(cells[1].substring(0, 2));
        if (state == null) {
            throw new IllegalStateException("no state has the code " + cells[1]);
        }
        return new County(cells[1], state, cells[2], rings);
    }

    /** Arcs end to end; the point where two meet stands once. */
    private double[] joined(String[] numbers) {
        List<double[]> parts = new ArrayList<>();
        int length = 0;
        for (String number : numbers) {
            int arc = Integer.parseInt(number);
            double[] part = arc < 0 ? backwards(arcs.get(~arc)) : arcs.get(arc);
            parts.add(part);
            length += part.length;
        }
        double[] ring = new double[length - 2 * (parts.size() - 1)];
        int end = 0;
        for (double[] part : parts) {
            int skip = end == 0 ? 0 : 2;
            System.arraycopy(part, skip, ring, end, part.length - skip);
            end += part.length - skip;
        }
        return ring;
    }

    private static double[] backwards(double[] arc) {
        double[] turned = new double[arc.length];
        for (int i = 0; i < arc.length; i += 2) {
            turned[i] = arc[arc.length - 2 - i];
            turned[i + 1] = arc[arc.length - 1 - i];
        }
        return turned;
    }
}
