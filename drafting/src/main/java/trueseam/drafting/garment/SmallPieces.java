package trueseam.drafting.garment;

import java.util.Set;
import trueseam.drafting.Bands;
import trueseam.drafting.Layers;
import trueseam.drafting.Marks;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.PieceKind;

/** The small pieces that can be drafted for a shell; they follow what they are sewn to. */
public enum SmallPieces {
    /** A straight band for a waist. */
    waistband("a straight band for the waist", GarmentKind.SKIRT, GarmentKind.TROUSERS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withWaistband(shell, BAND_MM);
        }
    },
    /** Places of belt carriers. */
    carriers(
            "belt carriers on the waistband: six, as long each as the band is high and 1 in",
            GarmentKind.SKIRT,
            GarmentKind.TROUSERS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            boolean banded = shell.pieces().stream().anyMatch(piece -> piece.kind() == PieceKind.WAISTBAND);
            return Marks.withCarriers(banded ? shell : waistband.addedTo(shell));
        }
    },
    /** A channel for a drawstring. */
    channel(
            "a channel for a drawstring; the cord is as long as the waist and 24 in to tie",
            GarmentKind.SKIRT,
            GarmentKind.TROUSERS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withChannel(shell, BAND_MM);
        }
    },
    /** Side pockets. */
    pockets("slanting side pockets on the front", GarmentKind.SKIRT, GarmentKind.TROUSERS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Marks.withPockets(shell);
        }
    },
    /** An opening for a zip. */
    placket("an opening of 8 in for a zip in the side seam", GarmentKind.SKIRT, GarmentKind.TROUSERS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Marks.withPlacket(shell);
        }
    },
    /** A buttoned front. */
    buttons("a front that is buttoned, with its buttonholes", GarmentKind.BODICE, GarmentKind.DRESS) {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Marks.withButtons(shell);
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
