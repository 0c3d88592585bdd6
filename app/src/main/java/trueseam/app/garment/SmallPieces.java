package trueseam.app.garment;

import trueseam.app.input.InputException;
import trueseam.drafting.Bands;
import trueseam.drafting.Layers;
import trueseam.garment.pattern.Pattern;

/** The small pieces that can be drafted for a shell; they follow what they are sewn to. */
public enum SmallPieces {
    /** A straight band for a waist. */
    waistband {
        @Override
        Pattern drafted(Pattern shell) {
            return Bands.withWaistband(shell, BAND_MM);
        }
    },
    /** Straight cuffs. */
    cuffs {
        @Override
        Pattern drafted(Pattern shell) {
            return Bands.withCuffs(shell, BAND_MM);
        }
    },
    /** A straight neckband. */
    neckband {
        @Override
        Pattern drafted(Pattern shell) {
            return Bands.withNeckband(shell, BAND_MM);
        }
    },
    /** Neck facings. */
    facings {
        @Override
        Pattern drafted(Pattern shell) {
            return Layers.withNeckFacings(shell, FACING_MM);
        }
    },
    /** A lining of every piece. */
    lining {
        @Override
        Pattern drafted(Pattern shell) {
            return Layers.withLining(shell);
        }
    };

    /** Height of a band: 1 1/4 in. */
    private static final double BAND_MM = 31.75;

    /** Width of a facing: 2 in. */
    private static final double FACING_MM = 50.8;

    abstract Pattern drafted(Pattern shell);

    /**
     * Adds the pieces to a shell.
     *
     * @param shell the shell
     * @return the shell with them
     * @throws InputException if the shell has nothing to sew them to
     */
    public Pattern addedTo(Pattern shell) {
        try {
            return drafted(shell);
        } catch (IllegalArgumentException e) {
            throw new InputException("--with " + name() + ": " + e.getMessage());
        }
    }
}
