package trueseam.drafting.garment;

import java.util.Set;
import trueseam.drafting.Bands;
import trueseam.drafting.Layers;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.pattern.Pattern;

/** The small pieces that can be drafted for a shell; they follow what they are sewn to. */
public enum SmallPieces {
    /** A straight band for a waist. */
    waistband("a straight band for the waist", GarmentKind.SKIRT, GarmentKind.TROUSERS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withWaistband(shell, BAND_MM);
        }
    },
    /** Straight cuffs. */
    cuffs("straight cuffs", GarmentKind.BODICE, GarmentKind.DRESS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withCuffs(shell, BAND_MM);
        }
    },
    /** A straight neckband. */
    neckband("a straight band for the neck", GarmentKind.BODICE, GarmentKind.DRESS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withNeckband(shell, BAND_MM);
        }
    },
    /** A convertible collar. */
    collar("a shaped collar, worn open or closed", GarmentKind.BODICE, GarmentKind.DRESS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withCollar(shell, COLLAR_MM);
        }
    },
    /** Neck facings. */
    facings("facings for the neck", GarmentKind.BODICE, GarmentKind.DRESS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Layers.withNeckFacings(shell, FACING_MM);
        }
    },
    /** A lining of every piece. */
    lining("a lining of every piece", GarmentKind.BODICE, GarmentKind.DRESS, GarmentKind.SKIRT, GarmentKind.TROUSERS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Layers.withLining(shell);
        }
    };

    private final String about;

    private final Set<GarmentKind> kinds;

    SmallPieces(String about, GarmentKind... kinds) {
        this.about = about;
        this.kinds = Set.of(kinds);
    }

    /**
     * What it is.
     *
     * @return a few words
     */
    public String about() {
        return about;
    }

    /**
     * Whether a kind of garment has something to sew them to.
     *
     * @param kind the garment
     * @return true if they go with it
     */
    public boolean goesWith(GarmentKind kind) {
        return kinds.contains(kind);
    }

    /** Height of a band: 1 1/4 in. */
    private static final double BAND_MM = 31.75;

    /** Height of a collar at the centre back: 3 in. */
    private static final double COLLAR_MM = 76.2;

    /** Width of a facing: 2 in. */
    private static final double FACING_MM = 50.8;

    /**
     * Adds the pieces to a shell.
     *
     * @param shell the shell
     * @return the shell with them
     * @throws IllegalArgumentException if the shell has nothing to sew them to
     */
    public abstract Pattern addedTo(Pattern shell);
}
