package trueseam.output.steps;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.Stretch;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Dart;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Level;
import trueseam.garment.pattern.Piece;
import trueseam.output.words.LineWords;

/**
 * What a dressmaker calls the edges of a piece and the places on them: corners by the edges that meet there, dart legs, levels,
 * places that the steps themselves name, and else the distance from the nearer corner.
 */
final class PlaceNames {

    /** Two places nearer than a pencil's point are one. */
    private static final double SAME_PLACE_MM = 0.5;

    /** An edge that runs across the grain lies on a level and does not cross it. */
    private static final double MOSTLY_ACROSS = 0.8;

    private final Piece piece;
    private final List<Place> named = new ArrayList<>();
    private final LengthFormat show;

    PlaceNames(Piece piece, List<Step> steps, LengthFormat show) {
        this.piece = piece;
        this.show = show;
        for (Step step : steps) {
            step.read(NamedPlace.READER).ifPresent(named::add);
        }
    }

    /** For example {@code armhole}, {@code waist line}, {@code centre front}. */
    String edge(String name) {
        Edge edge = piece.edge(name);
        if (piece.edgesOf(edge.role()).size() > 1) {
            return sided(edge);
        }
        return switch (edge.role()) {
            case CENTRE -> centre(edge);
            case NECK -> piece.kind().isBand() ? "neck edge" : "neck line";
            case SHOULDER -> "shoulder seam";
            case ARMHOLE -> "armhole";
            case SIDE -> piece.kind().isTrouser() ? "outseam" : "side seam";
            case WAIST -> "waist line";
            case HEM -> "hem";
            case CAP -> "cap";
            case UNDERARM -> "underarm seam";
            case WRIST -> "wrist edge";
            case INSEAM -> "inseam";
            case CROTCH -> "crotch seam";
            case PANEL -> "panel seam";
            case YOKE -> "yoke seam";
            case RAGLAN -> "raglan seam";
            case OVERARM -> "overarm seam";
            case OTHER -> plain(edge);
        };
    }

    /** One of several edges of a role: front and back of a sleeve by the word in the edge's own name. */
    private static String sided(Edge edge) {
        String lower = edge.name().toLowerCase(Locale.ROOT);
        String side = lower.contains("front") ? "front " : lower.contains("back") ? "back " : "";
        if (side.isEmpty()) {
            return plain(edge);
        }
        return switch (edge.role()) {
            case CAP -> side + "cap";
            case UNDERARM -> side + "underarm seam";
            case PANEL -> side + "seam";
            case RAGLAN -> side + "raglan seam";
            case CENTRE, NECK, SHOULDER, ARMHOLE, SIDE, WAIST, HEM, WRIST, INSEAM, CROTCH, YOKE, OVERARM, OTHER ->
                plain(edge);
        };
    }

    private static String plain(Edge edge) {
        return edge.name().endsWith("edge") ? edge.name() : edge.name() + " edge";
    }

    private String centre(Edge edge) {
        if (piece.kind().isBand() && edge.name().startsWith("centre")) {
            return edge.name();
        }
        return piece.kind().isFront() ? "centre front" : piece.kind().isBack() ? "centre back" : "centre";
    }

    /** For example {@code the underarm point}. */
    String place(String edge, double alongMm) {
        for (Place place : named) {
            if (isSame(place, edge, alongMm)) {
                return "the " + place.word();
            }
        }
        double whole = piece.edge(edge).length();
        if (alongMm <= SAME_PLACE_MM) {
            return "the " + corner(edge, true);
        }
        if (alongMm >= whole - SAME_PLACE_MM) {
            return "the " + corner(edge, false);
        }
        return dartLeg(edge, alongMm)
                .or(() -> level(edge, alongMm))
                .orElseGet(() -> alongMm <= whole / 2
                        ? "a point " + show.show(alongMm) + " from the " + corner(edge, true)
                        : "a point " + show.show(whole - alongMm) + " from the " + corner(edge, false));
    }

    String place(Place place) {
        return "the " + place.word();
    }

    /** The same corner is the end of one edge and the start of the next. */
    private boolean isSame(Place place, String edge, double alongMm) {
        if (place.edge().equals(edge)) {
            return Math.abs(place.alongMm() - alongMm) <= SAME_PLACE_MM;
        }
        boolean atCorner =
                alongMm <= SAME_PLACE_MM || alongMm >= piece.edge(edge).length() - SAME_PLACE_MM;
        return atCorner && place.on(piece).isNear(piece.edge(edge).path().pointAt(alongMm), SAME_PLACE_MM);
    }

    /** The corner at the start or the end of an edge, without an article. */
    String corner(String edge, boolean atStart) {
        int n = piece.edges().size();
        int i = piece.indexOf(edge);
        Edge before =
                atStart ? piece.edges().get((i + n - 1) % n) : piece.edges().get(i);
        Edge after = atStart ? piece.edges().get(i) : piece.edges().get((i + 1) % n);
        Set<EdgeRole> meet = EnumSet.of(before.role(), after.role());
        return byRoles(meet, before, after).orElse("corner of " + edge(before.name()) + " and " + edge(after.name()));
    }

