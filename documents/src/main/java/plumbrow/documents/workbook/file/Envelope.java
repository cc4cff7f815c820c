package plumbrow.documents.workbook.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import plumbrow.documents.workbook.form.Objections;

/** Looks at a file from outside: whether it is a plain spreadsheet package at all. */
final class Envelope {
    private static final String WANTED = "an XLSX workbook";
    private static final int MAGIC_BYTES = 8;

    private Envelope() {}

    static boolean sound(Path path, String name, Objections objections) throws IOException {
        long size = Files.size(path);
        if (size == 0) {
            objections.at(name, 0, "", "an empty file", WANTED);
            return false;
        }
        if (size > Limits.FILE_BYTES) {
            objections.at(name, 0, "", "a file of " + (size >> 20) + " MB", "a workbook of a few MB at most");
            return false;
        }
        byte[] start;
        try (InputStream in = Files.newInputStream(path)) {
            start = in.readNBytes(MAGIC_BYTES);
        }
        FileMagic magic = start.length < MAGIC_BYTES ? FileMagic.UNKNOWN : FileMagic.valueOf(start);
        if (magic == FileMagic.OLE2) {
            oldContainer(path, name, objections);
        } else if (magic != FileMagic.OOXML) {
            objections.at(name, 0, "", "a file of another kind", WANTED);
        }
        return magic == FileMagic.OOXML;
    }

    private static void oldContainer(Path path, String name, Objections objections) {
        boolean encrypted;
        try (POIFSFileSystem container = new POIFSFileSystem(path.toFile(), true)) {
            encrypted = container.getRoot().hasEntryCaseInsensitive("EncryptedPackage");
        } catch (IOException | RuntimeException broken) {
            encrypted = false;
        }
        if (encrypted) {
            objections.at(name, 0, "", "a workbook locked with a password", "one that opens without a password");
        } else {
            objections.at(name, 0, "", "a workbook in the old XLS format", "an XLSX workbook: save it again as XLSX");
        }
    }

    static boolean macros(OPCPackage parts) throws InvalidFormatException {
        return parts.getParts().stream()
                .map(part -> part.getContentType())
                .anyMatch(type -> type.contains("vbaProject") || type.contains("macroEnabled"));
    }
}
