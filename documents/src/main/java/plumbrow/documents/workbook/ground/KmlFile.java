package plumbrow.documents.workbook.ground;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.kml.KMLReader;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;
import plumbrow.advice.field.Feature.Line;
import plumbrow.advice.field.Feature.Spot;

/** Outlines of fields in a KML file: each placemark with an area is a field of its name. Pins and paths are no outlines. */
public final class KmlFile {
    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";
    private static final ErrorHandler QUIET = new DefaultHandler();

    private static final Set<String> NO_AREAS = Set.of("Point", "LineString");
    private static final List<String> SHAPES = List.of("Point", "LineString", "Polygon", "MultiGeometry");

    private KmlFile() {}

    /** The outlines of a file's text, as a GeoJSON file would have them. */
    public static List<GeoJsonFile.Feature> read(String text) throws NoBoundary {
        NodeList placemarks = parsed(text).getElementsByTagNameNS("*", "Placemark");
        List<GeoJsonFile.Feature> outlines = new ArrayList<>();
        for (Node each : nodes(placemarks)) {
            String name = children(each, "name")
                    .map(child -> child.getTextContent().strip())
                    .findFirst()
                    .orElse("");
            Node area = Stream.concat(children(each, "Polygon"), children(each, "MultiGeometry"))
                    .findFirst()
                    .orElse(null);
            if (area != null) {
                outlines.add(new GeoJsonFile.Feature(Map.of("field", name), geometry(name, area)));
            }
        }
        return outlines;
    }

    /** Every placemark with a shape: pins and paths too; its name and extended data are its properties. */
    public static List<GeoJsonFile.Feature> everything(String text) throws NoBoundary {
        List<GeoJsonFile.Feature> read = new ArrayList<>();
        for (Node each : nodes(parsed(text).getElementsByTagNameNS("*", "Placemark"))) {
            Map<String, String> properties = properties((Element) each);
            String name = properties.getOrDefault("name", "");
            for (Node shape :
                    SHAPES.stream().flatMap(kind -> children(each, kind)).toList()) {
                boolean area = !NO_AREAS.contains(shape.getLocalName());
                read.add(new GeoJsonFile.Feature(properties, area ? geometry(name, shape) : simple(name, shape)));
            }
        }
        return read;
    }

    private static Map<String, String> properties(Element placemark) {
        Map<String, String> properties = new LinkedHashMap<>();
        children(placemark, "name").findFirst().ifPresent(name -> properties.put("name", text(name)));
        for (Node data : nodes(placemark.getElementsByTagNameNS("*", "Data"))) {
            children(data, "value")
                    .findFirst()
                    .ifPresent(value -> properties.put(((Element) data).getAttribute("name"), text(value)));
        }
        for (Node data : nodes(placemark.getElementsByTagNameNS("*", "SimpleData"))) {
            properties.put(((Element) data).getAttribute("name"), text(data));
        }
        return properties;
    }

    private static String text(Node node) {
        return node.getTextContent().strip();
    }

    private static String simple(String name, Node shape) throws NoBoundary {
        try {
            Geometry read = new KMLReader().read(xml(shape));
            return read instanceof Point
                    ? FeatureShape.write(new Spot(FeatureShape.points(read).get(0)))
                    : FeatureShape.write(new Line(FeatureShape.points(read)));
        } catch (ParseException | RuntimeException unreadable) {
            // The reader throws whatever comes up where a number is none.
            throw new NoBoundary("for " + name + " places of longitude,latitude");
        }
    }

    private static Document parsed(String text) throws NoBoundary {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature(NO_DOCTYPE, true);
            factory.setExpandEntityReferences(false);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(QUIET);
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (SAXException | IOException | ParserConfigurationException broken) {
            throw new NoBoundary("a KML file without a document type, as an earth browser saves it");
        }
    }

    private static String geometry(String name, Node area) throws NoBoundary {
        try {
            return GeoJson.write(Outline.boundary(new KMLReader().read(xml(area))));
        } catch (NoBoundary crossed) {
            throw new NoBoundary("for " + name + " " + crossed.expected());
        } catch (ParseException | RuntimeException unreadable) {
            // The reader throws whatever comes up where a ring is open or a number is none.
            throw new NoBoundary("for " + name + " rings of longitude,latitude that end where they begin");
        }
    }

    private static String xml(Node node) throws NoBoundary {
        try {
            TransformerFactory factory = TransformerFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Transformer plain = factory.newTransformer();
            plain.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter text = new StringWriter();
            plain.transform(new DOMSource(node), new StreamResult(text));
            return text.toString();
        } catch (TransformerException impossible) {
            throw new NoBoundary("a KML file");
        }
    }

    private static Stream<Node> children(Node node, String name) {
        return nodes(node.getChildNodes()).stream()
                .filter(child -> child instanceof Element && name.equals(child.getLocalName()));
    }

    private static List<Node> nodes(NodeList list) {
        return IntStream.range(0, list.getLength()).mapToObj(list::item).toList();
    }
}
