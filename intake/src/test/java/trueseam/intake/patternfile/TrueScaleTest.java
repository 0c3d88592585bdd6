package trueseam.intake.patternfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * The drawing as a browser sees it, worked out again without the code under test: DOM for the tree, java.awt.geom for the
 * shapes. Source for lengths: SVG 1.1 (second edition), 7.2, 7.7; an {@code mm} of width shows {@code viewBox width / width}
 * user units.
 */
class TrueScaleTest {

    private static Element root(String text) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder()
                .parse(new InputSource(new StringReader(text)))
                .getDocumentElement();
    }

    private static List<Element> elements(Element from, String name) {
        NodeList all = from.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            found.add((Element) all.item(i));
        }
        return found;
    }

    /** Absolute M, L, C and Z, which is all that is written. */
    private static Path2D shape(String data) {
        Path2D shape = new Path2D.Double();
        String[] words = data.replaceAll("([MLCZ])", " $1 ").strip().split("\\s+");
        for (int i = 0; i < words.length; ) {
            String command = words[i];
            double[] n = new double[command.equals("C") ? 6 : command.equals("Z") ? 0 : 2];
            for (int k = 0; k < n.length; k++) {
                n[k] = Double.parseDouble(words[i + 1 + k]);
            }
            switch (command) {
                case "M" -> shape.moveTo(n[0], n[1]);
                case "L" -> shape.lineTo(n[0], n[1]);
                case "C" -> shape.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
                case "Z" -> shape.closePath();
                default -> throw new IllegalArgumentException("command " + command);
            }
            i += 1 + n.length;
        }
        return shape;
    }

    private static Element edge(Element root, String name) {
        return elements(root, "path").stream()
                .filter(e -> e.getAttribute("data-edge").equals(name)
                        && e.getAttribute("data-line").equals("stitching"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void oneUserUnitIsOneMillimetre() throws Exception {
        Element root = root(PatternFile.write(Blocks.pattern()));
        String[] box = root.getAttribute("viewBox").split(" ");
        assertThat(root.getAttribute("width")).isEqualTo(box[2] + "mm");
        assertThat(root.getAttribute("height")).isEqualTo(box[3] + "mm");
        Element square = elements(root, "rect").get(0);
        assertThat(square.getAttribute("width")).isEqualTo("50");
        assertThat(square.getAttribute("height")).isEqualTo("50");
        // Blocks.front: the hem is 250 mm wide, and the shoulder rises 40 mm over 120 mm.
        Rectangle2D hem = shape(edge(root, "hem").getAttribute("d")).getBounds2D();
        assertThat(hem.getWidth()).isEqualTo(250);
        Rectangle2D shoulder = shape(edge(root, "shoulder").getAttribute("d")).getBounds2D();
        assertThat(shoulder.getHeight()).isEqualTo(40);
        assertThat(shoulder.getWidth()).isEqualTo(120);
    }

    @Test
    void piecesLieOnTheSheetUprightAndApart() throws Exception {
        Element root = root(PatternFile.write(Blocks.pattern()));
        String[] box = root.getAttribute("viewBox").split(" ");
        Rectangle2D sheet = new Rectangle2D.Double(0, 0, Double.parseDouble(box[2]), Double.parseDouble(box[3]));
        List<Rectangle2D> pieces = new ArrayList<>();
        for (Element group : elements(root, "g")) {
            if (group.hasAttribute("data-piece")) {
                String[] shift = group.getAttribute("transform")
                        .replaceAll("translate\\(|\\)", "")
                        .split(" ");
                Path2D all = new Path2D.Double();
                for (Element path : elements(group, "path")) {
                    all.append(shape(path.getAttribute("d")), false);
                }
                Rectangle2D bounds = all.getBounds2D();
                pieces.add(new Rectangle2D.Double(
                        bounds.getX() + Double.parseDouble(shift[0]),
                        bounds.getY() + Double.parseDouble(shift[1]),
                        bounds.getWidth(),
                        bounds.getHeight()));
            }
        }
        assertThat(pieces).hasSize(2).allMatch(sheet::contains);
        assertThat(pieces.get(0).intersects(pieces.get(1))).isFalse();
        // The shoulder is above the hem as seen.
        assertThat(shape(edge(root, "shoulder").getAttribute("d")).getBounds2D().getMaxY())
                .isLessThan(
                        shape(edge(root, "hem").getAttribute("d")).getBounds2D().getMinY());
    }

    @Test
    void theCuttingLineLiesTheAllowanceOutsideAStraightEdge() throws Exception {
        Element root = root(PatternFile.write(Blocks.pattern()));
        Element back = elements(root, "g").stream()
                .filter(g -> g.getAttribute("data-piece").startsWith("back"))
                .findFirst()
                .orElseThrow();
        Element cutting = elements(back, "path").stream()
                .filter(p -> p.getAttribute("data-line").equals("cutting"))
                .findFirst()
                .orElseThrow();
        Rectangle2D bounds = shape(cutting.getAttribute("d")).getBounds2D();
        // Blocks.back: 15 mm beyond the centre at x = 0, and a hem of 50 mm below y = 0.
        assertThat(bounds.getMinX()).isCloseTo(-15, within(1e-9));
        assertThat(bounds.getMaxY()).isCloseTo(50, within(1e-9));
    }
}
