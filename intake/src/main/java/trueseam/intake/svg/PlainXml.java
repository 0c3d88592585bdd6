package trueseam.intake.svg;

import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads XML without following anything that it names: no document type, no entities, nothing outside the text. */
public final class PlainXml {

    private PlainXml() {}

    /**
     * Begins to read.
     *
     * @param text the text
     * @return a reader at its beginning
     * @throws XMLStreamException if it does not begin as XML
     */
    public static XMLStreamReader reader(String text) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setXMLResolver((publicId, systemId, baseUri, namespace) -> {
            throw new XMLStreamException("Nothing outside the file is read.");
        });
        return factory.createXMLStreamReader(new StringReader(text));
    }
}
