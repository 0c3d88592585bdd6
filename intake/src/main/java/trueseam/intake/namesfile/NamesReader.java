package trueseam.intake.namesfile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthTextException;
import trueseam.garment.length.LengthUnit;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;
import trueseam.intake.naming.EdgeWords;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.EdgeSaid;
import trueseam.intake.said.Frame;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.MarkSaid;
import trueseam.intake.said.PieceCorrection;
import trueseam.intake.said.SeamSaid;
import trueseam.intake.sheet.SheetException;

/** Reads a names file, line by line. One file, one thread. */
final class NamesReader {

    static final String LEFT_OUT = "left out";
    static final String NONE = "none";

    private static final String NUMBER = "(-?\\d{1,6}(?:\\.\\d{1,6})?)";
    private static final String POINT = NUMBER + "\\s+right,?\\s+" + NUMBER + "\\s+up";
    private static final Pattern FACT = Pattern.compile("([^:]+):(.*)");
    private static final Pattern PIECE = Pattern.compile("piece\\s+(\\d{1,4})");
    private static final Pattern PLACE = Pattern.compile(POINT);
    private static final Pattern FRAME =
            Pattern.compile(POINT + ",?\\s+" + NUMBER + "\\s+wide,?\\s+" + NUMBER + "\\s+high");
    private static final Pattern EDGE = Pattern.compile("([^,()]+?)(?:\\s*\\(([^)]*)\\))?\\s*,\\s*" + POINT
            + ",?\\s+to\\s+" + POINT + "(?:,?\\s+" + NUMBER + "\\s+long)?");
    private static final Pattern ALLOWANCE = Pattern.compile("(\\w+)(?:\\s*,\\s*(.+?)(?:\\s+allowance)?)?");

    private final String file;
    private final List<PieceCorrection> pieces = new ArrayList<>();
    private final List<SeamSaid> seams = new ArrayList<>();
    private final Set<Integer> numbers = new HashSet<>();
    private Optional<PieceCorrection> open = Optional.empty();
    private int at;

    NamesReader(String file) {
        this.file = file;
    }

    Corrections read(String text) {
        for (String whole : text.replace("\uFEFF", "").split("\\R", -1)) {
            at++;
            int remark = whole.indexOf('#');
            String line = (remark < 0 ? whole : whole.substring(0, remark)).strip();
            if (!line.isEmpty()) {
                Matcher fact = FACT.matcher(line);
                if (!fact.matches()) {
                    throw wrong(
                            line,
                            "write a fact as a word, a colon and what it is, such as \"cut: 2\", and remarks behind a #");
                }
                fact(
                        fact.group(1).strip().toLowerCase(java.util.Locale.ROOT),
                        fact.group(2).strip());
            }
        }
        open.ifPresent(pieces::add);
        return new Corrections(pieces, seams);
    }

    private void fact(String word, String value) {
        Matcher piece = PIECE.matcher(word);
        if (piece.matches()) {
            begin(Integer.parseInt(piece.group(1)), value);
            return;
        }
        switch (word) {
            case "seam" -> seams.add(seam(value));
            case "no seam" -> seams.add(noSeam(value));
            case "place" -> add(p -> p.at(p.number(), frame(value)));
            case "name" -> add(p -> p.called(name(value)));
            case "cut" -> add(p -> p.cut(count(value)));
            case "fold" -> add(p -> p.onFold(value.equalsIgnoreCase(NONE) ? "" : name(value)));
            case "line" -> add(p -> drawn(p, value));
            case "edge" -> add(p -> p.with(edge(p, value)));
            case "dart" -> add(p -> p.with(new MarkSaid(MarkSaid.What.DART, place(value), true)));
            case "no dart" -> add(p -> p.with(new MarkSaid(MarkSaid.What.DART, place(value), false)));
            case "notch" -> add(p -> p.with(new MarkSaid(MarkSaid.What.NOTCH, place(value), true)));
            case "no notch" -> add(p -> p.with(new MarkSaid(MarkSaid.What.NOTCH, place(value), false)));
            default ->
                throw wrong(
                        word + ":",
                        "a line begins with piece and its number, place, name, cut, fold, line, edge, dart, no dart, notch, no"
                                + " notch, seam or no seam");
        }
    }

    private void begin(int number, String value) {
        open.ifPresent(pieces::add);
        if (number < 1 || !numbers.add(number)) {
            throw wrong(
                    "piece " + number,
                    number < 1
                            ? "pieces are counted from 1, the largest first"
                            : "it is told twice; put all of its lines into one place");
        }
        PieceCorrection piece = PieceCorrection.of(number);
        if (value.equalsIgnoreCase(LEFT_OUT)) {
            open = Optional.of(piece.leftOut(true));
        } else if (value.isEmpty()) {
            open = Optional.of(piece);
        } else {
            open = Optional.of(piece.asKind(PieceKind.ofWord(value)
                    .orElseThrow(() -> wrong(
                            value,
                            "that is no kind of piece; write one such as bodice front, sleeve or waistband (the first lines of a"
                                    + " file that bring-in wrote have them all), or left out"))));
        }
    }

