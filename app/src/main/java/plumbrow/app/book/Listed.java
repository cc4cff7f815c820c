package plumbrow.app.book;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;

/** One entry of a list that belongs to a row of another table, which it names by position. */
record Listed(int owner, String entry) {
    /**
     * The table of such entries.
     *
     * @param columns the position of the owner, and the entry
     * @param owners the rows of the other table
     * @param list the entries of one of them in the order to be kept; none where it has no list
     */
    static <R> RowKind<Listed> kind(
            String table, String columns, Function<Season, List<R>> owners, Function<R, List<String>> list) {
        return new RowKind<>(
                table,
                columns,
                season -> listed(owners.apply(season), list),
                (listed, cells) -> cells.whole(listed.owner()).text(listed.entry()),
                row -> new Listed(row.whole(), row.text()));
    }

    private static <R> List<Listed> listed(List<R> owners, Function<R, List<String>> list) {
        List<Listed> listed = new ArrayList<>();
        for (int i = 0; i < owners.size(); i++) {
            int position = i + 1;
            list.apply(owners.get(i)).forEach(entry -> listed.add(new Listed(position, entry)));
        }
        return listed;
    }

    /** The owners with their lists. */
    static <R> List<R> joined(List<R> owners, List<Listed> listed, BiFunction<R, List<String>, R> with) {
        Map<Integer, List<Listed>> byOwner = Grouped.by(Listed::owner, listed);
        return IntStream.range(0, owners.size())
                .mapToObj(i -> with.apply(
                        owners.get(i),
                        byOwner.getOrDefault(i + 1, List.of()).stream()
                                .map(Listed::entry)
                                .toList()))
                .toList();
    }

    /** Words of a fixed list in its order, which a set does not keep. */
    static <E extends Enum<E>> List<String> words(@Nullable Collection<E> constants) {
        return constants == null
                ? List.of()
                : constants.stream().sorted().map(Words::of).toList();
    }

    /** Texts in the order of the alphabet, which a set does not keep. */
    static List<String> sorted(@Nullable Collection<String> texts) {
        return texts == null ? List.of() : texts.stream().sorted().toList();
    }
}
