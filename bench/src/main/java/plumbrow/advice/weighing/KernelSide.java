package plumbrow.advice.weighing;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.season.Season;
import tools.jackson.databind.json.JsonMapper;

/** The kernel's side of the duel: one field, its draws, and all its programs run over them. */
final class KernelSide {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final FieldModel model;
    private final Kernel kernel;
    private final double[][] columns;
    private final double[][] yields;
    private final double[][] margins;

    KernelSide(Season season, int draws) {
        model = FieldModels.of(season, season.fields().get(0), Map.of());
        kernel = new Kernel(model);
        columns = Arrays.stream(FieldWeighing.drawn(model, new DrawSource(draws, WeighingOptions.DEFAULT.seed())))
                .map(Column::values)
                .toArray(double[][]::new);
        yields = new double[model.programs().size()][0];
        margins = new double[model.programs().size()][draws];
        run();
    }

    private void run() {
        kernel.run(model.programs(), columns, yields, margins);
    }

    /** So many weighings of the field on the clock. */
    Round round(int repeats) {
        long wall = System.nanoTime();
        long processor = THREADS.getCurrentThreadCpuTime();
        for (int i = 0; i < repeats; i++) {
            run();
        }
        return new Round(System.nanoTime() - wall, THREADS.getCurrentThreadCpuTime() - processor);
    }

    int inputs() {
        return columns.length;
    }

    int programs() {
        return margins.length;
    }

    /** Writes what the other side needs: the model as JSON, draws and margins as rows of little-endian doubles. */
    void export(Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.write(folder.resolve("model.json"), new JsonMapper().writeValueAsBytes(model));
        write(folder.resolve("columns.f8"), columns);
        write(folder.resolve("margins.f8"), margins);
    }

    private static void write(Path file, double[][] rows) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            for (double[] row : rows) {
                ByteBuffer bytes =
                        ByteBuffer.allocate(row.length * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
                bytes.asDoubleBuffer().put(row);
                out.write(bytes.array());
            }
        }
    }
}
