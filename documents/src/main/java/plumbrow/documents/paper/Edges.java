package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * Finds the left edges of columns by how the file sets its text: a line of a column begins with a letter that doesn't follow
 * the one before it, and many such letters stand under one another. A gutter in small print is often as narrow as a blank.
 */
final class Edges {
    private static final double UNDER = .8;
    private static final int FEWEST = 4;
    private static final double OTHER_LINE = .3;
    private static final double BACK = .5;
    private static final double AHEAD = 1.1;

    private Edges() {}

    /** The letters, told by identity, that begin a line at an edge at which at least four lines begin. */
    static Set<Glyph> of(List<Glyph> inFileOrder) {
        List<Glyph> starts = starts(inFileOrder);
        starts.sort(Comparator.comparingDouble(Glyph::left));
        Set<Glyph> edges = Collections.newSetFromMap(new IdentityHashMap<>());
        int from = 0;
        for (int i = 1; i <= starts.size(); i++) {
            if (i == starts.size() || starts.get(i).left() - starts.get(i - 1).left() > UNDER) {
                List<Glyph> under = starts.subList(from, i);
                if (under.stream().mapToDouble(Glyph::baseline).distinct().count() >= FEWEST) {
                    edges.addAll(under);
                }
                from = i;
            }
        }
        return edges;
    }

    private static List<Glyph> starts(List<Glyph> glyphs) {
        List<Glyph> starts = new ArrayList<>();
        Glyph before = null;
        for (Glyph glyph : glyphs) {
            if (glyph.isBlank()) {
                continue;
            }
            if (before == null || !follows(glyph, before)) {
                starts.add(glyph);
            }
            before = glyph;
        }
        return starts;
    }

    private static boolean follows(Glyph glyph, Glyph before) {
        double size = Math.max(glyph.size(), before.size());
        return Math.abs(glyph.baseline() - before.baseline()) < OTHER_LINE * size
                && glyph.left() > before.left() - BACK * size
                && glyph.left() < before.right() + AHEAD * size;
    }
}