    private void add(java.util.function.UnaryOperator<PieceCorrection> how) {
        if (open.isEmpty()) {
            throw wrong("it", "it stands before the first piece; begin with a line such as \"piece 1: bodice front\"");
        }
        open = open.map(how);
    }

    private Frame frame(String value) {
        Matcher m = matched(FRAME, value, "\"12.0 right 400.0 up, 300.0 wide 500.0 high\"");
        return new Frame(number(m, 1), number(m, 2), number(m, 3), number(m, 4));
    }

    private Point place(String value) {
        Matcher m = matched(PLACE, value, "\"120.0 right 300.5 up\"");
        return new Point(number(m, 1), number(m, 2));
    }

    private EdgeSaid edge(PieceCorrection piece, String value) {
        Matcher m = matched(EDGE, value, "\"waist, 0.0 right 2.5 up to 230.0 right 0.0 up, 233.0 long\"");
        String name = name(m.group(1));
        EdgeRole role = m.group(2) == null
                ? EdgeWords.role(piece.kind().orElse(PieceKind.OTHER), name)
                : EdgeRole.ofWord(m.group(2))
                        .orElseThrow(() -> wrong(
                                m.group(2),
                                "in brackets stands what the edge is: "
                                        + java.util.Arrays.stream(EdgeRole.values())
                                                .map(EdgeRole::word)
                                                .collect(java.util.stream.Collectors.joining(", "))));
        return new EdgeSaid(
                name,
                role,
                new Point(number(m, 3), number(m, 4)),
                new Point(number(m, 5), number(m, 6)),
                m.group(7) == null ? OptionalDouble.empty() : OptionalDouble.of(number(m, 7)));
    }

    private PieceCorrection drawn(PieceCorrection piece, String value) {
        Matcher m = matched(ALLOWANCE, value, "\"stitching\", \"inner\" or \"cutting, 5/8 in allowance\"");
        LineTaken taken = LineTaken.ofWord(m.group(1))
                .orElseThrow(() -> wrong(m.group(1), "a line is stitching, cutting or inner"));
        return piece.drawnAs(
                taken, m.group(2) == null ? OptionalDouble.empty() : OptionalDouble.of(length(m.group(2), 0.1, 200)));
    }

    private int count(String value) {
        if (!value.matches("[1-9]\\d?")) {
            throw wrong(value, "a number from 1 to 99 is expected: how many are cut");
        }
        return Integer.parseInt(value);
    }

    private SeamSaid seam(String value) {
        String[] parts = value.split(";", -1);
        if (parts.length < 3 || parts.length > 4) {
            throw wrong(
                    value,
                    "a seam is \"name; piece / edge; piece / edge; 0.0 mm ease\", the ease only where there is some");
        }
        OptionalDouble ease = parts.length == 4
                ? OptionalDouble.of(length(parts[3].strip().replaceAll("\\s+ease$", ""), -500, 500))
                : OptionalDouble.empty();
        return new SeamSaid(name(parts[0]), side(parts[1]), side(parts[2]), ease, true);
    }

    private SeamSaid noSeam(String value) {
        String[] parts = value.split(";", -1);
        if (parts.length != 2) {
            throw wrong(value, "what is not sewn together is \"piece / edge; piece / edge\"");
        }
        return new SeamSaid("", side(parts[0]), side(parts[1]), OptionalDouble.empty(), false);
    }

    private List<EdgeRef> side(String text) {
        List<EdgeRef> side = new ArrayList<>();
        for (String one : text.split("\\+", -1)) {
            String[] parts = one.split("/", -1);
            if (parts.length != 2) {
                throw wrong(one.strip(), "an edge of a seam is \"piece / edge\", such as \"bodice front / side\"");
            }
            side.add(new EdgeRef(name(parts[0]), name(parts[1])));
        }
        return side;
    }

    private String name(String text) {
        String name = text.strip();
        if (name.isEmpty() || !name.equals(PieceCorrection.plainName(name))) {
            throw wrong(text.strip(), "a name is expected, without any of the signs ; / + # :");
        }
        return name;
    }

    private double length(String text, double least, double most) {
        try {
            boolean less = text.startsWith("-");
            double mm = (less ? -1 : 1)
                    * Length.parse(less ? text.substring(1) : text, LengthUnit.MILLIMETRE)
                            .mm();
            if (least <= mm && mm <= most) {
                return mm;
            }
            throw wrong(text, "a length from " + least + " to " + most + " mm is expected");
        } catch (LengthTextException e) {
            throw wrong(text, "a length is expected, such as 15.9 mm or 5/8 in");
        }
    }

    private Matcher matched(Pattern pattern, String value, String such) {
        Matcher m = pattern.matcher(value);
        if (!m.matches()) {
            throw wrong(value, "it should read such as " + such);
        }
        return m;
    }

    private static double number(Matcher m, int group) {
        return Double.parseDouble(m.group(group));
    }

    private SheetException wrong(String what, String expected) {
        String shown = what.length() > 60 ? what.substring(0, 60) + "..." : what;
        return new SheetException(file, at, "\"" + shown + "\" cannot be read: " + expected + ".");
    }
}
