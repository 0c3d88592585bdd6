package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something drawn, as it stands in the file.
 *
 * @param type LINE, POLYLINE and so on
 * @param line where it begins in the file
 * @param groups its groups in order
 * @param children the vertices of a polyline, the attributes of an insert
 */
record RawEntity(String type, int line, List<Group> groups, List<RawEntity> children) {

    Optional<Group> first(int code) {
        for (Group group : groups) {
            if (group.code() == code) {
                return Optional.of(group);
            }
        }
        return Optional.empty();
    }

    boolean has(int code) {
        return first(code).isPresent();
    }

    String text(int code, String otherwise) {
        return first(code).map(Group::value).orElse(otherwise);
    }

    double number(int code, double otherwise) {
        return first(code).map(RawEntity::number).orElse(otherwise);
    }

    double needed(int code) {
        return number(first(code).orElseThrow(() -> new EntityException("group " + code + " is missing")));
    }

    int whole(int code, int otherwise) {
        return first(code).map(RawEntity::whole).orElse(otherwise);
    }

    List<Double> numbers(int code) {
        List<Double> all = new ArrayList<>();
        for (Group group : groups) {
            if (group.code() == code) {
                all.add(number(group));
            }
        }
        return all;
    }

    /** A plain decimal number; what else Java would take for one (NaN, 0x1p3, 1d) is none in a DXF file. */
    static double number(Group group) {
        String written = group.value().strip();
        boolean plain = !written.isEmpty() && written.length() <= 100;
        for (int i = 0; plain && i < written.length(); i++) {
            plain = "0123456789+-.eE".indexOf(written.charAt(i)) >= 0;
        }
        try {
            double value = plain ? Double.parseDouble(written) : Double.NaN;
            if (Math.abs(value) <= 1e12) {
                return value;
            }
        } catch (NumberFormatException noNumber) {
            // told below, with the line
        }
        throw new EntityException("\"" + GroupText.shortened(written) + "\" on line " + (group.line() + 1)
                + " is no number that a drawing can hold");
    }

    static int whole(Group group) {
        double value = number(group);
        if (value != Math.rint(value) || Math.abs(value) > 1e9) {
            throw new EntityException("\"" + GroupText.shortened(group.value()) + "\" on line " + (group.line() + 1)
                    + " is no whole number");
        }
        return (int) value;
    }
}
