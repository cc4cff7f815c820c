package plumbrow.documents.machine.log;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * An element of task data with its attributes and what is in it; text between has no meaning there.
 *
 * <p>A document type, and with it any entity, is refused before it is looked at: task data have none.
 */
record Element(String tag, Map<String, String> attributes, List<Element> children) {
    private static final int MOST_ELEMENTS = 1_000_000;
    private static final int DEEPEST = 50;
    private static final int BEGIN = 200;
    private static final Pattern ENCODING = Pattern.compile("<\\?xml[^>]*encoding=[\"']([^\"']*)");

    /** An attribute; empty where it is not there. */
    String at(String name) {
        return attributes.getOrDefault(name, "").strip();
    }

    boolean has(String name) {
        return attributes.containsKey(name);
    }

    Stream<Element> all(String other) {
        return children.stream().filter(child -> child.tag().equals(other));
    }

    /** The outermost element of a file. */
    static Element read(String file, byte[] content) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        Deque<Element> open = new ArrayDeque<>();
        Element outermost = null;
        int count = 0;
        try {
            XMLStreamReader in = reader(factory, file, content);
            while (in.hasNext()) {
                switch (in.next()) {
                    case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                        throw new LogTrouble(
                                file
                                        + " declares a document type or entities of its own, which task data never do; it was not read.");
                    case XMLStreamConstants.START_ELEMENT -> {
                        if (++count > MOST_ELEMENTS || open.size() > DEEPEST) {
                            throw new LogTrouble(file
                                    + " holds more than a million elements or nests them too deep; it was not read.");
                        }
                        Map<String, String> attributes = new HashMap<>();
                        for (int i = 0; i < in.getAttributeCount(); i++) {
                            attributes.put(in.getAttributeLocalName(i), in.getAttributeValue(i));
                        }
                        Element element = new Element(in.getLocalName(), attributes, new ArrayList<>());
                        Element around = open.peek();
                        if (around != null) {
                            around.children().add(element);
                        } else {
                            outermost = element;
                        }
                        open.push(element);
                    }
                    case XMLStreamConstants.END_ELEMENT -> open.pop();
                    default -> {
                        // Text, comments and instructions mean nothing in task data.
                    }
                }
            }
        } catch (XMLStreamException broken) {
            throw new LogTrouble(file + " is broken XML, near line "
                    + Math.max(
                            1,
                            broken.getLocation() == null
                                    ? 1
                                    : broken.getLocation().getLineNumber())
                    + "; expected task data by ISO 11783-10.");
        }
        if (outermost == null) {
            throw new LogTrouble(file + " is empty; expected task data by ISO 11783-10.");
        }
        return outermost;
    }

    /** Over text where it is in UTF-8, as task data should be; else as the file itself declares. */
    private static XMLStreamReader reader(XMLInputFactory factory, String file, byte[] content)
            throws XMLStreamException {
        String begin = new String(content, 0, Math.min(content.length, BEGIN), StandardCharsets.ISO_8859_1);
        Matcher declared = ENCODING.matcher(begin);
        boolean wide = content.length > 1
                && (content[0] == 0 || content[1] == 0 || content[0] == (byte) 0xFE || content[0] == (byte) 0xFF);
        if (wide || (declared.find() && !declared.group(1).equalsIgnoreCase("UTF-8"))) {
            return factory.createXMLStreamReader(new ByteArrayInputStream(content));
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
            return factory.createXMLStreamReader(
                    new StringReader(text.startsWith("\uFEFF") ? text.substring(1) : text));
        } catch (CharacterCodingException foreign) {
            throw new LogTrouble(file + " is not in UTF-8, which task data are; it was not read.");
        }
    }
}
