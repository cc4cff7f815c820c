package plumbrow.app.desk.door;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Locale;
import java.util.Set;
import org.apache.coyote.http11.Http11Nio2Protocol;
import org.springframework.boot.tomcat.TomcatConnectorCustomizer;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.firewall.RequestRejectedHandler;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * Who may come in. The desk has no login, so nothing here asks who somebody is: it listens to this machine only. What it must
 * keep out are web pages of others that run in the same browser: they can neither post (token, and {@link SameOrigin}), nor
 * frame it, nor reach it under a name of their own. How much may come in at once is for {@link Load} to say.
 */
@Configuration(proxyBeanMethods = false)
public class Doors {
    /** Threads of the server. */
    public static final int THREADS = Load.THREADS;

    private static final int PATIENCE_S = 20;

    /** How long the server waits for the next piece of a request, and for a small body whole. */
    public static Duration patience() {
        return Duration.ofSeconds(Integer.getInteger("plumbrow.patience", PATIENCE_S));
    }

    private static final Set<String> OWN_NAMES = Set.of("127.0.0.1", "localhost", "[::1]", "::1");
    /** None of them is a type that a browser sends to another site without asking. */
    private static final Set<String> PROGRAM_TYPES = Set.of(
            "application/json", "application/geo+json", "application/vnd.google-earth.kml+xml", "application/zip");

    private static final String CONTENT_POLICY =
            "default-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'; object-src 'none'";

    @Bean
    SecurityFilterChain chain(HttpSecurity http, TileAddress tiles) throws Exception {
        CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
        tokens.setCookieCustomizer(cookie -> cookie.sameSite("Strict").httpOnly(true));
        return http.securityContext(context -> context.disable())
                .anonymous(nobody -> nobody.disable())
                .sessionManagement(session -> session.disable())
                .servletApi(names -> names.disable())
                .requestCache(cache -> cache.disable())
                .logout(logout -> logout.disable())
                .addFilterBefore(new SameOrigin(), CsrfFilter.class)
                .csrf(csrf -> csrf.csrfTokenRepository(tokens).ignoringRequestMatchers(Doors::fromAProgram))
                .exceptionHandling(trouble -> trouble.accessDeniedHandler(
                        (request, response, denied) -> response.sendError(HttpServletResponse.SC_FORBIDDEN)))
                .headers(headers -> headers.contentSecurityPolicy(policy -> policy.policyDirectives(policy(tiles)))
                        .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                        .httpStrictTransportSecurity(transport -> transport.disable())
                        .crossOriginOpenerPolicy(opener -> opener.policy(
                                org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter
                                        .CrossOriginOpenerPolicy.SAME_ORIGIN))
                        .crossOriginResourcePolicy(resource -> resource.policy(
                                org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter
                                        .CrossOriginResourcePolicy.SAME_ORIGIN)))
                .build();
    }

    /**
     * A program may post JSON or a map file without a token: a page of another site can't, since a browser asks first whether
     * it may send these types, and the desk never says yes.
     */
    private static boolean fromAProgram(HttpServletRequest request) {
        String type = request.getContentType();
        return request.getRequestURI().startsWith("/api/")
                && type != null
                && PROGRAM_TYPES.stream().anyMatch(type.toLowerCase(Locale.ROOT)::startsWith)
                && request.getHeader("Origin") == null;
    }

    /** Pictures of the ground may come from the one host that is named for them, where one is. */
    static String policy(TileAddress tiles) {
        return CONTENT_POLICY
                + tiles.host().map(host -> "; img-src 'self' " + host).orElse("");
    }

    /** Refuses every name but this machine's own; lets through the signs that names of fields may hold. */
    @Bean
    StrictHttpFirewall firewall() {
        StrictHttpFirewall wall = new StrictHttpFirewall();
        wall.setAllowedHostnames(OWN_NAMES::contains);
        wall.setAllowUrlEncodedSlash(true);
        wall.setAllowUrlEncodedDoubleSlash(true);
        wall.setAllowUrlEncodedPercent(true);
        wall.setAllowSemicolon(true);
        wall.setAllowBackSlash(true);
        return wall;
    }

    @Bean
    RequestRejectedHandler rejected() {
        return (request, response, refused) -> refuse(response);
    }

    /** A slash inside a field's name stays inside it, whichever way it leans. */
    @Bean
    TomcatConnectorCustomizer slashesInNames() {
        return connector -> {
            connector.setEncodedSolidusHandling("passthrough");
            connector.setEncodedReverseSolidusHandling("passthrough");
        };
    }

    /** Reads without waking a poller for each page: less work for the machine under many questions at once. */
    @Bean
    WebServerFactoryCustomizer<TomcatServletWebServerFactory> quietReading(TileAddress tiles) {
        return server -> {
            server.setProtocol(Http11Nio2Protocol.class.getName());
            server.addEngineValves(new OnEveryAnswer(policy(tiles)), new Deadline(patience()));
        };
    }

    /** First of all filters: what is too much is refused before anything is done for it. */
    @Bean
    FilterRegistrationBean<Load> load() {
        FilterRegistrationBean<Load> registration = new FilterRegistrationBean<>(new Load());
        registration.setOrder(Ordered.HIGHEST_PRECEDENCE);
        return registration;
    }

    /** There are no users; this keeps the framework from inventing one with a password. */
    @Bean
    UserDetailsService nobody() {
        return name -> {
            throw new UsernameNotFoundException(name);
        };
    }

    private static void refuse(HttpServletResponse response) throws IOException {
        response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        response.setContentType("text/plain;charset=UTF-8");
        response.getOutputStream()
                .write("The desk answers on this machine only, at http://127.0.0.1 or http://localhost.\n"
                        .getBytes(UTF_8));
    }
}
