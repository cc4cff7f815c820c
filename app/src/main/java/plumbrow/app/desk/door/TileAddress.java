package plumbrow.app.desk.door;

import java.net.URI;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where pictures of the ground under the map come from, if whoever runs the desk has named an address.
 *
 * <p>The address is https with {z}, {x} and {y} in it; any other counts as none. Pages may then load pictures from that host
 * and from no other.
 */
public record TileAddress(Optional<String> address) {
    /** The setting that names the address. */
    public static final String SETTING = "PLUMBROW_TILES";

    public static TileAddress of(@Nullable String named) {
        boolean sound = named != null
                && named.matches("https://[A-Za-z0-9.-]+(:[0-9]+)?/[A-Za-z0-9._~/{}?=&-]*")
                && named.contains("{z}")
                && named.contains("{x}")
                && named.contains("{y}");
        return new TileAddress(sound ? Optional.ofNullable(named) : Optional.empty());
    }

    /** The one host that pictures may come from. */
    public Optional<String> host() {
        return address.map(
                named -> "https://" + URI.create(named.replaceAll("[{}]", "")).getAuthority());
    }
}
