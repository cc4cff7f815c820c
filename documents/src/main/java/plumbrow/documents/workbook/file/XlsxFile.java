package plumbrow.documents.workbook.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.jspecify.annotations.Nullable;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;
import plumbrow.documents.workbook.form.Grid;
import plumbrow.documents.workbook.form.Objections;

/**
 * A spreadsheet file read as a stream: no more of it is held than its filled cells, and a file that would unpack
 * without end is left when it passes {@link Limits}. XML that declares entities is refused.
 */
public final class XlsxFile {
    static {
        // The library keeps its guards against zip bombs for the whole program; these are tighter than its own.
        ZipSecureFile.setMinInflateRatio(Limits.PACKED_SHARE);
        ZipSecureFile.setMaxEntrySize(Limits.PART_BYTES);
        ZipSecureFile.setMaxFileCount(Limits.PARTS);
    }

    private final Predicate<String> wanted;
    private final Objections objections;
    private final SharedText texts = new SharedText();
    private final Formats formats = new Formats();
    private final CellBudget budget = new CellBudget();

    private XlsxFile(Predicate<String> wanted, Objections objections) {
        this.wanted = wanted;
        this.objections = objections;
    }

    /** The grids of the sheets that are wanted; of the others only their names. */
    public static List<Grid> read(Path path, Predicate<String> wanted, Objections objections) throws IOException {
        String name = CsvFolder.fileName(path);
        if (!Envelope.sound(path, name, objections)) {
            return List.of();
        }
        try (OPCPackage parts = OPCPackage.open(path.toFile(), PackageAccess.READ)) {
            if (Envelope.macros(parts)) {
                objections.at(name, 0, "", "a workbook with macros", "one without: save it as a plain XLSX workbook");
                return List.of();
            }
            return new XlsxFile(wanted, objections).grids(new XSSFReader(parts));
        } catch (OpenXML4JException | SAXException | IOException | RuntimeException broken) {
            // Beside its own, the library throws whatever comes up when parts of a file are missing or contradict.
            Broken.object(name, broken, objections);
        }
        return List.of();
    }

    private List<Grid> grids(XSSFReader reader) throws IOException, OpenXML4JException, SAXException {
        parse(reader.getWorkbookData(), formats);
        parse(reader.getStylesData(), formats);
        parse(reader.getSharedStringsData(), texts);
        List<Grid> grids = new ArrayList<>();
        XSSFReader.SheetIterator sheets = reader.getSheetIterator();
        while (sheets.hasNext()) {
            InputStream part = sheets.next();
            String name = sheets.getSheetName().strip();
            if (wanted.test(name)) {
                grids.add(grid(name, part));
            } else {
                part.close();
                grids.add(new Grid(name, name, List.of(), List.of()));
            }
        }
        return grids;
    }

    private Grid grid(String name, InputStream part) {
        SheetReader sheet = new SheetReader(name, texts, formats, budget, objections);
        try {
            parse(part, sheet);
        } catch (EnoughRead enough) {
            // The sheet was too large, which has been objected to; what was read of it is still looked at.
        } catch (IOException | SAXException broken) {
            Broken.object(name, broken, objections);
        }
        return sheet.grid();
    }

    private static void parse(@Nullable InputStream part, DefaultHandler handler) throws IOException, SAXException {
        if (part == null) {
            return;
        }
        try (part) {
            XMLReader reader = XMLHelper.newXMLReader();
            reader.setContentHandler(handler);
            reader.setErrorHandler(handler);
            reader.parse(new InputSource(part));
        } catch (ParserConfigurationException missing) {
            throw new SAXException(missing);
        }
    }
}
