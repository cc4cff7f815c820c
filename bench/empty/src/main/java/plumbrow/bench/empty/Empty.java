package plumbrow.bench.empty;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The application, all of it. */
@SpringBootApplication
@RestController
public class Empty {
    public static void main(String[] arguments) {
        SpringApplication.run(Empty.class, arguments);
    }

    @GetMapping(path = "/", produces = "text/html")
    String page() {
        return "<!doctype html><title>Empty</title><p>Nothing here.</p>";
    }
}
