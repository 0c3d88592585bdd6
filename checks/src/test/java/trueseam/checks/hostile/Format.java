package trueseam.checks.hostile;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.drafting.Allowances;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.garment.Garment;
import trueseam.fitting.work.WorkedPattern;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.dxf.RuleTable;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.patternfile.PatternFile;
import trueseam.intake.size.SizeTables;
import trueseam.output.dxf.ApparelDxf;
import trueseam.output.print.FullSizePrint;
import trueseam.output.print.Paper;
import trueseam.output.print.PrintOptions;

/** A kind of file that people bring, a whole one of it, and the whole way that it goes. Patterns: drafted, their figures invented. */
enum Format {
    SVG {
        @Override
        byte[] whole() {
            String drawn = PatternFile.write(drafted(Garment.bodice))
                    .replaceAll("(?s)<metadata.*?</metadata>", "")
                    .replaceAll(" data-[a-z-]+=\"[^\"]*\"", "");
            int in = drawn.indexOf('>', drawn.indexOf("<svg")) + 1;
            return bytes(drawn.substring(0, in)
                    + "<style>.thin{stroke-width:1;fill:none} #mark{stroke:#f00}</style><defs><g id=\"a\"><rect x=\"5\" y=\"5\""
                    + " width=\"50.8\" height=\"50.8\" rx=\"3\" class=\"thin\" stroke=\"black\"/><ellipse cx=\"9\" cy=\"9\" rx=\"4\" ry=\"2\"/>"
                    + "</g></defs><use href=\"#a\" transform=\"translate(9 9) rotate(30) skewX(3)\"/><g transform=\"scale(1.5)\">"
                    + "<polygon points=\"0,0 300,0 300,400 0,400\" stroke=\"#00f\" fill=\"none\"/><text x=\"20\" y=\"30\">cut 2 front"
                    + "</text></g>"
                    + drawn.substring(in));
        }
    },
    DXF {
        @Override
        byte[] whole() {
            return ApparelDxf.write(drafted(Garment.skirt)).getBytes(StandardCharsets.US_ASCII);
        }
    },
    PLT {
        @Override
        byte[] whole() {
            return bytes(
                    "\u001b.(;IN;IP0,0,4000,4000;SC0,100,0,100;SP1;PU10,10;PD20,10,20,30;PA10,10;SC;AA400,400,90,5;CI300;"
                            + "EA2000,900;LT2;PD1000,1000;LT;PW0.3;BZ0,0,100,100,200,0;PM0;PD5,5,9,9;PM2;EP;LBFront 12\u0003;SP2;PA;"
                            + "PU0,0;PD10000,0,9000,8000,4000,12000,0,11000,0,0;PU2000,2000;PD2000,9000;PU5000,0;PD5500,4000,6000,0;PU;"
                            + "PU20000,0;PD30000,0,30000,9000,20000,9000,20000,0;PU;SP0;");
        }
    },
    PDF {
        @Override
        byte[] whole() {
            PrintOptions options = PrintOptions.usual(Paper.A0, LengthFormat.centimetres(), "");
            return FullSizePrint.of(WorkedPattern.of(drafted(Garment.skirt)), options, List.of())
                    .pdf();
        }
    },
    /** A file whose name does not tell what it is: a small DXF file that has lines only. */
    UNNAMED {
        @Override
        byte[] whole() {
            return bytes("""
                    999
                    a remark
                    0
                    SECTION
                    2
                    ENTITIES
                    0
                    LINE
                    8
                    1
                    10
                    0
                    20
                    0
                    11
                    500
                    21
                    0
                    0
                    CIRCLE
                    8
                    1
                    10
                    200
                    20
                    200
                    40
                    150
                    0
                    ENDSEC
                    0
                    EOF
                    """);
        }
    },
    PATTERN {
        @Override
        byte[] whole() {
            return bytes(PatternFile.write(drafted(Garment.bodice)));
        }

        @Override
        void take(byte[] content) {
            PatternFile.read(file(), new String(content, StandardCharsets.UTF_8));
        }
    },
    RULES {
        @Override
        byte[] whole() {
            StringBuilder table =
                    new StringBuilder("UNITS: METRIC\nNUMBER OF SIZES: 3\nSIZE LIST: 12 14 16\nSAMPLE SIZE: 12\n");
            for (int i = 1; i < 40; i++) {
                table.append("RULE: DELTA ")
                        .append(i)
                        .append("\n0 0 ")
                        .append(i)
                        .append(" 2.5\n-3 1.25\n");
            }
            return bytes(table.toString());
        }

        @Override
        void take(byte[] content) {
            RuleTable.read(file(), new String(content, StandardCharsets.ISO_8859_1));
        }
    };

    private static final BringChoices INSET =
            new BringChoices("", "14", "misses", OptionalDouble.of(10), 15, Map.of(), Optional.empty());

    abstract byte[] whole();

    String file() {
        return "x." + name().toLowerCase(java.util.Locale.ROOT);
    }

    /** As {@code bring-in} does it: reads the file, makes a pattern of it in two ways, writes it. */
    void take(byte[] content) {
        Drawing drawing = DrawingFiles.read(file(), content, ReadChoices.NONE);
        Pattern pattern = Bringing.of(drawing, BringChoices.usual(15.875)).pattern();
        PatternFile.write(pattern);
        Bringing.of(drawing, INSET);
    }

    private static Pattern drafted(Garment garment) {
        return garment.draft(DraftFigure.of(SizeTables.named("misses"), "14"), Allowances.inches());
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
