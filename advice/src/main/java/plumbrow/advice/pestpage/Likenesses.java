package plumbrow.advice.pestpage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.LikeWeed;
import plumbrow.science.figure.Numbers;
import plumbrow.science.reference.EfficacyGuide;
import plumbrow.science.reference.Rating;
import plumbrow.science.weedseason.KnownWeeds;

/** Weeds to borrow from: who stands in by the book, who is of the same genus in the guide, and whose numbers are kept. */
final class Likenesses {
    private static final String GUIDE =
            "botanical names of the packed ratings; that kin behave alike is common practice," + " no source";

    private Likenesses() {}

    static List<Alike> of(Season season, String weed) {
        List<Alike> alike = new ArrayList<>();
        List<LikeWeed> likes = season.pests().weedBook().likes();
        likes.stream()
                .filter(like -> like.weed().equalsIgnoreCase(weed))
                .forEach(like -> alike.add(new Alike(
                        like.as(), "Stands in for it here: emergence, growth and ratings that lack.", like.source())));
        likes.stream()
                .filter(like -> like.as().equalsIgnoreCase(weed))
                .forEach(like -> alike.add(new Alike(like.weed(), "Borrows from this one.", like.source())));
        season.pests().weedBook().ratings().stream()
                .filter(row -> row.weed().equalsIgnoreCase(weed) && row.asFor() != null)
                .forEach(row -> alike.add(new Alike(
                        String.valueOf(row.asFor()),
                        "A rating of " + row.product() + " was seen on it, and is widened here.",
                        row.source())));
        kin(weed).forEach(name -> alike.add(new Alike(name, "Of the same genus, with ratings of its own.", GUIDE)));
        boolean known = KnownWeeds.find(weed).isPresent();
        boolean borrows = likes.stream().anyMatch(like -> like.weed().equalsIgnoreCase(weed));
        if (!known && !borrows) {
            KnownWeeds.all()
                    .forEach(one -> alike.add(new Alike(
                            one.name(),
                            "Could stand in through the sheet like_weeds: half up at "
                                    + Numbers.plain(one.emergence().halfDegreeDays()) + " soil degree days (°C, base "
                                    + Numbers.plain(one.emergence().baseC()) + ").",
                            "the weed season's own numbers")));
        }
        return alike.stream().distinct().toList();
    }

    private static Set<String> kin(String weed) {
        List<Rating> all = EfficacyGuide.packed().all();
        Optional<String> genus = all.stream()
                .filter(row -> row.weed().equalsIgnoreCase(weed))
                .map(Likenesses::genus)
                .findFirst();
        return genus.filter(name -> !name.isEmpty())
                .map(name -> all.stream()
                        .filter(row -> genus(row).equals(name) && !row.weed().equalsIgnoreCase(weed))
                        .map(Rating::weed)
                        .collect(Collectors.toCollection(TreeSet::new)))
                .orElseGet(TreeSet::new);
    }

    private static String genus(Rating row) {
        return row.scientificName().strip().split("\\s", 2)[0].toLowerCase(Locale.ROOT);
    }
}
