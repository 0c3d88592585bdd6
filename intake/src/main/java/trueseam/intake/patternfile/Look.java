package trueseam.intake.patternfile;

/**
 * How the drawing looks: lines told apart by their dashes and weight, not by colour. Common practice on paper patterns: the
 * cutting line solid, the stitching line dashed, the grainline with a head at both ends, a crossed circle at the bust point.
 */
final class Look {

    static final String STYLE = """
              <style>
                svg { background: #fff; }
                path, line, circle, rect { fill: none; stroke: #111; stroke-width: 0.4; stroke-linejoin: round; }
                .cutting { stroke-width: 0.7; }
                .stitching { stroke-dasharray: 5 2.5; }
                .fold { stroke-width: 0.7; stroke-dasharray: 14 3 2 3; }
                .dart { stroke-dasharray: 3 2; }
                .notch { stroke-width: 0.7; }
                .level { stroke-width: 0.25; stroke-dasharray: 10 3 1.5 3 1.5 3; }
                .internal { stroke-dasharray: 8 1.5; }
                .original { stroke-width: 0.35; stroke-dasharray: 4 2.5; }
                .wiped { stroke: #fff; stroke-width: 1.2; }
                .altered .stitching, .altered .dart { stroke-dasharray: none; stroke-width: 0.6; }
                .altered .cutting { stroke-width: 0.25; }
                text { font-family: sans-serif; font-size: 4.5px; fill: #111; stroke: none; }
                .middle { text-anchor: middle; }
                .toleft { text-anchor: end; }
                .name { font-size: 9px; }
                .head { fill: #111; }
              </style>
            """;

    /** What the lines mean, for the line under the title. */
    static final String LEGEND =
            "Solid: cutting line. Dashed: stitching line. Dash and dot: fold. All lengths in mm, drawn at true scale.";

    static final String LEGEND_ALTERED =
            "Thick solid: stitching line as altered. Dashed: stitching line as it was. Thin"
                    + " solid: cutting line as altered. Dash and dot: fold. All lengths in mm, drawn at true scale.";

    private Look() {}
}
