package plumbrow.documents.machine;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.land.CellCodes;
import plumbrow.advice.land.CellGrid;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.ratemap.Metering;
import plumbrow.advice.ratemap.RateMap;

/**
 * A planned task for a task controller: grower, farm, field with outline and what is kept clear, products, treatment zones and
 * the grid of rates.
 *
 * <p>Outside the field, where the position is lost and where nothing else holds the rate is zero. Designators are cut at 32
 * characters, places written with nine decimals.
 *
 * <p>Source: ISO 11783-10, editions 3 and 4, by their published XML schema; rates by ISO 11783-11.
 */
public final class TaskData {
    static final String MAIN = "TASKDATA.XML";
    static final String FOLDER = "TASKDATA";
    private static final String MANUFACTURER = "Plumbrow";
    private static final String GRID = "GRD00001";
    private static final int LONGEST_NAME = 32;
    private static final int DECIMALS = 9;
    /** Code of the zone at rate zero, in both grid types; with grid type 2 code 1 stands for the grid. */
    private static final int ZERO = 0;

    private static final int BY_GRID = 1;
    private static final double M2_PER_HECTARE = 10_000;

    private final RateMap map;
    private final TaskDataVersion version;
    private final GridType type;
    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;

    private TaskData(RateMap map, TaskDataVersion version, GridType type) throws XMLStreamException {
        this.map = map;
        this.version = version;
        this.type = type;
        xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
    }

    /** The files of the task by their path in a folder or zip: TASKDATA/TASKDATA.XML and the grid beside it. */
    public static Map<String, byte[]> files(RateMap map, TaskDataVersion version, GridType type) {
        try {
            Map<String, byte[]> files = new TreeMap<>();
            files.put(FOLDER + "/" + MAIN, new TaskData(map, version, type).xml());
            files.put(FOLDER + "/" + GRID + ".bin", grid(map, type));
            return files;
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException("writing to memory failed", impossible);
        }
    }

