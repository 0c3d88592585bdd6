package trueseam.output.profile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.profile.EaseProfile;
import trueseam.garment.length.LengthFormat;
import trueseam.output.svg.Svg;
import trueseam.output.words.Unbroken;

/**
 * The picture that shows where a garment will be tight: on the left how far round body and garment are at each height, on the right
 * how much room there is between them, with the least ease as a line that the garment should not cross.
 */
public final class ProfileDrawing {

    private static final double GAP = 36;
    private static final double LINE = 20;
    private static final int LETTERS = 118;

    private ProfileDrawing() {}

    /**
     * One file with every profile, one below the other, and the sentences beside them; it brings its own looks.
     *
     * @param profiles of one fit, at least one
     * @param show the user's unit
     * @return an SVG document
     */
    public static String document(List<EaseProfile> profiles, LengthFormat show) {
        List<ProfilePlot> plots =
                profiles.stream().map(profile -> new ProfilePlot(profile, show)).toList();
        double height = GAP / 2;
        for (ProfilePlot plot : plots) {
            height += plot.height() + sentences(plot.profile(), show).size() * LINE + GAP;
        }
        Svg svg = new Svg();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + Svg.number(ProfilePlot.WIDTH) + " " + Svg.number(height),
                "width",
                ProfilePlot.WIDTH,
                "height",
                height,
                "class",
                "ease-picture ease-file");
        svg.element("style", looks());
        svg.empty("rect", "class", "ease-paper", "width", ProfilePlot.WIDTH, "height", height);
        double y = GAP / 2;
        for (ProfilePlot plot : plots) {
            svg.open("g", "transform", "translate(0 " + Svg.number(y) + ")");
            plot.draw(svg);
            double line = plot.height() + LINE;
            for (String sentence : sentences(plot.profile(), show)) {
                svg.element("text", sentence, "class", "ease-sentence", "x", 20, "y", line);
                line += LINE;
            }
            svg.close();
            y += line + GAP - LINE;
        }
        return svg.close().text() + "\n";
    }

    /**
     * One profile for a page that has its own looks.
     *
     * @param profile the profile
     * @param show the user's unit
     * @return an SVG element with a title and a description
     */
    public static String fragment(EaseProfile profile, LengthFormat show) {
        ProfilePlot plot = new ProfilePlot(profile, show);
        String id = "ease-" + profile.part().word();
        Svg svg = new Svg();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + Svg.number(ProfilePlot.WIDTH) + " " + Svg.number(plot.height()),
                "class",
                "ease-picture",
                "role",
                "img",
                "aria-labelledby",
                id + "-title " + id + "-desc");
        svg.element("title", plot.title(), "id", id + "-title");
        svg.element("desc", String.join(" ", new ProfileWords(show).after(profile)), "id", id + "-desc");
        plot.draw(svg);
        return svg.close().text();
    }

    /**
     * Where the heights of a fragment lie, so that a page can point at one.
     *
     * @param profile the profile
     * @param heightMm mm above the zero of its part
     * @return how far down the fragment's view box
     */
    public static double heightOnFragment(EaseProfile profile, double heightMm) {
        return ProfilePlot.heights(profile).at(heightMm);
    }

    /**
     * Whether a height is on the fragment, which does not follow the garment far below the lowest measured girth.
     *
     * @param profile the profile
     * @param heightMm mm above the zero of its part
     * @return true if it is drawn
     */
    public static boolean isOnFragment(EaseProfile profile, double heightMm) {
        Axis heights = ProfilePlot.heights(profile);
        return heightMm <= heights.fromMm() && heightMm >= heights.toMm();
    }

    private static List<String> sentences(EaseProfile profile, LengthFormat show) {
        ProfileWords words = new ProfileWords(show);
        List<String> all = new ArrayList<>(words.after(profile));
        all.addAll(words.before(profile));
        all.addAll(words.notes(profile));
        return all.stream().flatMap(sentence -> lines(sentence).stream()).toList();
    }

    /** Broken between words so that no line runs off the file. */
    private static List<String> lines(String sentence) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Unbroken.lengths(sentence).split(" ")) {
            if (line.length() + word.length() > LETTERS) {
                lines.add(line.toString());
                line = new StringBuilder("\u2003");
            }
            line.append(line.isEmpty() || line.toString().equals("\u2003") ? "" : " ")
                    .append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static String looks() {
        try (InputStream file = ProfileDrawing.class.getResourceAsStream("ease.css")) {
            return "\n" + new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The looks of the ease profile cannot be read.", e);
        }
    }
}
