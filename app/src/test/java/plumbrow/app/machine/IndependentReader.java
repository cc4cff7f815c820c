package plumbrow.app.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads task data with a library outside this project: the npm package isoxml (Apache licence), run by node. ./check brings it;
 * where it is not there, tests that need it are skipped and say so.
 */
final class IndependentReader {
    private IndependentReader() {}

    /** What it read, one answer a file: see read-task-data.js. */
    static List<JsonNode> read(Path work, List<Path> zips) throws IOException, InterruptedException {
        Path library = library();
        assumeTrue(
                Files.isDirectory(library.resolve("node_modules/isoxml")),
                "the independent reader of task data is not installed in " + library + "; ./check brings it");
        Path script = work.resolve("read-task-data.js");
        try (InputStream in =
                Objects.requireNonNull(IndependentReader.class.getResourceAsStream("read-task-data.js"))) {
            Files.write(script, in.readAllBytes());
        }
        List<String> command = new ArrayList<>(List.of("node", script.toString(), library.toString()));
        zips.forEach(zip -> command.add(zip.toString()));
        Path answer = work.resolve("answer.json");
        Path trouble = work.resolve("trouble.txt");
        Process node = new ProcessBuilder(command)
                .redirectOutput(answer.toFile())
                .redirectError(trouble.toFile())
                .start();
        int code = node.waitFor();
        assertThat(code).as(Files.readString(trouble)).isZero();
        List<JsonNode> found = new ArrayList<>();
        JsonMapper.builder()
                .build()
                .readTree(Files.readString(answer, StandardCharsets.UTF_8))
                .forEach(found::add);
        return found;
    }

    private static Path library() {
        String named = System.getProperty("plumbrow.isoxml");
        return Path.of(named == null ? "../target/isoxml" : named)
                .toAbsolutePath()
                .normalize();
    }
}