    private Optional<String> byRoles(Set<EdgeRole> meet, Edge before, Edge after) {
        if (meet.equals(EnumSet.of(EdgeRole.ARMHOLE, EdgeRole.SIDE))
                || meet.equals(EnumSet.of(EdgeRole.RAGLAN, EdgeRole.SIDE))
                || meet.equals(EnumSet.of(EdgeRole.UNDERARM, EdgeRole.SIDE))) {
            return Optional.of("underarm point");
        } else if (meet.equals(EnumSet.of(EdgeRole.ARMHOLE, EdgeRole.SHOULDER))
                || meet.equals(EnumSet.of(EdgeRole.OVERARM, EdgeRole.SHOULDER))) {
            return Optional.of("shoulder point");
        } else if (meet.equals(EnumSet.of(EdgeRole.SHOULDER, EdgeRole.NECK))) {
            return Optional.of("neck point");
        } else if (meet.equals(EnumSet.of(EdgeRole.NECK, EdgeRole.CENTRE))) {
            return Optional.of("neck at the " + centre(before.role() == EdgeRole.CENTRE ? before : after));
        } else if (meet.equals(EnumSet.of(EdgeRole.WAIST, EdgeRole.CENTRE))) {
            return Optional.of("waist at the " + centre(before.role() == EdgeRole.CENTRE ? before : after));
        } else if (meet.equals(EnumSet.of(EdgeRole.HEM, EdgeRole.CENTRE))) {
            return Optional.of("hem at the " + centre(before.role() == EdgeRole.CENTRE ? before : after));
        } else if (meet.equals(EnumSet.of(EdgeRole.WAIST, EdgeRole.CROTCH))) {
            return Optional.of("waist at the " + centre(before.role() == EdgeRole.CENTRE ? before : after));
        } else if (meet.equals(EnumSet.of(EdgeRole.WAIST, EdgeRole.SIDE))) {
            return Optional.of("side waist");
        } else if (meet.equals(EnumSet.of(EdgeRole.SIDE, EdgeRole.HEM))) {
            return Optional.of("side hem");
        } else if (meet.equals(EnumSet.of(EdgeRole.CROTCH, EdgeRole.INSEAM))) {
            return Optional.of("crotch point");
        } else if (meet.equals(EnumSet.of(EdgeRole.INSEAM, EdgeRole.HEM))) {
            return Optional.of("inner hem");
        } else if (meet.equals(EnumSet.of(EdgeRole.CAP))) {
            return Optional.of("crown");
        }
        return ofSleeve(meet, before, after);
    }

    private static Optional<String> ofSleeve(Set<EdgeRole> meet, Edge before, Edge after) {
        Edge seam = before.role() == EdgeRole.UNDERARM ? before : after;
        String lower = seam.name().toLowerCase(Locale.ROOT);
        String side = lower.contains("front") ? "front " : lower.contains("back") ? "back " : "";
        if (meet.equals(EnumSet.of(EdgeRole.CAP, EdgeRole.UNDERARM))
                || meet.equals(EnumSet.of(EdgeRole.RAGLAN, EdgeRole.UNDERARM))) {
            return Optional.of(side + "underarm point");
        } else if (meet.equals(EnumSet.of(EdgeRole.UNDERARM, EdgeRole.WRIST))) {
            return Optional.of(side + "wrist corner");
        } else if (meet.equals(EnumSet.of(EdgeRole.OVERARM, EdgeRole.WRIST))) {
            return Optional.of("wrist at the overarm seam");
        } else if (meet.equals(EnumSet.of(EdgeRole.RAGLAN, EdgeRole.NECK))) {
            return Optional.of("neck end of the " + sidedRaglan(before.role() == EdgeRole.RAGLAN ? before : after));
        }
        return Optional.empty();
    }

    private static String sidedRaglan(Edge seam) {
        String lower = seam.name().toLowerCase(Locale.ROOT);
        return (lower.contains("front") ? "front " : lower.contains("back") ? "back " : "") + "raglan seam";
    }

    private Optional<String> dartLeg(String edge, double alongMm) {
        for (Dart.EdgeDart dart : piece.dartsOn(edge)) {
            if (Math.abs(dart.fromMm() - alongMm) <= SAME_PLACE_MM) {
                return Optional.of("the leg of the " + dart.name() + " nearer the " + corner(edge, true));
            }
            if (Math.abs(dart.toMm() - alongMm) <= SAME_PLACE_MM) {
                return Optional.of("the leg of the " + dart.name() + " nearer the " + corner(edge, false));
            }
        }
        return Optional.empty();
    }

    private Optional<String> level(String edge, double alongMm) {
        if (Math.abs(piece.edge(edge).path().tangentAt(alongMm).x()) > MOSTLY_ACROSS) {
            return Optional.empty();
        }
        double y = piece.edge(edge).path().pointAt(alongMm).y();
        return levelAt(y).map(word -> "the " + word);
    }

    /** The line across the grain at a height, for example {@code bodice length line}. */
    Optional<String> levelAt(double y) {
        for (Level level : piece.levels()) {
            if (Math.abs(level.y() - y) <= SAME_PLACE_MM) {
                return Optional.of(LineWords.of(level.name()));
            }
        }
        return Optional.empty();
    }

    /** For example {@code the armhole from the underarm point to the shoulder point}. */
    String stretch(Stretch stretch) {
        return "the " + edge(stretch.edge()) + " from " + place(stretch.edge(), stretch.fromMm()) + " to "
                + place(stretch.edge(), stretch.toMm());
    }

    /** The same, where a whole edge needs no ends. */
    String shortStretch(Stretch stretch) {
        boolean whole = stretch.fromMm() <= SAME_PLACE_MM
                && stretch.toMm() >= piece.edge(stretch.edge()).length() - SAME_PLACE_MM;
        return whole ? "the " + edge(stretch.edge()) : stretch(stretch);
    }
}
