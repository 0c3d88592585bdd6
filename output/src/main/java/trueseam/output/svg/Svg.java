package trueseam.output.svg;

import java.io.StringWriter;
import java.math.BigDecimal;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes elements of a drawing one after another; what is opened is closed by the caller. Attributes are names and values in turn, numbers
 * written to a hundredth; words are escaped.
 */
public final class Svg {

    private static final XMLOutputFactory FACTORY = XMLOutputFactory.newDefaultFactory();

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;

    /** An empty drawing. */
    public Svg() {
        try {
            xml = FACTORY.createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    /**
     * Opens an element.
     *
     * @param element its name
     * @param attributes names and values in turn
     * @return this
     */
    public Svg open(String element, Object... attributes) {
        try {
            xml.writeStartElement(element);
            attributes(attributes);
            return this;
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    /**
     * Closes the element that was opened last.
     *
     * @return this
     */
    public Svg close() {
        try {
            xml.writeEndElement();
            return this;
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    /**
     * Writes an element without content.
     *
     * @param element its name
     * @param attributes names and values in turn
     * @return this
     */
    public Svg empty(String element, Object... attributes) {
        try {
            xml.writeEmptyElement(element);
            attributes(attributes);
            return this;
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    /**
     * Writes an element that holds words.
     *
     * @param element its name
     * @param content the words
     * @param attributes names and values in turn
     * @return this
     */
    public Svg element(String element, String content, Object... attributes) {
        open(element, attributes);
        try {
            xml.writeCharacters(content);
        } catch (XMLStreamException e) {
            throw broken(e);
        }
        return close();
    }

    /**
     * What was written.
     *
     * @return the drawing as far as it is
     */
    public String text() {
        try {
            xml.flush();
            return text.toString();
        } catch (XMLStreamException e) {
            throw broken(e);
        }
    }

    /**
     * To a hundredth, which is far below what a screen or a printer shows.
     *
     * @param value the number
     * @return as it is written
     */
    public static String number(double value) {
        return BigDecimal.valueOf(Math.round(value * 100), 2)
                .stripTrailingZeros()
                .toPlainString();
    }

    private void attributes(Object... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            Object value = attributes[i + 1];
            xml.writeAttribute(
                    String.valueOf(attributes[i]),
                    value instanceof Number number ? number(number.doubleValue()) : String.valueOf(value));
        }
    }

    /** Writing into memory fails only for a fault of ours. */
    private static IllegalStateException broken(XMLStreamException e) {
        return new IllegalStateException("The drawing cannot be written.", e);
    }
}
