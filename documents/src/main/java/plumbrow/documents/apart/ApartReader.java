package plumbrow.documents.apart;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.machine.log.MachineWork;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperReader;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.reading.PaperSort;
import plumbrow.documents.sheet.SafetySheet;

/**
 * Reads files from outside in a process of its own, with a limit of memory and of time: opening them, finding their values
 * and drawing their pages.
 *
 * The process is started for the first file and kept for the next ones; one that took too long or too much memory is ended
 * and started anew. For one caller at a time; open two to read on two processors.
 */
public final class ApartReader implements AutoCloseable {
    private static final int MEMORY_MB = 256;
    /** Pages that may be made out by OCR, each with a time of its own. */
    private static final int MOST_PAGES = 200;

    private static final int LARGEST_PICTURE = 64 << 20;

    private final Duration time;
    private final int memoryMb;
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "reading deadline");
        thread.setDaemon(true);
        return thread;
    });
    private @Nullable Child child;

    /** The other process and its two ends. */
    private record Child(Process process, DataOutputStream to, DataInputStream from) {}

    public ApartReader() {
        this(PaperLimits.USUAL.time(), MEMORY_MB);
    }

    ApartReader(Duration time, int memoryMb) {
        this.time = time;
        this.memoryMb = memoryMb;
    }

    /**
     * Reads a file as a safety data sheet.
     *
     * @throws PaperTrouble if the file can't be read as paper, or not within the limits; its message is one sentence
     */
    public SafetySheet sheet(Path file) {
        if (values(file, PaperSort.SHEET) instanceof PaperValues.Sheet sheet) {
            return sheet.sheet();
        }
        throw new IllegalStateException("asked for a sheet, got a label");
    }

    /**
     * Reads a file and finds its values, all in the other process.
     *
     * @param sort what to read it as; null for what it looks like
     * @throws PaperTrouble as above
     */
    public PaperValues values(Path file, @Nullable PaperSort sort) {
        return asked(
                file,
                "read",
                to -> {
                    to.writeByte(ReadingChild.VALUES);
                    RecordWire.text(file.toAbsolutePath().toString(), to);
                    RecordWire.text(sort == null ? "" : sort.name(), to);
                },
                (kind, from) -> {
                    expect(kind, ReadingChild.VALUES);
                    return RecordWire.read(PaperValues.class, from);
                });
    }

    /**
     * Draws a page, in the other process.
     *
     * @param page from 1
     * @param longestPx longest side of the picture [px]
     * @throws PaperTrouble if there is no such page, or it can't be drawn within the limits
     */
    public PagePicture.Drawn picture(Path file, int page, int longestPx) {
        return asked(
                file,
                "draw",
                to -> {
                    to.writeByte(ReadingChild.PICTURE);
                    RecordWire.text(file.toAbsolutePath().toString(), to);
                    to.writeInt(page);
                    to.writeInt(longestPx);
                },
                (kind, from) -> {
                    expect(kind, ReadingChild.PICTURE);
                    double width = from.readDouble();
                    double height = from.readDouble();
                    return new PagePicture.Drawn(RecordWire.bytes(from, LARGEST_PICTURE), width, height);
                });
    }

    /**
     * Reads what a machine wrote down: task data in a zip or folder, or a table of points where the name ends in .csv.
     *
     * @param columns headings of the table by key, for those of another name
     * @throws PaperTrouble with one sentence, if it can't be read, or not within the limits
     */
    public MachineWork.Log machineWork(Path file, Map<String, String> columns) {
        if (!Files.exists(file)) {
            throw new PaperTrouble("There is no file " + file + ".");
        }
        return asked(
                file,
                "read",
                "the task data or the table of one machine",
                to -> {
                    to.writeByte(ReadingChild.WORK);
                    RecordWire.text(file.toAbsolutePath().toString(), to);
                    RecordWire.write(MachineColumns.of(columns), MachineColumns.class, to);
                },
                (kind, from) -> {
                    expect(kind, ReadingChild.WORK);
                    return RecordWire.read(MachineWork.Log.class, from);
                });
    }

    private interface Question {
        void put(DataOutputStream to) throws IOException;
    }

    private interface Answer<T> {
        T take(byte kind, DataInputStream from) throws IOException;
    }

    private <T> T asked(Path file, String doing, Question question, Answer<T> answer) {
        PaperReader.check(file, PaperLimits.USUAL);
        return asked(file, doing, "a sheet or label", question, answer);
    }

    private synchronized <T> T asked(Path file, String doing, String expected, Question question, Answer<T> answer) {
        String name = String.valueOf(file.getFileName());
        Child reader = running();
        AtomicBoolean late = new AtomicBoolean();
        ScheduledFuture<?> deadline = deadline(reader, late);
        try {
            question.put(reader.to);
            reader.to.flush();
            byte kind = reader.from.readByte();
            for (int page = 0; kind == ReadingChild.PAGE && page < MOST_PAGES; page++) {
                deadline.cancel(false);
                deadline = deadline(reader, late);
                kind = reader.from.readByte();
            }
            if (kind == ReadingChild.SENTENCE) {
                throw new PaperTrouble(RecordWire.text(reader.from));
            }
            return answer.take(kind, reader.from);
        } catch (IOException ended) {
            end();
            throw new PaperTrouble(
                    late.get()
                            ? name + " took longer than " + time.toSeconds() + " seconds to " + doing
                                    + " and was put aside; expected " + expected + " that opens at once."
                            : name + " needs more than " + memoryMb + " MB of memory to " + doing
                                    + " and was put aside; expected " + expected + " of ordinary size.",
                    ended);
        } finally {
            deadline.cancel(false);
        }
    }

    private ScheduledFuture<?> deadline(Child reader, AtomicBoolean late) {
        return clock.schedule(
                () -> {
                    late.set(true);
                    kill(reader.process);
                },
                time.toMillis(),
                TimeUnit.MILLISECONDS);
    }

    /** With the process that makes out a picture for it. */
    private static void kill(Process process) {
        List<ProcessHandle> own = process.descendants().toList();
        process.destroyForcibly();
        own.forEach(ProcessHandle::destroyForcibly);
    }

    private static void expect(byte kind, byte expected) throws IOException {
        if (kind != expected) {
            throw new IOException("an answer of kind " + kind);
        }
    }

    private Child running() {
        Child running = child;
        if (running == null || !running.process.isAlive()) {
            running = start();
            child = running;
        }
        return running;
    }

    private Child start() {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = List.of(
                java,
                "-Xmx" + memoryMb + "m",
                "-XX:+ExitOnOutOfMemoryError",
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                ReadingChild.class.getName());
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return new Child(
                    process,
                    new DataOutputStream(new BufferedOutputStream(process.getOutputStream())),
                    new DataInputStream(new BufferedInputStream(process.getInputStream())));
        } catch (IOException refused) {
            throw new PaperTrouble(
                    "Files can't be read now: the machine did not let the reading process start.", refused);
        }
    }

    private void end() {
        Child running = child;
        child = null;
        if (running != null) {
            kill(running.process);
        }
    }

    @Override
    public synchronized void close() {
        end();
        clock.shutdownNow();
    }
}
