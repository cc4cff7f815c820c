package plumbrow.app.desk.api;

import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ValueConstants;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.condition.PathPatternsRequestCondition;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * The description of everything under {@code /api} by OpenAPI 3.1, made from the handlers themselves, so that it can't say what they
 * do not do: addresses, methods, parameters with their kinds and defaults, bodies. What each answers stands in {@link OpenApiWords}.
 */
final class OpenApi {
    private static final Pattern VARIABLE = Pattern.compile("\\{([^}:]+)(?::[^}]*)?}");

    private OpenApi() {}

    /** One operation: "GET /api/season/{table}" and the handler that does it. */
    record Operation(String method, String path, HandlerMethod handler, RequestMappingInfo info) {
        String key() {
            return method + " " + path;
        }
    }

    /** All operations under {@code /api}, by path and method. */
    static List<Operation> operations(RequestMappingHandlerMapping mappings) {
        Map<String, Operation> sorted = new TreeMap<>();
        mappings.getHandlerMethods().forEach((info, handler) -> {
            PathPatternsRequestCondition paths = info.getPathPatternsCondition();
            if (paths == null) {
                return;
            }
            for (String pattern : paths.getPatternValues()) {
                if (pattern.startsWith("/api/")) {
                    for (RequestMethod method : info.getMethodsCondition().getMethods()) {
                        String path = VARIABLE.matcher(pattern).replaceAll("{$1}");
                        Operation one = new Operation(method.name(), path, handler, info);
                        sorted.put(path + " " + method, one);
                    }
                }
            }
        });
        return List.copyOf(sorted.values());
    }

    /** The whole description as plain maps and lists. */
    static Map<String, Object> document(RequestMappingHandlerMapping mappings) {
        Map<String, Object> paths = new LinkedHashMap<>();
        for (Operation one : operations(mappings)) {
            @SuppressWarnings("unchecked")
            Map<String, Object> path =
                    (Map<String, Object>) paths.computeIfAbsent(one.path(), first -> new LinkedHashMap<>());
            path.put(one.method().toLowerCase(Locale.ROOT), operation(one));
        }
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("openapi", "3.1.0");
        document.put(
                "info",
                Map.of(
                        "title", "Plumbrow",
                        "version", "0.1",
                        "description",
                                "The desk of this machine for other programs. Numbers carry their unit in their name; what is unknown is"
                                        + " null. A refusal says in \"error\" where, what was found and what is expected."));
        document.put("servers", List.of(Map.of("url", "/")));
        document.put("paths", paths);
        document.put("components", Map.of("schemas", Map.of("Refused", refused())));
        return document;
    }

    private static Map<String, Object> operation(Operation one) {
        Map<String, Object> operation = new LinkedHashMap<>();
        operation.put("operationId", id(one));
        operation.put("summary", OpenApiWords.of(one.key()));
        List<Map<String, Object>> parameters = new ArrayList<>();
        Matcher variables = VARIABLE.matcher(one.path());
        Map<String, Parameter> byName = new LinkedHashMap<>();
        for (Parameter parameter : one.handler().getMethod().getParameters()) {
            byName.put(parameter.getName(), parameter);
        }
        while (variables.find()) {
            parameters.add(
                    parameter(variables.group(1), "path", true, type(pathVariable(byName, variables.group(1))), ""));
        }
        boolean body = false;
        for (Parameter parameter : byName.values()) {
            RequestParam query = parameter.getAnnotation(RequestParam.class);
            body |= parameter.isAnnotationPresent(RequestBody.class);
            if (query == null) {
                continue;
            }
            if (Map.class.isAssignableFrom(parameter.getType())) {
                Map<String, Object> further = parameter(parameter.getName(), "query", false, "object", "");
                further.put("description", "Further values by their name.");
                further.put("style", "form");
                further.put("explode", true);
                parameters.add(further);
                continue;
            }
            String name = query.value().isEmpty() ? parameter.getName() : query.value();
            boolean needed = query.required() && query.defaultValue().equals(ValueConstants.DEFAULT_NONE);
            String fallback = query.defaultValue().equals(ValueConstants.DEFAULT_NONE) ? "" : query.defaultValue();
            parameters.add(parameter(name, "query", needed, type(parameter), fallback));
        }
        if (!parameters.isEmpty()) {
            operation.put("parameters", parameters);
        }
        if (body || one.method().equals("POST")) {
            operation.put("requestBody", body(one));
        }
        operation.put("responses", responses(one));
        return operation;
    }

    private static Parameter pathVariable(Map<String, Parameter> byName, String variable) {
        for (Parameter parameter : byName.values()) {
            PathVariable path = parameter.getAnnotation(PathVariable.class);
            if (path != null
                    && (path.value().equals(variable) || parameter.getName().equals(variable))) {
                return parameter;
            }
        }
        throw new IllegalStateException("no parameter for {" + variable + "}");
    }

    private static Map<String, Object> parameter(
            String name, String in, boolean required, String type, String fallback) {
        Map<String, Object> parameter = new LinkedHashMap<>();
        parameter.put("name", name);
        parameter.put("in", in);
        parameter.put("required", required);
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", type);
        if (type.equals("array")) {
            schema.put("items", Map.of("type", "string"));
        }
        if (!fallback.isEmpty()) {
            schema.put("default", fallback);
        }
        parameter.put("schema", schema);
        return parameter;
    }

    private static String type(Parameter parameter) {
        Class<?> type = parameter.getType();
        if (type == int.class || type == Integer.class || type == long.class || type == Long.class) {
            return "integer";
        }
        if (type == double.class || type == Double.class) {
            return "number";
        }
        if (type == boolean.class || type == Boolean.class) {
            return "boolean";
        }
        return List.class.isAssignableFrom(type) ? "array" : "string";
    }

    private static Map<String, Object> body(Operation one) {
        boolean json = one.info().getConsumesCondition().getConsumableMediaTypes().stream()
                        .anyMatch(type -> type.equals(MediaType.APPLICATION_JSON))
                || one.info().getConsumesCondition().isEmpty();
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("required", true);
        body.put(
                "content",
                json
                        ? Map.of(
                                "application/json",
                                Map.of(
                                        "schema",
                                        Map.of("type", "object", "additionalProperties", Map.of("type", "string"))))
                        : Map.of("application/octet-stream", Map.of()));
        return body;
    }

    private static Map<String, Object> responses(Operation one) {
        Map<String, Object> responses = new LinkedHashMap<>();
        String type = one.path().endsWith(".geojson") ? "application/geo+json" : "application/json";
        responses.put("2XX", Map.of("description", OpenApiWords.of(one.key()), "content", Map.of(type, Map.of())));
        responses.put(
                "4XX",
                Map.of(
                        "description",
                        "Refused, and nothing is changed",
                        "content",
                        Map.of("application/json", Map.of("schema", Map.of("$ref", "#/components/schemas/Refused")))));
        return responses;
    }

    private static Map<String, Object> refused() {
        Map<String, Object> refused = new LinkedHashMap<>();
        refused.put("type", "object");
        refused.put("required", List.of("error"));
        refused.put("properties", Map.of("error", Map.of("type", "string")));
        refused.put("additionalProperties", true);
        return refused;
    }

    /** "get.season.table.row": the method and the words of the address. */
    private static String id(Operation one) {
        return one.method().toLowerCase(Locale.ROOT)
                + one.path().substring("/api".length()).replaceAll("[{}]", "").replaceAll("[^A-Za-z0-9]+", ".");
    }
}
