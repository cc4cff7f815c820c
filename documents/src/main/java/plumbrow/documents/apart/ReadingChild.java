package plumbrow.documents.apart;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import plumbrow.documents.label.PaperSort;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperTrouble;

/**
 * The process that reads: takes the path of one file after the other and answers each with what stands on it, or with the
 * sentence why not. It writes no file, and ends with the process that started it.
 */
public final class ReadingChild {
    static final byte PAPER = 1;
    static final byte SENTENCE = 2;

    private ReadingChild() {}

    public static void main(String[] arguments) throws IOException {
        DataInputStream in = new DataInputStream(new BufferedInputStream(System.in));
        DataOutputStream out = new DataOutputStream(new BufferedOutputStream(new FileOutputStream(FileDescriptor.out)));
        System.setOut(System.err); // a library that prints must not print into the answer
        while (true) {
            Path file;
            try {
                file = Path.of(PaperWire.text(in));
            } catch (EOFException done) {
                return;
            }
            answer(file, out);
            out.flush();
        }
    }

    private static void answer(Path file, DataOutputStream out) throws IOException {
        try {
            Paper paper = PaperSort.read(file, PaperLimits.USUAL);
            out.writeByte(PAPER);
            PaperWire.write(paper, out);
        } catch (PaperTrouble trouble) {
            out.writeByte(SENTENCE);
            PaperWire.text(String.valueOf(trouble.getMessage()), out);
        }
    }
}
