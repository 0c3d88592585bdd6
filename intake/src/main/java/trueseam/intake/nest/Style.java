package trueseam.intake.nest;

import trueseam.intake.drawing.Stroke;

/** By what lines are sorted in looking for sizes; the simplest first. */
enum Style {
    LAYER(ToldBy.OTHER_LAYERS) {
        @Override
        String of(Stroke stroke) {
            return stroke.layer();
        }

        @Override
        String inWords(Stroke stroke) {
            return "layer \"" + stroke.layer() + "\"";
        }
    },
    COLOUR(ToldBy.COLOUR) {
        @Override
        String of(Stroke stroke) {
            return stroke.look().colour();
        }

        @Override
        String inWords(Stroke stroke) {
            return "lines in the colour " + stroke.look().colour();
        }
    },
    DASHES(ToldBy.DASHES) {
        @Override
        String of(Stroke stroke) {
            return stroke.look().dashMm().toString();
        }

        @Override
        String inWords(Stroke stroke) {
            return dashes(stroke);
        }
    },
    WIDTH(ToldBy.WIDTH) {
        @Override
        String of(Stroke stroke) {
            return String.valueOf(stroke.look().widthMm());
        }

        @Override
        String inWords(Stroke stroke) {
            return "lines " + stroke.look().widthMm() + " mm wide";
        }
    },
    LOOK(ToldBy.LOOK) {
        @Override
        String of(Stroke stroke) {
            return stroke.look().toString();
        }

        @Override
        String inWords(Stroke stroke) {
            return dashes(stroke) + " in the colour " + stroke.look().colour();
        }
    };

    private final ToldBy told;

    Style(ToldBy told) {
        this.told = told;
    }

    abstract String of(Stroke stroke);

    abstract String inWords(Stroke stroke);

    ToldBy told() {
        return told;
    }

    private static String dashes(Stroke stroke) {
        return stroke.look().dashMm().isEmpty()
                ? "solid lines"
                : "lines dashed "
                        + String.join(
                                "-",
                                stroke.look().dashMm().stream()
                                        .map(mm -> String.valueOf(Math.round(mm * 10) / 10.0))
                                        .toList())
                        + " mm";
    }
}
