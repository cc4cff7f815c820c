package plumbrow.app.desk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.servlet.Filter;
import jakarta.servlet.http.Cookie;
import java.net.URI;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.RequestBuilder;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.setup.DefaultMockMvcBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;
import org.springframework.web.util.HtmlUtils;
import plumbrow.app.desk.shown.Shown;

/** Asks the desk for pages as a browser without scripts does, with the token of its last form. */
final class Visitor {
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final MockMvc mvc;

    Visitor(OpenDesk desk) {
        DefaultMockMvcBuilder builder = MockMvcBuilders.webAppContextSetup((WebApplicationContext) desk.context());
        mvc = builder.addFilters(desk.context().getBean("springSecurityFilterChain", Filter.class))
                .build();
    }

    /** A page as it came. */
    record Page(MockHttpServletResponse response) {
        int status() {
            return response.getStatus();
        }

        String body() {
            String type = Objects.requireNonNullElse(response.getContentType(), "");
            boolean text = type.startsWith("text/") || type.startsWith("application/json");
            return new String(response.getContentAsByteArray(), text ? UTF_8 : ISO_8859_1);
        }

        /** What a person reads: words without tags, white space drawn together. */
        String text() {
            return HtmlUtils.htmlUnescape(body().replaceAll("(?s)<[^>]*>", "")).replaceAll("\\s+", " ");
        }

        /** What a form's hidden box holds. */
        String hidden(String name) {
            Matcher box = Pattern.compile("type=\"hidden\" name=\"" + name + "\" value=\"([^\"]*)\"")
                    .matcher(body());
            if (!box.find()) {
                throw new AssertionError("the page has no hidden box " + name);
            }
            return HtmlUtils.htmlUnescape(box.group(1));
        }

        String header(String name) {
            return Objects.requireNonNullElse(response.getHeader(name), "");
        }
    }

    MockMvc mvc() {
        return mvc;
    }

    Page get(String address) {
        return ask(MockMvcRequestBuilders.get(URI.create(address)));
    }

    /** Sends a form, as filled in on the weighing page of the first field. */
    Page post(String address, Map<String, String> typed) {
        return post("/fields/" + Shown.part(DeskSeason.HOME) + "/weighing", address, typed);
    }

    /** Sends a form as filled in on another page. */
    Page post(String page, String address, Map<String, String> typed) {
        Page form = get(page);
        Matcher token = TOKEN.matcher(form.body());
        if (!token.find()) {
            throw new AssertionError("the page has no form");
        }
        Cookie cookie = Objects.requireNonNull(form.response().getCookie("XSRF-TOKEN"));
        MockHttpServletRequestBuilder request =
                MockMvcRequestBuilders.post(URI.create(address)).cookie(cookie).param("_csrf", token.group(1));
        typed.forEach(request::param);
        return ask(request);
    }

    /** Sends a file, as chosen on the shelf. */
    Page upload(String name, byte[] content) {
        return upload(Map.of(name, content));
    }

    /** Sends files, as chosen together. */
    Page upload(Map<String, byte[]> files) {
        Page form = get("/shelf");
        Matcher token = TOKEN.matcher(form.body());
        if (!token.find()) {
            throw new AssertionError("the shelf has no form");
        }
        Cookie cookie = Objects.requireNonNull(form.response().getCookie("XSRF-TOKEN"));
        MockMultipartHttpServletRequestBuilder request = MockMvcRequestBuilders.multipart(URI.create("/shelf/papers"));
        files.forEach((name, content) -> request.file(new MockMultipartFile("papers", name, null, content)));
        request.cookie(cookie).param("_csrf", token.group(1));
        return ask(request);
    }

    /** The same as another page would send it. */
    Page uploadWithoutToken(String name, byte[] content) {
        return ask(file(name, content));
    }

    private static MockMultipartHttpServletRequestBuilder file(String name, byte[] content) {
        return MockMvcRequestBuilders.multipart(URI.create("/shelf/papers"))
                .file(new MockMultipartFile("papers", name, null, content));
    }

    private Page ask(RequestBuilder request) {
        try {
            return new Page(mvc.perform(request).andReturn().getResponse());
        } catch (Exception fault) {
            throw new AssertionError(fault);
        }
    }
}
