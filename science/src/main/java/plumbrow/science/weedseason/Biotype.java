package plumbrow.science.weedseason;

import java.util.Set;

/**
 * A part of a weed's plants that herbicides of some site-of-action groups do not kill.
 *
 * @param share of the species' seedlings [-]
 * @param resists site-of-action groups; empty for susceptible plants
 */
public record Biotype(Uncertain share, Set<Integer> resists) {
    public Biotype {
        if (share.column() < 0) {
            Limits.share("share of a biotype", share.fixed());
        }
        resists = Set.copyOf(resists);
    }

    /** With a share that is known. */
    public Biotype(double share, Set<Integer> resists) {
        this(Uncertain.known(share), resists);
    }

    /** All plants, none resistant. */
    public static Biotype susceptible() {
        return new Biotype(1, Set.of());
    }
}
