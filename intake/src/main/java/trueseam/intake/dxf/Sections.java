package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trueseam.intake.drawing.DrawingException;

/**
 * A DXF file taken apart: header, layers, line types, blocks and what is drawn. Nothing is understood yet. What a file lacks is empty;
 * names are kept without case, as DXF compares them. Source: DXF Release 12 and 2018 references.
 */
final class Sections {

    final Map<String, Group> header = new HashMap<>();
    final Map<String, RawEntity> layers = new HashMap<>();
    final Map<String, RawEntity> lineTypes = new HashMap<>();
    final List<Block> blocks = new ArrayList<>();
    final List<RawEntity> entities = new ArrayList<>();
    private boolean ended;

    private final GroupText text;
    private final String file;

    private Sections(String file, String all) {
        this.file = file;
        this.text = new GroupText(file, all);
    }

    static Sections of(String file, String all) {
        Sections sections = new Sections(file, all);
        sections.read();
        return sections;
    }

    static String key(String name) {
        return name.strip().toUpperCase(Locale.ROOT);
    }

    /** Whether the file ends where a DXF file says that it ends. */
    boolean isWhole() {
        return ended && !text.isCutShort();
    }

    private void read() {
        boolean any = false;
        while (text.hasNext() && !ended) {
            Group group = text.next();
            if (group.code() != 0) {
                if (!any) {
                    throw noDxf();
                }
                continue;
            }
            if (isNamed(group, "EOF")) {
                ended = true;
            } else if (isNamed(group, "SECTION")) {
                any = true;
                section();
            } else if (!any) {
                throw noDxf();
            }
        }
        if (!any) {
            throw noDxf();
        }
    }

    private DrawingException noDxf() {
        return new DrawingException(
                file,
                "",
                "this is no DXF drawing: a DXF file begins with 0 and SECTION. Export the pattern as ASCII DXF, release 12 to 2018.");
    }

    private static boolean isNamed(Group group, String name) {
        return group.code() == 0 && group.value().strip().equalsIgnoreCase(name);
    }

    private void section() {
        String name =
                text.hasNext() && text.peek().code() == 2 ? key(text.next().value()) : "";
        switch (name) {
            case "HEADER" -> header();
            case "TABLES" -> tables();
            case "BLOCKS" -> blocks();
            case "ENTITIES" -> entities(entities, "ENDSEC");
            default -> skip();
        }
    }

    private boolean isInside() {
        return text.hasNext() && !isNamed(text.peek(), "ENDSEC") && !isNamed(text.peek(), "EOF");
    }

    private void skip() {
        while (isInside()) {
            text.next();
        }
    }

    private void header() {
        String variable = "";
        while (isInside()) {
            Group group = text.next();
            if (group.code() == 9) {
                variable = key(group.value());
            } else {
                header.putIfAbsent(variable, group);
            }
        }
    }

    private void tables() {
        while (isInside()) {
            RawEntity entry = entity();
            if (entry.type().equals("LAYER")) {
                layers.putIfAbsent(key(entry.text(2, "")), entry);
            } else if (entry.type().equals("LTYPE")) {
                lineTypes.putIfAbsent(key(entry.text(2, "")), entry);
            }
        }
    }

    private void blocks() {
        while (isInside()) {
            RawEntity head = entity();
            if (head.type().equals("BLOCK")) {
                List<RawEntity> inside = new ArrayList<>();
                entities(inside, "ENDBLK");
                blocks.add(new Block(head.text(2, head.text(3, "")).strip(), head.line(), head, inside));
            }
        }
    }

    /** Reads what is drawn, up to the end of a block or section, which is left standing. */
    private void entities(List<RawEntity> into, String end) {
        List<RawEntity> parts = into; // where vertices and attributes go: into the polyline or insert last begun
        while (isInside() && !isNamed(text.peek(), end) && !isNamed(text.peek(), "BLOCK")) {
            RawEntity entity = entity();
            switch (entity.type()) {
                case "VERTEX", "ATTRIB" -> parts.add(entity);
                case "SEQEND" -> parts = into;
                default -> {
                    into.add(entity);
                    boolean has =
                            entity.type().equals("POLYLINE") || entity.type().equals("INSERT");
                    parts = has ? entity.children() : into;
                }
            }
        }
    }

    private RawEntity entity() {
        Group type = text.next();
        List<Group> groups = new ArrayList<>();
        while (text.hasNext() && text.peek().code() != 0) {
            groups.add(text.next());
        }
        return new RawEntity(key(type.value()), type.line(), groups, new ArrayList<>());
    }
}