    /** The cells from the south-west corner, west to east, then north; values little-endian. */
    private static byte[] grid(RateMap map, GridType type) {
        CellCodes cells = map.cells();
        int count = cells.grid().cells();
        if (type == GridType.ZONES) {
            byte[] codes = new byte[count];
            for (int i = 0; i < count; i++) {
                codes[i] = (byte) cells.at(i);
            }
            return codes;
        }
        int[] values = new int[256];
        map.parts().forEach(part -> values[part.code()] = part.steps());
        ByteBuffer out = ByteBuffer.allocate(4 * count).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < count; i++) {
            out.putInt(values[cells.at(i)]);
        }
        return out.array();
    }

    private byte[] xml() throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        open(
                "ISO11783_TaskData",
                "VersionMajor",
                String.valueOf(version.major()),
                "VersionMinor",
                String.valueOf(TaskDataVersion.MINOR),
                "ManagementSoftwareManufacturer",
                MANUFACTURER,
                "ManagementSoftwareVersion",
                "1",
                "DataTransferOrigin",
                "1");
        element("CTR", "A", "CTR1", "B", name(map.grower()));
        element("FRM", "A", "FRM1", "B", name(map.farm()), "I", "CTR1");
        field();
        List<String> products = products();
        String applicator = map.applicator();
        if (applicator != null && !applicator.isBlank()) {
            element("WKR", "A", "WKR1", "B", name(applicator));
        }
        task(products, applicator != null && !applicator.isBlank());
        close();
        xml.writeEndDocument();
        xml.close();
        return (text + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private void field() throws XMLStreamException {
        open(
                "PFD",
                "A",
                "PFD1",
                "C",
                name(map.field()),
                "D",
                String.valueOf(Math.round(map.acres() * Metering.M2_PER_ACRE)),
                "E",
                "CTR1",
                "F",
                "FRM1");
        polygons(map.outline(), "1", map.field());
        // Edition 4 has buffer zones of their own; in edition 3 such ground is "other".
        String buffer = version == TaskDataVersion.V4 ? "11" : "8";
        for (RateMap.Clear clear : map.clear()) {
            polygons(clear.outline(), buffer, "Keep clear: " + clear.from());
        }
        close();
    }

    private void polygons(Boundary outline, String kind, String called) throws XMLStreamException {
        for (Boundary.Polygon polygon : outline.polygons()) {
            open("PLN", "A", kind, "B", name(called));
            ring(polygon.shell(), "1");
            for (List<Point> hole : polygon.holes()) {
                ring(hole, "2");
            }
            close();
        }
    }

    private void ring(List<Point> points, String kind) throws XMLStreamException {
        open("LSG", "A", kind);
        for (Point point : points) {
            element("PNT", "A", "2", "C", degrees(point.latitude()), "D", degrees(point.longitude()));
        }
        close();
    }

    /** The products, and after them the mixture where several go out together or one in water; the last is what is metered. */
    private List<String> products() throws XMLStreamException {
        List<String> ids = new ArrayList<>();
        for (RateMap.Share share : map.products()) {
            String id = "PDT" + (ids.size() + 1);
            ids.add(id);
            if (version == TaskDataVersion.V4) {
                element("PDT", "A", id, "B", name(share.name()), "E", content(share.perAcre()), "F", "1");
            } else {
                element("PDT", "A", id, "B", name(share.name()));
            }
        }
        if (!mixed()) {
            return ids;
        }
        String id = "PDT" + (ids.size() + 1);
        List<String> names = map.products().stream().map(RateMap.Share::name).toList();
        String mixture = name(String.join(" + ", names) + " in water");
        if (version == TaskDataVersion.V4) {
            Amount spray = planned();
            open("PDT", "A", id, "B", mixture, "E", content(spray), "F", "3", "G", String.valueOf(perHectare(spray)));
            for (int i = 0; i < map.products().size(); i++) {
                element(
                        "PNR",
                        "A",
                        ids.get(i),
                        "B",
                        String.valueOf(perHectare(map.products().get(i).perAcre())));
            }
            close();
        } else {
            element("PDT", "A", id, "B", mixture);
        }
        ids.add(id);
        return ids;
    }

    /** Whether what is metered is spray, in which the products go. */
    private boolean mixed() {
        return map.metering() == Metering.VOLUME;
    }

    private Amount planned() {
        return map.parts().stream()
                .filter(part -> part.steps() > 0)
                .min((one, other) -> Integer.compare(one.code(), other.code()))
                .map(RateMap.Part::perAcre)
                .orElseThrow();
    }

    /** The dictionary entry of an amount: actual volume, mass or count content. */
    private static String content(Amount amount) {
        return switch (Metering.of(amount.unit().dimension())) {
            case VOLUME -> "0048";
            case MASS -> "004B";
            case COUNT -> "004E";
        };
    }

    /** Millilitres, grams or seeds on a hectare, whole: shares of a mixture. */
    private static long perHectare(Amount perAcre) {
        double acres = M2_PER_HECTARE / Metering.M2_PER_ACRE;
        Dimension dimension = perAcre.unit().dimension();
        double each = switch (dimension) {
            case VOLUME -> perAcre.in(FarmUnit.ML).value();
            case MASS -> perAcre.in(FarmUnit.G).value();
            default -> perAcre.inBase();
        };
        return Math.round(each * acres);
    }

    private void task(List<String> products, boolean worker) throws XMLStreamException {
        String metered = products.get(products.size() - 1);
        String pass = map.passes().size() == 1 ? "pass " : "passes ";
        String numbers =
                String.join("+", map.passes().stream().map(String::valueOf).toList());
        String day = map.date() == null ? "" : map.date() + " ";
        List<String> attributes = new ArrayList<>(List.of(
                "A",
                "TSK1",
                "B",
                name(day + pass + numbers + " "
                        + String.join(
                                " + ",
                                map.products().stream().map(RateMap.Share::name).toList())),
                "C",
                "CTR1",
                "D",
                "FRM1",
                "E",
                "PFD1"));
        if (worker) {
            attributes.addAll(List.of("F", "WKR1"));
        }
        String zero = String.valueOf(ZERO);
        attributes.addAll(List.of("G", "1", "H", zero, "I", zero, "J", zero));
        open("TSK", attributes.toArray(String[]::new));
        zone(ZERO, "Outside: rate zero", 0, metered);
        if (type == GridType.VALUES) {
            zone(BY_GRID, "By the grid", 0, metered);
        } else {
            for (RateMap.Part part : map.parts()) {
                zone(part.code(), part.name(), part.steps(), metered);
            }
        }
        element("PAN", "A", metered);
        CellGrid grid = map.cells().grid();
        int bytes = grid.cells() * (type == GridType.ZONES ? 1 : 4);
        List<String> about = new ArrayList<>(List.of(
                "A",
                degrees(grid.southDeg()),
                "B",
                degrees(grid.westDeg()),
                "C",
                plain(grid.highDeg()),
                "D",
                plain(grid.wideDeg()),
                "E",
                String.valueOf(grid.columns()),
                "F",
                String.valueOf(grid.rows()),
                "G",
                GRID,
                "H",
                String.valueOf(bytes),
                "I",
                String.valueOf(type.number())));
        if (type == GridType.VALUES) {
            about.addAll(List.of("J", String.valueOf(BY_GRID)));
        }
        element("GRD", about.toArray(String[]::new));
        close();
    }

    private void zone(int code, String called, int steps, String product) throws XMLStreamException {
        open("TZN", "A", String.valueOf(code), "B", name(called));
        element("PDV", "A", map.metering().setPointDdi(), "B", String.valueOf(steps), "C", product);
        close();
    }

    private void open(String tag, String... attributes) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeStartElement(tag);
        attributes(attributes);
    }

    private void element(String tag, String... attributes) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeEmptyElement(tag);
        attributes(attributes);
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], attributes[i + 1]);
        }
    }

    private void close() throws XMLStreamException {
        xml.writeEndElement();
    }

    /** A designator: 32 characters at most, none of them a control character. */
    static String name(String called) {
        String plain = called.replaceAll("\\p{Cntrl}+", " ").strip();
        if (plain.codePointCount(0, plain.length()) <= LONGEST_NAME && plain.length() <= LONGEST_NAME) {
            return plain;
        }
        int end = LONGEST_NAME - 1;
        if (Character.isHighSurrogate(plain.charAt(end - 1))) {
            end--;
        }
        return plain.substring(0, end).strip() + "…";
    }

    private static String degrees(double value) {
        return plain(BigDecimal.valueOf(value)
                .setScale(DECIMALS, java.math.RoundingMode.HALF_EVEN)
                .doubleValue());
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
