package trueseam.intake.svg;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.geometry.convert.Affine;

/** The attribute {@code transform}. Source: SVG 1.1, 7.6. */
final class Transforms {

    private static final Pattern ONE = Pattern.compile("\\s*+,?+\\s*+([a-zA-Z]+)\\s*\\(([^)]*)\\)\\s*");

    /** Editors write a handful of steps; nobody writes a book. */
    private static final int LONGEST = 10_000;

    private Transforms() {}

    /** The whole list as one placing; nothing if it cannot be read. */
    static Optional<Affine> read(String text) {
        Affine all = Affine.NONE;
        Matcher one = ONE.matcher(text);
        int at = 0;
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        while (at < text.length()) {
            if (!one.find(at) || one.start() != at) {
                return text.substring(at).isBlank() ? Optional.of(all) : Optional.empty();
            }
            Optional<Affine> step = Units.numbers(one.group(2)).flatMap(n -> step(one.group(1), n));
            if (step.isEmpty()) {
                return Optional.empty();
            }
            all = step.get().then(all);
            at = one.end();
        }
        return Optional.of(all);
    }

    private static Optional<Affine> step(String name, List<Double> n) {
        int count = n.size();
        return switch (name) {
            case "matrix" ->
                count == 6
                        ? Optional.of(new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5)))
                        : Optional.empty();
            case "translate" ->
                count == 1 || count == 2
                        ? Optional.of(new Affine(1, 0, 0, 1, n.get(0), count == 2 ? n.get(1) : 0))
                        : Optional.empty();
            case "scale" ->
                count == 1 || count == 2
                        ? Optional.of(new Affine(n.get(0), 0, 0, n.get(count - 1), 0, 0))
                        : Optional.empty();
            case "rotate" -> count == 1 || count == 3 ? Optional.of(rotation(n)) : Optional.empty();
            case "skewX" ->
                count == 1
                        ? Optional.of(new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0))
                        : Optional.empty();
            case "skewY" ->
                count == 1
                        ? Optional.of(new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0))
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static Affine rotation(List<Double> n) {
        double a = Math.toRadians(n.get(0));
        Affine turn = new Affine(Math.cos(a), Math.sin(a), -Math.sin(a), Math.cos(a), 0, 0);
        if (n.size() == 1) {
            return turn;
        }
        Affine there = new Affine(1, 0, 0, 1, -n.get(1), -n.get(2));
        Affine back = new Affine(1, 0, 0, 1, n.get(1), n.get(2));
        return there.then(turn).then(back);
    }
}
