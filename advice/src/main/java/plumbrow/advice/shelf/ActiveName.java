package plumbrow.advice.shelf;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.science.reference.Substance;
import plumbrow.science.reference.Substances;

/**
 * The name of an active ingredient as it is compared: capitals do not count, and neither does the salt in which a label
 * prints an acid, since limits and groups are of the acid. An isomer (S-metolachlor) is another ingredient than the mixture.
 *
 * <p>Salts as labels print them, from memory.
 */
public final class ActiveName {
    private static final Pattern SALT = Pattern.compile(
            "(?i)[\\s,(-]*\\b(?:in the form of )?(?:its |as |the )*"
                    + "(?:mono|di|tri|bis)?-?(?:potassium|sodium|ammonium|isopropylammonium|isopropylamine|ipa|dimethylammonium|"
                    + "dimethylamine|dma|diglycolamine|diglycolammonium|dga|bapma|n,n-bis-\\(3-aminopropyl\\)methylamine|choline|"
                    + "ethanolamine|monoethanolamine|mea|triisopropanolamine|tipa|trimesium|olamine|dichloride)\\b\\)?(?:[\\s-]*salts?)?\\)?\\s*$");

    private ActiveName() {}

    /** The one spelling by which an ingredient is compared; as written, in small letters, where nothing is kept of it. */
    public static String plain(String written) {
        return known(written).map(Substance::name).orElseGet(() -> bare(written).toLowerCase(Locale.ROOT));
    }

    /** What the reference data keep of an ingredient, by its own name or by that of the acid it is a salt of. */
    public static Optional<Substance> known(String written) {
        String acid = bare(written);
        return Substances.find(written)
                .or(() -> Substances.find(acid))
                .or(() -> Substances.all().stream()
                        .filter(substance -> bare(substance.name()).equalsIgnoreCase(acid))
                        .findFirst());
    }

    public static boolean same(String one, String other) {
        return one.equals(other) || plain(one).equals(plain(other));
    }

    private static String bare(String written) {
        String bare = SALT.matcher(written.strip()).replaceFirst("").strip();
        return bare.isEmpty() ? written.strip() : bare;
    }
}
