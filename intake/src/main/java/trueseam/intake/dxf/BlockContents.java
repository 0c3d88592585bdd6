package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import trueseam.geometry.Path;
import trueseam.intake.apparel.OtherLine;

/** The marks of a block by what their layers mean. */
final class BlockContents {

    private final Map<ApparelLayer, List<Path>> lines = new EnumMap<>(ApparelLayer.class);
    private final Map<ApparelLayer, List<Mark.Spot>> spots = new EnumMap<>(ApparelLayer.class);
    final List<Mark.Words> words = new ArrayList<>();
    final List<OtherLine> otherLines = new ArrayList<>();
    final Set<String> unknownLayers = new TreeSet<>();
    int placings;

    private BlockContents() {}

    static BlockContents of(List<Mark> marks) {
        BlockContents contents = new BlockContents();
        for (Mark mark : marks) {
            ApparelLayer layer = ApparelLayer.of(mark.trait().layer());
            if (mark instanceof Mark.Stroke s) {
                contents.lines.computeIfAbsent(layer, l -> new ArrayList<>()).add(s.path());
                if (layer == ApparelLayer.OTHER) {
                    contents.otherLines.add(new OtherLine(mark.trait().layer(), s.path()));
                }
            } else if (mark instanceof Mark.Spot s) {
                contents.spots.computeIfAbsent(layer, l -> new ArrayList<>()).add(s);
            } else if (mark instanceof Mark.Words w) {
                contents.words.add(w);
            } else {
                contents.placings++;
            }
            if (layer == ApparelLayer.OTHER && !(mark instanceof Mark.Words)) {
                contents.unknownLayers.add(mark.trait().layer());
            }
        }
        return contents;
    }

    List<Path> lines(ApparelLayer layer) {
        return lines.getOrDefault(layer, List.of());
    }

    List<Mark.Spot> spots(ApparelLayer layer) {
        return spots.getOrDefault(layer, List.of());
    }

    /** What a text of the form {@code Key: value} says. */
    Optional<String> said(String key) {
        return words.stream()
                .flatMap(w -> Attribute.of(w.text()).stream())
                .filter(a -> a.isNamed(key) && !a.value().isEmpty())
                .map(Attribute::value)
                .findFirst();
    }
}
