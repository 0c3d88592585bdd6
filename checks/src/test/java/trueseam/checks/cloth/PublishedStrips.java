package trueseam.checks.cloth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.cloth.packing.Placed;
import trueseam.cloth.packing.Strip;
import trueseam.cloth.packing.StripLayout;
import trueseam.cloth.packing.StripPart;
import trueseam.cloth.packing.Way;
import trueseam.geometry.Point;

/** The published instances and layouts in data/layout (sources and licences in its README). */
final class PublishedStrips {

    static final Path DATA = Path.of("..", "data", "layout");
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final Pattern USE = Pattern.compile("<use [^>]*>");
    private static final Pattern ITEM = Pattern.compile("#item_(\\d+)");
    private static final Pattern PLACE = Pattern.compile("translate\\((\\S+) (\\S+)\\), rotate\\((\\S+)\\)");

    private PublishedStrips() {}

    static Strip read(String name) throws IOException {
        JsonNode n = JSON.readTree(DATA.resolve("json").resolve(name + ".json").toFile());
        List<StripPart> parts = new ArrayList<>();
        for (JsonNode item : n.get("items")) {
            List<Way> ways = new ArrayList<>();
            for (JsonNode turn : item.get("allowed_orientations")) {
                ways.add(new Way(turn.asDouble(), false));
            }
            List<Point> outline = new ArrayList<>();
            for (JsonNode p : item.get("shape").get("data")) {
                outline.add(new Point(p.get(0).asDouble(), p.get(1).asDouble()));
            }
            // The first corner is repeated at the end.
            outline.remove(outline.size() - 1);
            parts.add(StripPart.free(
                    item.get("id").asText(), outline, item.get("demand").asInt(), ways));
        }
        return new Strip(n.get("strip_height").asDouble(), parts, List.of());
    }

    /** The densest known layout as it was published: each piece turned, then shifted. */
    static StripLayout densestKnown(String name, double length) throws IOException {
        String svg = Files.readString(DATA.resolve("records").resolve(name + ".svg"));
        List<Placed> placed = new ArrayList<>();
        Matcher use = USE.matcher(svg);
        while (use.find()) {
            Matcher item = ITEM.matcher(use.group());
            Matcher place = PLACE.matcher(use.group());
            if (item.find() && place.find()) {
                double turn = Math.rint(Double.parseDouble(place.group(3)));
                placed.add(new Placed(
                        Integer.parseInt(item.group(1)),
                        new Way(((turn % 360) + 360) % 360, false),
                        Double.parseDouble(place.group(1)),
                        Double.parseDouble(place.group(2))));
            }
        }
        return new StripLayout(length, placed);
    }

    static double density(Strip strip, double length) {
        double area = 0;
        for (StripPart part : strip.parts()) {
            double twice = 0;
            for (int i = 0, j = part.outline().size() - 1; i < part.outline().size(); j = i++) {
                Point a = part.outline().get(j);
                Point b = part.outline().get(i);
                twice += a.x() * b.y() - b.x() * a.y();
            }
            area += part.copies() * Math.abs(twice) / 2;
        }
        return area / (strip.width() * length);
    }
}
