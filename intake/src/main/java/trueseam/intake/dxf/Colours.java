package trueseam.intake.dxf;

import java.util.List;

/** The numbered colours of DXF. Source: the colour index of the DXF reference; its wheel from 10 to 249 is a regular one. */
final class Colours {

    private static final List<String> PLAIN = List.of(
            "#000000", "#ff0000", "#ffff00", "#00ff00", "#00ffff", "#0000ff", "#ff00ff", "#000000", "#808080",
            "#c0c0c0");
    private static final List<String> GREYS = List.of("#333333", "#505050", "#696969", "#828282", "#bebebe", "#ffffff");
    private static final int[] BRIGHT = {255, 165, 127, 76, 38};

    private Colours() {}

    /** A colour by its number; 7 is the one that shows, black on paper. */
    static String of(int index) {
        int i = Math.abs(index);
        if (i < PLAIN.size()) {
            return PLAIN.get(i);
        }
        if (250 <= i && i <= 255) {
            return GREYS.get(i - 250);
        }
        if (i > 255) {
            return PLAIN.get(7);
        }
        int bright = BRIGHT[i % 10 / 2];
        boolean pale = i % 2 == 1;
        double sixth = (i / 10 - 1) / 4.0; // 24 hues round the wheel
        return hex(part(sixth, bright, pale), part(sixth + 4, bright, pale), part(sixth + 2, bright, pale));
    }

    static String ofRgb(int rgb) {
        return "#%06x".formatted(rgb & 0xffffff);
    }

    /** How much red is in a hue; green and blue are the same wheel turned by a third. */
    private static int part(double hueSixths, int bright, boolean pale) {
        double sixth = hueSixths % 6;
        double share = Math.min(1, Math.max(0, Math.abs(sixth - 3) - 1));
        double least = pale ? 0.5 : 0;
        return (int) Math.floor(bright * (least + (1 - least) * share));
    }

    private static String hex(int red, int green, int blue) {
        return "#%02x%02x%02x".formatted(red, green, blue);
    }
}
