package plumbrow.advice.weighing;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** NumPy's side of the duel: a Python process that runs one timed round whenever it is asked to. */
public final class NumpySide implements AutoCloseable {
    private final Process process;
    private final BufferedReader answers;
    private final BufferedWriter questions;
    private final double difference;
    private final int block;
    private final double wholeColumns;
    private final String version;

    /** Starts it on what the other side wrote to a folder. */
    public NumpySide(String python, Path script, Path folder, int draws, int repeats) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(
                        python, script.toString(), folder.toString(), String.valueOf(draws), String.valueOf(repeats))
                .redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().put("OMP_NUM_THREADS", "1");
        builder.environment().put("OPENBLAS_NUM_THREADS", "1");
        builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
        process = builder.start();
        answers = process.inputReader();
        questions = process.outputWriter();
        String[] hello = answer();
        difference = Double.parseDouble(hello[0]);
        block = Integer.parseInt(hello[1]);
        wholeColumns = Double.parseDouble(hello[2]);
        version = hello[3];
    }

    /** Largest difference between the answers of the two sides, margins [$/ac] or losses [%]. */
    public double difference() {
        return difference;
    }

    /** Draws that it works on at a time, chosen by itself as the quickest. */
    public int block() {
        return block;
    }

    /** How many times as long it takes with whole columns at a time. */
    public double wholeColumns() {
        return wholeColumns;
    }

    public String version() {
        return version;
    }

    public Round round() {
        try {
            questions.write("round\n");
            questions.flush();
            String[] times = answer();
            return new Round(Long.parseLong(times[0]), Long.parseLong(times[1]));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private String[] answer() throws IOException {
        String line = answers.readLine();
        if (line == null) {
            throw new IOException("the NumPy side stopped; its own message stands above");
        }
        return line.split(" ", -1);
    }

    @Override
    public void close() throws IOException {
        questions.close();
        process.destroy();
    }
}
