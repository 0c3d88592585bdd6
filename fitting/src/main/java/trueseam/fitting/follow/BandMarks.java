package trueseam.fitting.follow;

import java.util.ArrayList;
import java.util.List;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.Marking;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;

/**
 * What is marked on a band after its alteration: the notch where the shoulder or side seam meets it comes to the walked place; belt
 * carriers keep their shares of the band, the one at the side seam goes with its notch (common practice).
 */
final class BandMarks {

    /** A notch this near to where the seam meets the band marks it. */
    private static final double AT_SEAM_MM = 1;

    private static final double THERE_MM = 0.02;

    private final Edge before;
    private final Edge after;
    private final Piece band;
    private final Piece bandNow;
    private final double wasMm;
    private final double isMm;
    private final StepList list;

    private BandMarks(Piece band, Piece bandNow, String edge, double wasMm, double isMm) {
        this.band = band;
        this.bandNow = bandNow;
        this.before = band.edge(edge);
        this.after = bandNow.edge(edge);
        this.wasMm = wasMm;
        this.isMm = isMm;
        this.list = new StepList(bandNow);
    }

    static List<PieceWork> work(Pattern original, Pattern altered) {
        List<PieceWork> work = new ArrayList<>();
        for (Seam seam : original.seams()) {
            EdgeRef second = seam.second().get(0);
            Piece band = original.piece(second.piece());
            if (seam.second().size() == 1 && band.kind().isBand()) {
                Piece now = altered.piece(band.name());
                BandMarks marks =
                        new BandMarks(band, now, second.edge(), backMm(original, seam), backMm(altered, seam));
                marks.walked(original.sewnLength(seam.first()), altered.sewnLength(seam.first()));
                if (!marks.list.isEmpty()) {
                    work.add(new PieceWork(band.name(), marks.list.finished()));
                }
            }
        }
        return work;
    }

    private static double backMm(Pattern pattern, Seam seam) {
        return pattern.sewnLength(seam.first().stream()
                .filter(ref -> pattern.piece(ref.piece()).kind().isBack())
                .toList());
    }

    /** The band begins with its back or with its front: where its notch lies tells which. */
    private void walked(double wholeWasMm, double wholeIsMm) {
        List<Notch> notches = band.notches().stream()
                .filter(notch -> notch.edge().equals(before.name()))
                .toList();
        double wanted = Double.NaN;
        double was = Double.NaN;
        if (notches.size() == 1) {
            was = notches.get(0).atMm();
            if (Math.abs(was - wasMm) <= AT_SEAM_MM) {
                wanted = isMm;
            } else if (Math.abs(was - (wholeWasMm - wasMm)) <= AT_SEAM_MM) {
                wanted = wholeIsMm - isMm;
            }
        }
        if (!Double.isNaN(wanted)) {
            double now = bandNow.notches().stream()
                    .filter(notch -> notch.edge().equals(before.name()))
                    .findFirst()
                    .orElseThrow()
                    .atMm();
            if (Math.abs(wanted - now) > THERE_MM) {
                list.add(new Step.Remark(Step.Inside.NOTCH, before.name(), wanted - now, 0));
            }
        }
        carriers(was, wanted);
    }

    private void carriers(double notchWasMm, double notchIsMm) {
        for (Marking carrier : band.markings()) {
            if (carrier.is(Marking.CARRIER)) {
                double was = along(before.path(), carrier);
                boolean atTheSide = Math.abs(was - notchWasMm) <= AT_SEAM_MM && !Double.isNaN(notchIsMm);
                double wanted = atTheSide ? notchIsMm : was / before.length() * after.length();
                Marking now = bandNow.markings().stream()
                        .filter(other -> other.name().equals(carrier.name()))
                        .findFirst()
                        .orElse(carrier);
                Point is = after.path().pointAt(along(after.path(), now));
                Vec by = after.path().pointAt(Math.min(wanted, after.length())).minus(is);
                if (by.length() > THERE_MM) {
                    list.add(new Step.Remark(Step.Inside.MARKING, carrier.name(), by.x(), by.y()));
                }
            }
        }
    }

    private static double along(Path path, Marking carrier) {
        return path.nearest(carrier.path().start()).alongMm();
    }
}
