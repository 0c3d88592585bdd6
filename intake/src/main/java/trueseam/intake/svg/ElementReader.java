package trueseam.intake.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import trueseam.intake.drawing.DrawingException;

/** Reads the elements of a file, bounded in size, depth and number; a document type is passed over and nothing that it names is read. */
final class ElementReader {

    private static final int MOST_CHARACTERS = 20_000_000;
    private static final int MOST_ELEMENTS = 400_000;
    private static final int DEEPEST = 200;

    private final String file;
    private final Deque<Element> open = new ArrayDeque<>();
    private int elements;

    private ElementReader(String file) {
        this.file = file;
    }

    static Element read(String file, String text) {
        ElementReader reader = new ElementReader(file);
        if (text.length() > MOST_CHARACTERS) {
            throw new DrawingException(
                    file,
                    "",
                    "The file has " + text.length() + " characters, more than " + MOST_CHARACTERS
                            + "; take out pictures and anything else that is not the pattern.");
        }
        try {
            return reader.follow(PlainXml.reader(text.strip()));
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber());
            throw new DrawingException(
                    file,
                    line == 0 ? "" : "line " + line,
                    "This is not well-formed XML: the file may be cut short or a sign out of place; open it in a vector"
                            + " editor and save it again.");
        }
    }

    private Element follow(XMLStreamReader xml) throws XMLStreamException {
        Element root = null;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.ENTITY_REFERENCE) {
                throw new DrawingException(
                        file,
                        "line " + xml.getLocation().getLineNumber(),
                        "The file uses an entity of its own, which may grow without end or reach outside the file;"
                                + " save it again as plain SVG.");
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                Element element = start(xml);
                root = root == null ? element : root;
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                open.pop();
            } else if ((event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA)
                    && !open.isEmpty()) {
                open.peek().text().append(xml.getText());
            }
        }
        if (root == null || !root.name().equals("svg")) {
            throw new DrawingException(file, "", "The file is no SVG drawing; one root element svg was expected.");
        }
        return root;
    }

    private Element start(XMLStreamReader xml) {
        int line = xml.getLocation().getLineNumber();
        elements++;
        if (elements > MOST_ELEMENTS) {
            throw new DrawingException(
                    file, "line " + line, "More than " + MOST_ELEMENTS + " elements; that is no pattern.");
        }
        if (open.size() >= DEEPEST) {
            throw new DrawingException(
                    file,
                    "line " + line,
                    "Groups are nested more than " + DEEPEST + " deep; ungroup them in a vector editor.");
        }
        Map<String, String> attributes = new HashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String namespace = xml.getAttributeNamespace(i);
            String name = xml.getAttributeLocalName(i);
            boolean plain = namespace == null || namespace.isEmpty();
            if (plain || !attributes.containsKey(name)) {
                attributes.put(name, xml.getAttributeValue(i));
            }
        }
        Element element = new Element(xml.getLocalName(), attributes, new ArrayList<>(), new StringBuilder(), line);
        if (!open.isEmpty()) {
            open.peek().children().add(element);
        }
        open.push(element);
        return element;
    }
}
