package trueseam.intake.patternfile;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import trueseam.intake.svg.PlainXml;

/**
 * Reads the elements of a drawing. Source: W3C, Extensible Markup Language (XML) 1.0, fifth edition.
 *
 * <p>A document type is refused, since it can name other files and define entities that grow; size, depth and number of
 * elements are bounded, so that no file can hold up the program.
 */
final class SvgTree {

    static final String SVG = "http://www.w3.org/2000/svg";
    /** Namespace of the few elements of our own: seams and ease. */
    static final String OWN_NAMESPACE = "urn:trueseam:pattern";
    /** Prefix of our own elements, in the file by custom and in {@link SvgNode#name} always. */
    static final String OWN = "trueseam:";

    /** The largest pattern drafted here has 0.1 million characters. */
    static final int MOST_CHARACTERS = 20_000_000;

    static final int MOST_ELEMENTS = 200_000;

    /** Editors nest groups a handful deep. */
    static final int DEEPEST = 100;

    private final String file;
    private final Deque<SvgNode> open = new ArrayDeque<>();
    private int elements;

    private SvgTree(String file) {
        this.file = file;
    }

    /** The root element. */
    static SvgNode read(String file, String text) {
        SvgTree tree = new SvgTree(file);
        if (text.length() > MOST_CHARACTERS) {
            throw tree.refused(
                    0,
                    "The file has " + text.length() + " characters and a pattern at most " + MOST_CHARACTERS
                            + "; take out pictures and anything else that is not the pattern.");
        }
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        try {
            XMLStreamReader xml = PlainXml.reader(plain);
            return tree.follow(xml);
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber());
            throw tree.refused(
                    line,
                    "This is not well-formed XML: the file may be cut short or a sign out of place; expected an SVG"
                            + " drawing; open it in a vector editor and save it again.");
        }
    }

    private PatternFileException refused(int line, String what) {
        return new PatternFileException(file, line, "", what);
    }

    private SvgNode follow(XMLStreamReader xml) throws XMLStreamException {
        SvgNode root = null;
        while (xml.hasNext()) {
            int event = xml.next();
            int line = xml.getLocation().getLineNumber();
            if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
                throw refused(
                        line,
                        "The file has a document type or an entity, which may reach outside it; expected a plain SVG"
                                + " drawing; take out the line that begins with <!DOCTYPE.");
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                SvgNode node = start(xml, line);
                root = root == null ? node : root;
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                open.pop();
            }
        }
        if (root == null || !root.name().equals("svg")) {
            throw refused(0, "The file is no SVG drawing; expected one root element svg.");
        }
        return root;
    }

    private SvgNode start(XMLStreamReader xml, int line) {
        elements++;
        if (elements > MOST_ELEMENTS) {
            throw refused(line, "More than " + MOST_ELEMENTS + " elements; that is no pattern.");
        }
        if (open.size() >= DEEPEST) {
            throw refused(line, "Groups are nested more than " + DEEPEST + " deep; ungroup them in a vector editor.");
        }
        SvgNode node = new SvgNode(name(xml), attributes(xml), new ArrayList<>(), line);
        // Elements of other programs get no parent, so they and all within them are passed over.
        if (!open.isEmpty() && !node.name().isEmpty()) {
            open.peek().children().add(node);
        }
        open.push(node);
        return node;
    }

    /** Empty for elements of other programs. */
    private static String name(XMLStreamReader xml) {
        String namespace = xml.getNamespaceURI();
        if (namespace == null || namespace.isEmpty() || namespace.equals(SVG)) {
            return xml.getLocalName();
        }
        return namespace.equals(OWN_NAMESPACE) ? OWN + xml.getLocalName() : "";
    }

    private static Map<String, String> attributes(XMLStreamReader xml) {
        Map<String, String> found = new HashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String namespace = xml.getAttributeNamespace(i);
            if (namespace == null || namespace.isEmpty()) {
                found.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
            }
        }
        return Collections.unmodifiableMap(found);
    }

    /** All elements of a name, whatever holds them, in order. */
    static List<SvgNode> all(SvgNode from, String name) {
        List<SvgNode> found = new ArrayList<>();
        for (SvgNode child : from.children()) {
            if (child.name().equals(name)) {
                found.add(child);
            }
            found.addAll(all(child, name));
        }
        return found;
    }
}
