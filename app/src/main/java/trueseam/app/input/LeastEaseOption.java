package trueseam.app.input;

import java.util.List;
import picocli.CommandLine.Option;
import trueseam.garment.handbook.LeastEase;

/** {@code --least-ease}: whose least ease counts at bust, waist and hip, where handbooks disagree. */
public final class LeastEaseOption {

    @Option(
            names = "--least-ease",
            paramLabel = "bust|waist|hip=SOURCE",
            description =
                    "Whose least ease counts there, such as bust=college-text or hip=school-handbook; trueseam choices lists"
                            + " the sources with their figures. May be given several times. Default: the table of wearing ease.")
    private List<String> texts = List.of();

    /** For the command line. */
    public LeastEaseOption() {}

    /**
     * The choice.
     *
     * @return the sources that were chosen
     * @throws InputException if a place is none of bust, waist and hip
     */
    public LeastEase least() {
        LeastEase least = LeastEase.USUAL;
        for (String text : texts) {
            int at = text.indexOf('=');
            LeastEase.Place place = LeastEase.Place.ofWord(at < 0 ? text : text.substring(0, at))
                    .orElseThrow(
                            () -> new InputException(
                                    "--least-ease \"" + text
                                            + "\" cannot be read; write bust, waist or hip, =, and a source, such as bust=college-text."));
            least = least.with(place, at < 0 ? "?" : text.substring(at + 1));
        }
        return least;
    }
}
