package trueseam.worktable.cloth;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import trueseam.cloth.need.Needed;
import trueseam.cloth.need.WidthNeed;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.length.LengthUnit;
import trueseam.output.cloth.LayJson;
import trueseam.output.cloth.LaySheet;
import trueseam.output.cloth.LaySvg;
import trueseam.output.sheet.SheetPaper;
import trueseam.output.words.ClothWords;
import trueseam.worktable.project.ClothPart.Lengths;

/** What can be taken away of a layout. */
enum ClothFile {
    PDF(
            "layout.pdf",
            "application/pdf",
            "Layout to pin by",
            "a picture at scale, and where both ends of every grainline lie"),
    SVG("layout.svg", "image/svg+xml", "Drawing", "the pieces on the cloth at true scale"),
    JSON("layout.json", "application/json", "Figures", "every place and length, in millimetres");

    private static final ObjectMapper WRITER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private final String word;
    private final String type;
    private final String label;
    private final String about;

    ClothFile(String word, String type, String label, String about) {
        this.word = word;
        this.type = type;
        this.label = label;
        this.about = about;
    }

    static Optional<ClothFile> named(String word) {
        return Arrays.stream(values()).filter(f -> f.word.equals(word)).findFirst();
    }

    String word() {
        return word;
    }

    String type() {
        return type;
    }

    String label() {
        return label;
    }

    String about() {
        return about;
    }

    /** Made now, of a layout that was proved. */
    byte[] of(Plan plan, LengthFormat show) {
        String title = plan.pattern().name();
        List<WidthNeed> needs = needs(plan);
        return switch (this) {
            case PDF ->
                LaySheet.pdf(
                        title,
                        plan.lay(),
                        needs,
                        show,
                        show.unit() == LengthUnit.INCH ? SheetPaper.LETTER : SheetPaper.A4);
            case SVG -> utf8(LaySvg.of(title, plan.lay()));
            case JSON -> utf8(json(plan, needs, show));
        };
    }

    private static List<WidthNeed> needs(Plan plan) {
        Lengths lengths = plan.choices().one().lengths();
        return lengths.task().equals(plan.laying().mark())
                ? lengths.widths().stream()
                        .map(w -> new WidthNeed(
                                w.width(),
                                w.why().isEmpty()
                                        ? Optional.of(new Needed(w.needed(), w.toBuy(), w.density()))
                                        : Optional.empty(),
                                w.why()))
                        .toList()
                : List.of();
    }

    private static String json(Plan plan, List<WidthNeed> needs, LengthFormat show) {
        int rounds = plan.kept() ? plan.choices().one().rounds() : 0;
        try {
            return WRITER.writeValueAsString(
                    LayJson.of(plan.lay(), needs, plan.choices().seed(), rounds, ClothWords.shop(show)));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a layout in figures is plain text", e);
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
