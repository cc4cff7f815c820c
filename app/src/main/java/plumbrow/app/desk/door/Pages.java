package plumbrow.app.desk.door;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.validation.BindingResult;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.ViewResolver;

/** Finds the page of a name among the templates compiled into the class path. */
@Configuration(proxyBeanMethods = false)
public class Pages {
    private static final String HTML = "text/html;charset=UTF-8";

    @Bean
    TemplateEngine templates() {
        return TemplateEngine.createPrecompiled(ContentType.Html);
    }

    @Bean
    ViewResolver pageFinder(TemplateEngine templates) {
        return (name, locale) -> templates.hasTemplate(name + ".jte") ? new Page(templates, name + ".jte") : null;
    }

    private record Page(TemplateEngine templates, String name) implements View {
        @Override
        public String getContentType() {
            return HTML;
        }

        @Override
        public void render(
                @Nullable Map<String, ? extends @Nullable Object> model,
                HttpServletRequest request,
                HttpServletResponse response)
                throws IOException {
            Map<String, Object> values = new HashMap<>();
            if (model != null) {
                model.forEach((key, value) -> {
                    if (value != null && !(value instanceof BindingResult)) {
                        values.put(key, value);
                    }
                });
            }
            if (request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token) {
                values.put("token", token);
            }
            Utf8ByteOutput output = new Utf8ByteOutput();
            templates.render(name, values, output);
            response.setContentType(HTML);
            response.setContentLength(output.getContentLength());
            output.writeTo(response.getOutputStream());
        }
    }
}
