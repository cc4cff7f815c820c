package plumbrow.app.desk.door;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses whatever would change something and comes from a page of another origin, however it got hold of a token: cookies do
 * not tell one port of this machine from another, the origin does. Programs send neither of these headers.
 *
 * <p>Source: Fetch Standard, section "Origin header"; W3C Fetch Metadata Request Headers, section 2.
 */
final class SameOrigin extends OncePerRequestFilter {
    private static final Set<String> HARMLESS = Set.of("GET", "HEAD", "OPTIONS", "TRACE");

    /** What a browser says of a request of the page's own, and of one that the person typed. */
    private static final Set<String> OWN_SITES = Set.of("same-origin", "none");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (HARMLESS.contains(request.getMethod()) || own(request)) {
            chain.doFilter(request, response);
        } else {
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
        }
    }

    private static boolean own(HttpServletRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        return (site == null || OWN_SITES.contains(site)) && own(request.getHeader("Origin"), request);
    }

    /** Whether the origin is the very address that was asked: scheme, name and port. */
    private static boolean own(@Nullable String origin, HttpServletRequest request) {
        if (origin == null) {
            return true;
        }
        try {
            URI from = URI.create(origin);
            int port = from.getPort() < 0 ? "https".equals(from.getScheme()) ? 443 : 80 : from.getPort();
            return request.getScheme().equals(from.getScheme())
                    && request.getServerName().equals(from.getHost())
                    && request.getServerPort() == port;
        } catch (IllegalArgumentException nonsense) {
            return false;
        }
    }
}
