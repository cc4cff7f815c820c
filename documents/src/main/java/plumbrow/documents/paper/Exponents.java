package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Puts raised and lowered small letters on the line of the letter they hang on.
 *
 * Left where they are they could end up on a line of their own, and 8.7 × 10⁻⁴ would be read as 10.
 */
final class Exponents {
    private static final float SMALL = .82f;
    private static final float TOUCH = 3;
    private static final float OVERLAP = 1.5f;
    private static final float RAISED = .65f;
    private static final float LOWERED = .35f;

    private Exponents() {}

    static List<Glyph> lowered(List<Glyph> glyphs) {
        float usual = usualSize(glyphs) * SMALL;
        List<Glyph> settled = new ArrayList<>();
        List<Glyph> small = new ArrayList<>();
        for (Glyph glyph : glyphs) {
            (glyph.size() < usual && !glyph.isBlank() ? small : settled).add(glyph);
        }
        if (small.isEmpty() || small.size() > settled.size()) {
            return new ArrayList<>(glyphs);
        }
        small.sort(Comparator.comparingDouble(Glyph::left));
        Map<Long, List<Glyph>> byEnd = new HashMap<>();
        settled.forEach(glyph -> byEnd.computeIfAbsent(cell(glyph.right()), end -> new ArrayList<>())
                .add(glyph));
        for (Glyph glyph : small) {
            Glyph base = base(glyph, byEnd);
            Glyph placed = base == null ? glyph : glyph.on(base.baseline());
            settled.add(placed);
            byEnd.computeIfAbsent(cell(placed.right()), end -> new ArrayList<>())
                    .add(placed);
        }
        return settled;
    }

    private static @Nullable Glyph base(Glyph glyph, Map<Long, List<Glyph>> byEnd) {
        Glyph best = null;
        for (long end = cell(glyph.left() - TOUCH); end <= cell(glyph.left() + OVERLAP); end++) {
            for (Glyph other : byEnd.getOrDefault(end, List.of())) {
                float gap = glyph.left() - other.right();
                float up = other.baseline() - glyph.baseline();
                float size = Math.max(other.size(), glyph.size());
                boolean near = gap <= TOUCH && gap >= -OVERLAP && up <= RAISED * size && up >= -LOWERED * size;
                if (near && !other.isBlank() && (best == null || other.size() > best.size())) {
                    best = other;
                }
            }
        }
        return best;
    }

    private static long cell(float x) {
        return (long) Math.floor(x / TOUCH);
    }

    /** The size that most letters have. */
    private static float usualSize(List<Glyph> glyphs) {
        Map<Float, Integer> counts = new HashMap<>();
        glyphs.forEach(glyph -> counts.merge(glyph.size(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0f);
    }
}
