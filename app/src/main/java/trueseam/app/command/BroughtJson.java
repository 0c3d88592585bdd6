package trueseam.app.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trueseam.intake.bring.Brought;
import trueseam.intake.bring.BroughtPiece;
import trueseam.intake.bring.BroughtSeam;
import trueseam.intake.bring.Sure;

/** What came of a drawing, for programs. */
final class BroughtJson {

    private BroughtJson() {}

    static Map<String, Object> of(String file, Brought brought) {
        List<Object> pieces = new ArrayList<>();
        brought.pieces().stream().filter(p -> p.piece().isPresent()).forEach(p -> pieces.add(piece(p)));
        List<Object> seams = new ArrayList<>();
        brought.seams().forEach(s -> seams.add(seam(s)));
        List<Object> findings = new ArrayList<>();
        for (var finding : brought.findings()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
            one.put("place", finding.place());
            one.put("sentence", finding.sentence());
            findings.add(one);
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file);
        json.put("pieces", pieces);
        json.put("seams", seams);
        json.put("findings", findings);
        return json;
    }

    private static Map<String, Object> piece(BroughtPiece piece) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("piece", piece.name());
        one.put("number", piece.number());
        one.put("kind", piece.kind().value().word());
        one.put("kind-sure", sure(piece.kind()));
        one.put("edges", piece.edges().stream().map(e -> e.name().value()).toList());
        one.put("edges-sure", piece.edges().stream().map(e -> sure(e.name())).toList());
        one.put("fold", piece.fold().value());
        one.put("fold-sure", sure(piece.fold()));
        one.put("cut", piece.cut().value());
        one.put("cut-sure", sure(piece.cut()));
        if (!piece.ask().isEmpty()) {
            one.put("ask", piece.ask());
        }
        return one;
    }

    private static Map<String, Object> seam(BroughtSeam seam) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("seam", seam.seam().value().name());
        one.put("first", seam.seam().value().first().toString());
        one.put("second", seam.seam().value().second().toString());
        one.put("first-mm", rounded(seam.firstMm()));
        one.put("second-mm", rounded(seam.secondMm()));
        one.put("sure", sure(seam.seam()));
        return one;
    }

    private static double rounded(double mm) {
        return Math.round(mm * 10) / 10.0;
    }

    private static double sure(Sure<?> what) {
        return Math.round(what.confidence() * 100) / 100.0;
    }
}
