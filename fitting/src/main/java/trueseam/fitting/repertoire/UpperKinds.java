package trueseam.fitting.repertoire;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import trueseam.garment.pattern.PieceKind;

/** Sets of kinds of pieces for what is done below the bust, where it does not matter how the sleeve is joined on. */
final class UpperKinds {

    static final Set<PieceKind> BODICE_BACKS = Collections.unmodifiableSet(
            EnumSet.of(PieceKind.BODICE_BACK, PieceKind.KIMONO_BACK, PieceKind.RAGLAN_BACK));

    static final Set<PieceKind> FRONTS = Collections.unmodifiableSet(
            EnumSet.of(PieceKind.BODICE_FRONT, PieceKind.DRESS_FRONT, PieceKind.KIMONO_FRONT, PieceKind.RAGLAN_FRONT));

    /** Fronts on which the neck point lies: of a raglan it is in the sleeve. */
    static final Set<PieceKind> FRONTS_WITH_NECK_POINT = Collections.unmodifiableSet(
            EnumSet.of(PieceKind.BODICE_FRONT, PieceKind.DRESS_FRONT, PieceKind.KIMONO_FRONT));

    static final Set<PieceKind> ALL = all();

    private UpperKinds() {}

    private static Set<PieceKind> all() {
        Set<PieceKind> all = EnumSet.copyOf(FRONTS);
        all.addAll(BODICE_BACKS);
        all.add(PieceKind.DRESS_BACK);
        return Collections.unmodifiableSet(all);
    }
}
