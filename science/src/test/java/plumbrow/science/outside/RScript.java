package plumbrow.science.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/**
 * One run of R over many data sets: the sets go in as R code, one line of numbers for each comes back.
 *
 * R keeps 15 digits, so both sides reckon with the same numbers.
 */
final class RScript {
    private static final String COMMAND = System.getProperty("plumbrow.rscript", "Rscript");

    private final List<String> sets = new ArrayList<>();

    /** Adds a data set: names and values, a number or a vector or a matrix by rows. */
    void add(Object... namesAndValues) {
        StringJoiner set = new StringJoiner(", ", "list(", ")");
        for (int i = 0; i < namesAndValues.length; i += 2) {
            set.add(namesAndValues[i] + " = " + code(namesAndValues[i + 1]));
        }
        sets.add(set.toString());
    }

    /**
     * Runs R and hands back its numbers, one row for each data set.
     *
     * @param body R code of a function of the data set {@code s} that ends in a vector of numbers
     * @param libraries the R packages it needs
     */
    List<double[]> answers(String body, String... libraries) {
        StringBuilder code = new StringBuilder("options(warn = -1, digits = 15)\n");
        for (String library : libraries) {
            code.append("suppressMessages(library(").append(library).append("))\n");
        }
        code.append("answer <- function(s) {\n").append(body).append("\n}\n");
        sets.forEach(set -> code.append("cat(format(answer(").append(set).append("), digits = 15), \"\\n\")\n"));
        List<double[]> answers = new ArrayList<>();
        for (String line : run(code.toString()).strip().split("\n", -1)) {
            String[] cells = line.strip().split("\\s+", -1);
            double[] numbers = new double[cells.length];
            for (int i = 0; i < cells.length; i++) {
                numbers[i] = Double.parseDouble(cells[i]);
            }
            answers.add(numbers);
        }
        assertThat(answers).hasSameSizeAs(sets);
        return answers;
    }

    private static String run(String code) {
        try {
            Path script = Files.createTempFile("plumbrow", ".R");
            try {
                Files.writeString(script, code);
                Process process = new ProcessBuilder(COMMAND, "--vanilla", script.toString())
                        .redirectErrorStream(true)
                        .start();
                process.getOutputStream().close();
                String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
                assertThat(process.waitFor()).as("R says: %s", output).isZero();
                return output;
            } finally {
                Files.delete(script);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(COMMAND + " could not be run; ./check --with-r installs it", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while R ran", e);
        }
    }

    private static String code(Object value) {
        if (value instanceof double[] vector) {
            StringJoiner cells = new StringJoiner(", ", "c(", ")");
            for (double cell : vector) {
                cells.add(Double.toString(cell));
            }
            return cells.toString();
        }
        if (value instanceof double[][] rows) {
            StringJoiner all = new StringJoiner(", ", "rbind(", ")");
            for (double[] row : rows) {
                all.add(code(row));
            }
            return all.toString();
        }
        return String.format(Locale.ROOT, "%s", value);
    }
}
