package plumbrow.app.desk.api;

import java.nio.charset.StandardCharsets;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import plumbrow.app.json.Json;

/** The description of the interface for programs. */
@RestController
public class OpenApiPage {
    private final RequestMappingHandlerMapping mappings;

    public OpenApiPage(@Qualifier("requestMappingHandlerMapping") RequestMappingHandlerMapping mappings) {
        this.mappings = mappings;
    }

    @GetMapping("/api/openapi.json")
    ResponseEntity<byte[]> description() {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_JSON)
                .body(Json.plain(OpenApi.document(mappings)).getBytes(StandardCharsets.UTF_8));
    }
}
