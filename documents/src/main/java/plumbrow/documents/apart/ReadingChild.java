package plumbrow.documents.apart;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import plumbrow.documents.machine.log.AppliedTable;
import plumbrow.documents.machine.log.LogTrouble;
import plumbrow.documents.machine.log.MachineWork;
import plumbrow.documents.machine.log.TaskLog;
import plumbrow.documents.ocr.OcrDoubts;
import plumbrow.documents.ocr.Tesseract;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.Paper;
import plumbrow.documents.paper.PaperLimits;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.reading.LabelReader;
import plumbrow.documents.reading.PaperSort;
import plumbrow.documents.reading.SheetReader;

/**
 * The process that reads: takes the path of one file after the other and answers each with the values on it or with the
 * picture of a page, or with the sentence why not. It writes no file, and ends with the process that started it.
 */
public final class ReadingChild {
    static final byte VALUES = 1;
    static final byte PICTURE = 2;
    static final byte SENTENCE = 3;
    /** What a machine wrote down. */
    static final byte WORK = 5;

    /** Another page is made out; the answer is still to come. */
    static final byte PAGE = 4;

    private ReadingChild() {}

    public static void main(String[] arguments) throws IOException {
        DataInputStream in = new DataInputStream(new BufferedInputStream(System.in));
        DataOutputStream out = new DataOutputStream(new BufferedOutputStream(new FileOutputStream(FileDescriptor.out)));
        System.setOut(System.err); // a library that prints must not print into the answer
        while (true) {
            byte asked;
            try {
                asked = in.readByte();
            } catch (EOFException done) {
                return;
            }
            Path file = Path.of(RecordWire.text(in));
            try {
                if (asked == PICTURE) {
                    picture(file, in.readInt(), in.readInt(), out);
                } else if (asked == WORK) {
                    work(file, RecordWire.read(MachineColumns.class, in), out);
                } else {
                    values(file, RecordWire.text(in), out);
                }
            } catch (PaperTrouble | LogTrouble trouble) {
                out.writeByte(SENTENCE);
                RecordWire.text(String.valueOf(trouble.getMessage()), out);
            } catch (UncheckedIOException gone) {
                throw gone;
            } catch (RuntimeException | StackOverflowError broken) {
                out.writeByte(SENTENCE);
                RecordWire.text(
                        file.getFileName()
                                + " can't be read: the reader itself failed on it. The file is left as it was.",
                        out);
            }
            out.flush();
        }
    }

    /**
     * Reads and finds.
     *
     * @param sort the name of what to read it as; empty for what it looks like
     */
    private static void values(Path file, String sort, DataOutputStream out) throws IOException {
        Paper paper = PaperSort.read(file, PaperLimits.USUAL, new Tesseract() {
            @Override
            public void page(int number) {
                said(out);
            }
        });
        PaperSort as = sort.isEmpty() ? PaperSort.of(paper) : PaperSort.valueOf(sort);
        PaperValues values = as == PaperSort.LABEL
                ? new PaperValues.Label(
                        OcrDoubts.over(LabelReader.read(paper), paper.optical()),
                        paper.optical().pages())
                : new PaperValues.Sheet(
                        OcrDoubts.over(SheetReader.read(paper), paper.optical()),
                        paper.optical().pages());
        out.writeByte(VALUES);
        RecordWire.write(values, PaperValues.class, out);
    }

    /** Says that another page is on its way, so that nobody takes the patience that OCR needs for a hang. */
    private static void said(DataOutputStream out) {
        try {
            out.writeByte(PAGE);
            out.flush();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private static void work(Path file, MachineColumns columns, DataOutputStream out) throws IOException {
        boolean table =
                String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".csv");
        MachineWork.Log log = table ? AppliedTable.read(file, columns.byKey()) : TaskLog.read(file);
        out.writeByte(WORK);
        RecordWire.write(log, MachineWork.Log.class, out);
    }

    private static void picture(Path file, int page, int longestPx, DataOutputStream out) throws IOException {
        PagePicture.Drawn drawn =
                PagePicture.draw(Files.readAllBytes(file), String.valueOf(file.getFileName()), page, longestPx);
        out.writeByte(PICTURE);
        out.writeDouble(drawn.width());
        out.writeDouble(drawn.height());
        out.writeInt(drawn.png().length);
        out.write(drawn.png());
    }
}
