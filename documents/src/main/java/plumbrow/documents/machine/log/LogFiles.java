package plumbrow.documents.machine.log;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * The files of a set of task data beside its TASKDATA.XML, out of a zip or a folder. Nothing is unpacked onto the disk, names that lead
 * elsewhere lead nowhere, links are not followed, and there are limits to how many and how large they are.
 */
final class LogFiles {
    static final int MOST_BYTES = 64 << 20;
    private static final int MOST_FILES = 2000;
    private static final String MAIN = "TASKDATA.XML";

    /** By name in capital letters. */
    private final Map<String, byte[]> files;

    private LogFiles(Map<String, byte[]> files) {
        this.files = files;
    }

    static LogFiles of(Path path) {
        String name = String.valueOf(path.getFileName());
        try {
            if (Files.isDirectory(path)) {
                return folder(path, name);
            }
            if (Files.size(path) > MOST_BYTES) {
                throw new LogTrouble(name + " is larger than 64 MB; expected the task data of a season at most.");
            }
            return zip(name, Files.readAllBytes(path));
        } catch (IOException | IllegalArgumentException broken) {
            throw new LogTrouble(name + " is no sound zip file or folder; expected task data with its TASKDATA.XML.");
        }
    }

    boolean has(String name) {
        return files.containsKey(name.toUpperCase(Locale.ROOT));
    }

    byte[] file(String name) {
        byte[] content = files.get(name.toUpperCase(Locale.ROOT));
        if (content == null) {
            throw new LogTrouble("The task data lack their file " + shown(name) + "; expected it beside " + MAIN + ".");
        }
        return content;
    }

    byte[] main() {
        return file(MAIN);
    }

    private static LogFiles folder(Path path, String name) throws IOException {
        Path inside = path.resolve("TASKDATA");
        Path holds = Files.isDirectory(inside, LinkOption.NOFOLLOW_LINKS) ? inside : path;
        Map<String, byte[]> files = new HashMap<>();
        long bytes = 0;
        try (Stream<Path> all = Files.list(holds)) {
            List<Path> some = all.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .filter(file -> belongs(String.valueOf(file.getFileName())))
                    .limit(MOST_FILES + 1L)
                    .toList();
            demandFew(name, some.size());
            for (Path file : some) {
                bytes += Files.size(file);
                demandSmall(name, bytes);
                files.put(String.valueOf(file.getFileName()).toUpperCase(Locale.ROOT), Files.readAllBytes(file));
            }
        }
        return withMain(name, files);
    }

    private static LogFiles zip(String name, byte[] content) throws IOException {
        Map<String, Map<String, byte[]>> folders = new HashMap<>();
        long bytes = 0;
        int count = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(content))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                demandFew(name, ++count);
                String path = entry.getName().replace('\\', '/');
                String file = path.substring(path.lastIndexOf('/') + 1);
                byte[] unpacked = in.readNBytes((int) (MOST_BYTES - bytes) + 1);
                bytes += unpacked.length;
                demandSmall(name, bytes);
                if (!entry.isDirectory() && belongs(file)) {
                    folders.computeIfAbsent(path.substring(0, path.length() - file.length()), none -> new HashMap<>())
                            .put(file.toUpperCase(Locale.ROOT), unpacked);
                }
            }
        }
        if (count == 0) {
            throw new LogTrouble(
                    name + " is no sound zip file or an empty one; expected task data with their TASKDATA.XML.");
        }
        List<Map<String, byte[]>> sets = folders.values().stream()
                .filter(files -> files.containsKey(MAIN))
                .toList();
        if (sets.size() > 1) {
            throw new LogTrouble(name + " holds " + sets.size() + " sets of task data; expected one.");
        }
        return withMain(name, sets.isEmpty() ? Map.of() : sets.get(0));
    }

    private static LogFiles withMain(String name, Map<String, byte[]> files) {
        if (!files.containsKey(MAIN)) {
            throw new LogTrouble(name + " holds no TASKDATA.XML; expected task data by ISO 11783-10.");
        }
        return new LogFiles(files);
    }

    private static boolean belongs(String file) {
        String upper = file.toUpperCase(Locale.ROOT);
        return upper.equals(MAIN) || upper.matches("[A-Z]{3}\\d{5}\\.(XML|BIN)");
    }

    private static void demandFew(String name, int count) {
        if (count > MOST_FILES) {
            throw new LogTrouble(name + " holds more than 2,000 files; expected the task data of a season at most.");
        }
    }

    private static void demandSmall(String name, long bytes) {
        if (bytes > MOST_BYTES) {
            throw new LogTrouble(name + " unpacks to more than 64 MB; expected the task data of a season at most.");
        }
    }

    static String shown(String text) {
        return text.length() > 40 ? text.substring(0, 37) + "…" : text;
    }
}
