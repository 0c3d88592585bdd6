package trueseam.intake.dxf;

import java.util.Optional;

/**
 * A text of the form {@code Key: value}.
 *
 * @param key as written
 * @param value as written, without blanks around it
 */
record Attribute(String key, String value) {

    static Optional<Attribute> of(String text) {
        int colon = text.indexOf(':');
        if (colon <= 0 || colon > 40) {
            return Optional.empty();
        }
        return Optional.of(new Attribute(
                text.substring(0, colon).strip().replaceAll("\\s+", " "),
                text.substring(colon + 1).strip()));
    }

    boolean isNamed(String name) {
        return key.equalsIgnoreCase(name);
    }
}
