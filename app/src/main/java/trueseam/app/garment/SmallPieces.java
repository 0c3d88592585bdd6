package trueseam.app.garment;

import trueseam.drafting.Bands;
import trueseam.drafting.Layers;
import trueseam.garment.pattern.Pattern;

/** The small pieces that can be drafted for a shell; they follow what they are sewn to. */
public enum SmallPieces {
    /** A straight band for a waist. */
    waistband {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withWaistband(shell, BAND_MM);
        }
    },
    /** Straight cuffs. */
    cuffs {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withCuffs(shell, BAND_MM);
        }
    },
    /** A straight neckband. */
    neckband {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Bands.withNeckband(shell, BAND_MM);
        }
    },
    /** Neck facings. */
    facings {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Layers.withNeckFacings(shell, FACING_MM);
        }
    },
    /** A lining of every piece. */
    lining {
        @Override
        public Pattern addedTo(Pattern shell) {
            return Layers.withLining(shell);
        }
    };

    /** Height of a band: 1 1/4 in. */
    private static final double BAND_MM = 31.75;

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
