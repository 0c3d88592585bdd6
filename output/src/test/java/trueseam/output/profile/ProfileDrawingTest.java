package trueseam.output.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import trueseam.fitting.compare.FitChoices;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.profile.EaseProfile;
import trueseam.garment.flat.BodyPart;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.measure.Measure;
import trueseam.output.Fits;

class ProfileDrawingTest {

    private static final LengthFormat INCHES = LengthFormat.inches(8);

    /** A bodice for one whose bust and waist were left alone: 38 and 30 1/2 in round, where the pattern has 39 and 29 in. */
    private static List<EaseProfile> tight() {
        FitChoices choices = FitChoices.usual(INCHES)
                .withOverrules(
                        Map.of(Measure.BUST_GIRTH, new Overrule.Leave(), Measure.WAIST_GIRTH, new Overrule.Leave()));
        return EaseProfile.of(Fitting.fit(Fits.pattern(), Fits.person(), Optional.empty(), choices));
    }

    private static List<EaseProfile> altered() {
        return EaseProfile.of(Fitting.fit(Fits.pattern(), Fits.person(), Optional.empty(), FitChoices.usual(INCHES)));
    }

    @Test
    void theTightPlaceIsHatchedNamedAndSaid() throws Exception {
        Document drawing = parsed(ProfileDrawing.document(tight(), INCHES));
        // Hatched on the girths and on the ease; the third is the sample in the legend. The arm is not tight and has
        // the sample only.
        assertThat(withClass(drawing, "ease-tight")).hasSize(3 + 1);
        assertThat(drawing.getDocumentElement().getTextContent())
                .contains("-1 1/2 in \u2013 TIGHT")
                .contains("Tight at the waist: the garment is 1\u00a01/2\u00a0in smaller than the body");
    }

    @Test
    void anAlteredGarmentHasNothingHatched() throws Exception {
        Document drawing = parsed(ProfileDrawing.document(altered(), INCHES));
        assertThat(withClass(drawing, "ease-tight")).hasSize(2);
        assertThat(drawing.getDocumentElement().getTextContent()).doesNotContain("TIGHT");
    }

    @Test
    void theDotsLieOnTheDrawnBody() throws Exception {
        EaseProfile trunk = altered().get(0);
        Document drawing = parsed(ProfileDrawing.fragment(trunk, INCHES));
        String body = withClass(drawing, "ease-body").get(0).getAttribute("d");
        String[] ends = body.substring(1).split("[CL ]+");
        List<Element> dots = withClass(drawing, "ease-dot");
        assertThat(dots).hasSize(2);
        // The curve runs from the lowest girth to the highest, the dots from the highest to the lowest.
        assertThat(Double.parseDouble(dots.get(1).getAttribute("cx")))
                .isCloseTo(Double.parseDouble(ends[0]), within(0.01));
        assertThat(Double.parseDouble(dots.get(1).getAttribute("cy")))
                .isCloseTo(Double.parseDouble(ends[1]), within(0.01));
        assertThat(Double.parseDouble(dots.get(0).getAttribute("cy")))
                .isCloseTo(Double.parseDouble(ends[ends.length - 1]), within(0.01));
        assertThat(ProfileDrawing.heightOnFragment(trunk, 0))
                .isCloseTo(Double.parseDouble(dots.get(1).getAttribute("cy")), within(0.01));
    }

    @Test
    void aFragmentHasNoLooksOfItsOwnAndSaysWhatItShows() throws Exception {
        Document drawing = parsed(ProfileDrawing.fragment(altered().get(0), INCHES));
        assertThat(drawing.getElementsByTagName("style").getLength()).isZero();
        Element svg = drawing.getDocumentElement();
        assertThat(svg.getAttribute("role")).isEqualTo("img");
        assertThat(drawing.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Trunk: garment and body by height");
        NodeList all = drawing.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            assertThat(((Element) all.item(i)).hasAttribute("style")).isFalse();
        }
    }

    @Test
    void theSpreadsheetHasALineForEveryHeightAndNoFigureWhereNothingIsKnown() {
        List<EaseProfile> profiles = altered();
        List<String> lines = ProfileCsv.text(profiles, LengthUnit.INCH).lines().toList();
        assertThat(lines.get(0)).startsWith("part,\"height (in)\",\"counted from\"");
        int readings = profiles.stream()
                .mapToInt(p -> p.readings(EaseProfile.STEP_MM).size())
                .sum();
        assertThat(lines).hasSize(1 + readings);
        // 30 1/2 in with the usual 1 in of ease, read on the altered pattern, which is proved to 0.1 mm.
        String[] waist = lines.stream()
                .filter(line -> line.startsWith("trunk,0,\"the waist\",Waist,"))
                .findFirst()
                .orElseThrow()
                .split(",");
        assertThat(List.of(waist).subList(4, 9)).startsWith("29").endsWith("30.5", "1", "-1.5");
        assertThat(Double.parseDouble(waist[5])).isCloseTo(31.5, within(0.004));
        assertThat(Double.parseDouble(waist[9])).isCloseTo(1, within(0.004));
        assertThat(lines.get(1)).contains(",,,");
    }

    @Test
    void theSentencesAreInTheUsersUnit() {
        EaseProfile trunk = tight().get(0);
        assertThat(trunk.part()).isEqualTo(BodyPart.TRUNK);
        assertThat(new ProfileWords(LengthFormat.centimetres()).tight(trunk))
                .hasSize(2)
                .anyMatch(said -> said.startsWith(
                        "Tight at the waist: the garment is 3.8 cm smaller than the body; with the least"
                                + " ease of 2.5 cm it lacks 6."));
        assertThat(new ProfileWords(INCHES).after(altered().get(0)))
                .containsExactly(
                        "After the alterations nothing is tighter than the least ease at the 2 heights that were measured.");
        assertThat(new ProfileWords(INCHES).notes(trunk))
                .anyMatch(note -> note.startsWith("Full bust: how high it lies was not measured"));
    }

    private static List<Element> withClass(Document drawing, String name) {
        List<Element> found = new ArrayList<>();
        NodeList all = drawing.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (List.of(element.getAttribute("class").split(" ")).contains(name)) {
                found.add(element);
            }
        }
        return found;
    }

    private static Document parsed(String svg) throws ParserConfigurationException, IOException, SAXException {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
