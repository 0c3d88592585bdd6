package trueseam.app.input;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Request;
import trueseam.fitting.repertoire.Variant;
import trueseam.garment.body.Side;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;

/** Reads {@code --alter}. */
final class Requests {

    private static final Pattern FORM =
            Pattern.compile("([^/=]+)(?:/([^=]+))?(?:=(.+?))?(?:,\\s*(left|right))?", Pattern.CASE_INSENSITIVE);

    private Requests() {}

    static Request read(String text, LengthUnit unit) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw new InputException("--alter \"" + text + "\" cannot be read; write a name, = and a length, such as"
                    + " \"sway-back=3/8 in\".");
        }
        String name = form.group(1).strip();
        Entry entry = Repertoire.named(name)
                .orElseThrow(() -> new InputException(
                        "--alter: there is no alteration \"" + name + "\"; trueseam alterations lists their names."));
        String way = form.group(2) == null ? "" : form.group(2).strip().toLowerCase(Locale.ROOT);
        Variant variant = entry.variant(way)
                .orElseThrow(() -> new InputException("--alter: \"" + entry.name() + "\" is not done \"" + way
                        + "\"; its ways are "
                        + entry.variants().stream().map(Variant::name).collect(Collectors.joining(", ")) + "."));
        OptionalDouble mm = form.group(3) == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Length.parse(form.group(3), unit).mm());
        Optional<Side> side = form.group(4) == null
                ? Optional.empty()
                : Optional.of(Side.valueOf(form.group(4).toUpperCase(Locale.ROOT)));
        return new Request(entry, variant, mm, side);
    }
}
