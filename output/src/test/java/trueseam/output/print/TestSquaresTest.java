package trueseam.output.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trueseam.garment.length.LengthFormat;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/** Measures page one as a dressmaker would: the squares are found by their words and their lines in the picture of the page. */
class TestSquaresTest {

    private static final double DPI = 600;

    /** The design's bound on printed scale. */
    private static final double SCALE = 0.001;

    static Stream<Paper> papers() {
        return Stream.concat(Paper.sheets().stream(), Stream.of(new Paper.Roll(914.4)));
    }

    private static byte[] print(Paper paper) {
        return FullSizePrint.of(Samples.bodice(), PrintOptions.usual(paper, LengthFormat.inches(8), "Anna"), List.of())
                .pdf();
    }

    @ParameterizedTest
    @MethodSource("papers")
    void bothSquaresHaveTheirSize(Paper paper) throws IOException {
        try (PDDocument read = Loader.loadPDF(print(paper))) {
            for (String name : List.of("50 mm", "2 in")) {
                Point words = words(read, name);
                Bounds around = new Bounds(words.x(), words.y(), words.x(), words.y()).grown(45);
                Scan scan = Scan.of(read, 0, around, DPI);
                checkSquare(scan, words, name.equals("2 in") ? 50.8 : 50);
            }
        }
    }

    private static Point words(PDDocument read, String name) throws IOException {
        return Words.of(read, 0).stream()
                .filter(w -> w.text().equals(name))
                .findFirst()
                .orElseThrow()
                .at();
    }

    /** Looks out from a point above the words, which stand in the middle, to the four sides. */
    private static void checkSquare(Scan scan, Point words, double side) {
        Point from = words.plus(new Vec(5, 12));
        double left = scan.firstLine(from, new Vec(-1, 0), 42);
        double right = scan.firstLine(from, new Vec(1, 0), 42);
        double up = scan.firstLine(from, new Vec(0, 1), 30);
        Point low = words.plus(new Vec(5, -9));
        double down = scan.firstLine(low, new Vec(0, -1), 30);
        assertThat(left + right).isCloseTo(side, within(side * SCALE));
        assertThat(up + 21 + down).isCloseTo(side, within(side * SCALE));
    }

    @Test
    void anotherRendererFindsTheSamePagesAndTheSameSquares(@TempDir Path folder) throws Exception {
        // poppler, through its programs pdfinfo and pdftoppm: a reader of PDF that shares no code with the writer.
        byte[] pdf = print(Paper.LETTER);
        Path file = folder.resolve("print.pdf");
        Files.write(file, pdf);
        int pages;
        Point mm;
        Point inch;
        try (PDDocument read = Loader.loadPDF(pdf)) {
            pages = read.getNumberOfPages();
            mm = words(read, "50 mm");
            inch = words(read, "2 in");
        }
        String info = run(folder, "pdfinfo", "-f", "1", "-l", String.valueOf(pages), "print.pdf");
        assertThat(info)
                .contains("Pages:           " + pages)
                .contains("Title:           bodice for misses 14, for Anna");
        // US Letter is 8 1/2 by 11 in, so 612 by 792 pt.
        assertThat(info.lines().filter(l -> l.contains("size:") && l.contains("612 x 792 pts")))
                .hasSize(pages);
        run(folder, "pdftoppm", "-r", "600", "-gray", "-png", "-f", "1", "-l", "1", "-singlefile", "print.pdf", "one");
        BufferedImage image = ImageIO.read(folder.resolve("one.png").toFile());
        Scan scan = new Scan(image, DPI, Point.ORIGIN);
        checkSquare(scan, mm, 50);
        checkSquare(scan, inch, 50.8);
    }

    private static String run(Path folder, String... command) throws IOException, InterruptedException {
        File out = folder.resolve("out.txt").toFile();
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(out)
                .start();
        int code = process.waitFor();
        String said = Files.readString(out.toPath(), StandardCharsets.UTF_8);
        assertThat(code).as(said).isZero();
        return said;
    }
}
