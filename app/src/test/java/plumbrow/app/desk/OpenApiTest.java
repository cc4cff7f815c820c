package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The description of the interface says what the handlers do: no more, no less, and each in words. */
class OpenApiTest {
    private static final Pattern VARIABLE = Pattern.compile("\\{([^}:]+)(?::[^}]*)?}");

    @Test
    void every_handler_is_described_and_everything_described_has_its_handler() {
        try (OpenDesk desk = OpenDesk.over(DeskSeason.of(2027))) {
            Visitor visitor = new Visitor(desk);
            Visitor.Page page = visitor.get("/api/openapi.json");
            assertThat(page.status()).isEqualTo(200);
            JsonNode document = JsonMapper.builder().build().readTree(page.body());
            assertThat(document.get("openapi").asString()).startsWith("3.1");

            Set<String> handled = new TreeSet<>();
            RequestMappingHandlerMapping mappings =
                    desk.context().getBean("requestMappingHandlerMapping", RequestMappingHandlerMapping.class);
            for (RequestMappingInfo info : mappings.getHandlerMethods().keySet()) {
                info.getPatternValues().stream()
                        .filter(path -> path.startsWith("/api/"))
                        .forEach(path -> info.getMethodsCondition()
                                .getMethods()
                                .forEach(method -> handled.add(
                                        method + " " + VARIABLE.matcher(path).replaceAll("{$1}"))));
            }
            Set<String> described = new TreeSet<>();
            Set<String> ids = new HashSet<>();
            List<String> wordless = new ArrayList<>();
            document.get("paths")
                    .properties()
                    .forEach(path -> path.getValue().properties().forEach(method -> {
                        JsonNode operation = method.getValue();
                        String key = method.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey();
                        described.add(key);
                        ids.add(operation.get("operationId").asString());
                        if (operation.get("summary").asString().isBlank()) {
                            wordless.add(key);
                        }
                        Set<String> declared = new TreeSet<>();
                        if (operation.has("parameters")) {
                            operation.get("parameters").forEach(parameter -> {
                                if (parameter.get("in").asString().equals("path")) {
                                    assertThat(parameter.get("required").asBoolean())
                                            .isTrue();
                                    declared.add(parameter.get("name").asString());
                                }
                            });
                        }
                        Set<String> asked = new TreeSet<>();
                        Matcher variables = VARIABLE.matcher(path.getKey());
                        while (variables.find()) {
                            asked.add(variables.group(1));
                        }
                        assertThat(declared).as(key).isEqualTo(asked);
                        assertThat(operation.get("responses").has("2XX"))
                                .as(key)
                                .isTrue();
                    }));
            assertThat(described).isEqualTo(handled);
            assertThat(ids).hasSameSizeAs(described);
            assertThat(wordless)
                    .as("operations without a sentence in OpenApiWords")
                    .isEmpty();
            assertThat(page.body()).contains("\"default\"", "\"application/geo+json\"");
        }
    }

    /** What is described as needed is asked for, and what is not can be left out. */
    @Test
    void what_can_be_asked_without_more_answers() {
        try (OpenDesk desk = OpenDesk.over(DeskSeason.of(2027))) {
            Visitor visitor = new Visitor(desk);
            JsonNode document = JsonMapper.builder()
                    .build()
                    .readTree(visitor.get("/api/openapi.json").body());
            document.get("paths").properties().forEach(path -> {
                JsonNode get = path.getValue().get("get");
                if (get != null && !path.getKey().contains("{") && !needs(get)) {
                    assertThat(visitor.get(path.getKey()).status())
                            .as(path.getKey())
                            .isIn(200, 404, 422);
                }
            });
        }
    }

    private static boolean needs(JsonNode operation) {
        boolean needs = false;
        if (operation.has("parameters")) {
            for (JsonNode parameter : operation.get("parameters")) {
                needs |= parameter.get("required").asBoolean();
            }
        }
        return needs;
    }
}
