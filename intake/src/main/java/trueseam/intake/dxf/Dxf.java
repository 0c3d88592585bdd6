package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.LengthUnit;
import trueseam.geometry.GeometryException;
import trueseam.geometry.convert.Affine;
import trueseam.intake.apparel.ApparelPieces;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Stroke;

/** Reads DXF files, release 12 to 2018, and the pattern pieces of those that keep to the apparel convention (ASTM D6673). */
public final class Dxf {

    private Dxf() {}

    /**
     * Reads a file.
     *
     * @param file what it is called, for messages
     * @param bytes what it holds
     * @param unit the unit that its user says it is drawn in; if none is said, what the file says
     * @return the drawing in mm, its unit, and its pattern pieces
     * @throws DrawingException if it is no ASCII DXF file, draws blocks inside themselves, or is larger than any pattern
     */
    public static DxfReading read(String file, byte[] bytes, Optional<LengthUnit> unit) {
        Sections sections = Sections.of(file, Encoding.text(file, bytes));
        Notes notes = new Notes(file);
        if (!sections.isWhole()) {
            notes.say(Finding.failure(
                    file, "the file ends before its EOF: part of the drawing is missing. Save or copy it again."));
        }
        UnitSearch units = new UnitSearch(sections, notes);
        DrawingUnit taken = units.find(unit);
        EntityReader reader = new EntityReader(taken.mm(), notes);
        List<Placer.Drawn> blocks = new ArrayList<>();
        for (Block block : sections.blocks) {
            if (!block.isSheet()) {
                blocks.add(drawn(block, reader, taken.mm(), notes));
            }
        }
        List<Mark> sheet = reader.read(sections.entities);
        boolean apparel = blocks.stream().anyMatch(Dxf::isPiece);
        Placer placer = new Placer(file, blocks, new Looks(sections, taken.mm(), notes), notes, apparel);
        placer.place(sheet);
        if (placer.strokes.isEmpty() && !blocks.isEmpty()) {
            notes.note("nothing is placed on the sheet; its " + blocks.size()
                    + " blocks are shown where they were drawn.");
            blocks.forEach(placer::place);
        }
        units.doubt(taken, placer.strokes);
        tellHidden(sections, placer.strokes, notes);
        ApparelPieces pieces = ApparelReader.read(file, blocks, sheet, taken.mm(), notes);
        return new DxfReading(new Drawing(file, placer.strokes, placer.captions, notes.all(), pieces), taken);
    }

    /** A layer switched off may hold what its maker no longer wants; it is for the user to say. */
    private static void tellHidden(Sections sections, List<Stroke> strokes, Notes notes) {
        Set<String> hidden = new TreeSet<>();
        for (Stroke stroke : strokes) {
            String layer = stroke.layer().substring(stroke.layer().lastIndexOf('/') + 1);
            RawEntity entry = sections.layers.get(Sections.key(layer));
            if (entry != null && Looks.isHidden(entry)) {
                hidden.add(layer);
            }
        }
        if (!hidden.isEmpty()) {
            notes.warn("layers that are switched off in the file are in the drawing all the same: "
                    + String.join(", ", hidden.stream().limit(10).toList()) + ".");
        }
    }

    private static boolean isPiece(Placer.Drawn drawn) {
        return drawn.marks().stream()
                .anyMatch(mark -> mark instanceof Mark.Stroke
                        && ApparelLayer.of(mark.trait().layer()) == ApparelLayer.BOUNDARY);
    }

    private static Placer.Drawn drawn(Block block, EntityReader reader, double unitMm, Notes notes) {
        Affine toBase = Affine.NONE;
        try {
            toBase = new Affine(
                    1,
                    0,
                    0,
                    1,
                    -block.head().number(10, 0) * unitMm,
                    -block.head().number(20, 0) * unitMm);
        } catch (EntityException | GeometryException noPlace) {
            notes.broken(block.head(), "its base point cannot be read, (0, 0) was taken: " + noPlace.getMessage());
        }
        return new Placer.Drawn(block, toBase, reader.read(block.entities()));
    }
}
