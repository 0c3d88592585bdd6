package trueseam.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trueseam.app.input.ClothOptions;
import trueseam.app.input.InputException;
import trueseam.app.input.Json;
import trueseam.app.input.OutputFiles;
import trueseam.app.input.PaperOption;
import trueseam.app.input.PatternOption;
import trueseam.app.input.UnitsOption;
import trueseam.cloth.goods.Cloth;
import trueseam.cloth.goods.CutLength;
import trueseam.cloth.goods.Stuff;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.lay.LayException;
import trueseam.cloth.lay.LayWishes;
import trueseam.cloth.lay.Laying;
import trueseam.cloth.lay.Together;
import trueseam.cloth.need.ClothNeed;
import trueseam.cloth.need.WidthNeed;
import trueseam.cloth.packing.Patience;
import trueseam.cloth.proof.LayProof;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.Length;
import trueseam.garment.pattern.Pattern;
import trueseam.output.cloth.LayJson;
import trueseam.output.cloth.LaySheet;
import trueseam.output.cloth.LaySvg;
import trueseam.output.words.ClothWords;

/** Lays the pieces on cloth and says how much to buy. */
@Command(
        name = "lay",
        description = "Lay the pieces of one or more patterns on cloth, and say how much to buy.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  trueseam lay fitted/altered.svg --width 150cm --fold --nap --out layout",
            "  trueseam lay bodice.svg skirt.svg --width 45in --single --shrink 5 --out layout",
            "",
            "Wash and press the cloth first, pin all pieces before you cut, and cut a trial garment first."
        })
public final class LayCommand implements Callable<Integer> {

    /** Enough for a garment: later seconds save millimetres. */
    private static final double USUAL_SECONDS = 5;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "PATTERN", arity = "1..*", description = "Pattern files; all are cut from the one cloth.")
    private List<Path> patterns;

    @Mixin
    private ClothOptions cloth;

    @Option(
            names = "--cut-from",
            paramLabel = "STUFF",
            defaultValue = "fashion",
            description = "Which pieces: those cut from fashion cloth, lining or interfacing. Default: fashion.")
    private String stuff;

    @Option(names = "--piece", paramLabel = "NAME", description = "Only this piece. May be given several times.")
    private List<String> only = List.of();

    @Option(
            names = "--match",
            paramLabel = "SEAM",
            description = "Match stripes at this seam only. May be given several times. Default: at every seam.")
    private List<String> matched = List.of();

    @Option(
            names = "--gap",
            paramLabel = "LENGTH",
            description = "The least distance between cutting lines. Default: 4 mm.")
    private String gap;

    @Option(
            names = "--tilt",
            paramLabel = "DEGREES",
            defaultValue = "0",
            description = "By how much pieces may be turned off the grain, at most 5. Default: not at all.")
    private double tilt;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "How long to search. Default: 5; what is found by then is written.")
    private Double seconds;

    @Option(
            names = "--rounds",
            paramLabel = "N",
            description = "Search so many rounds instead: the same seed and rounds give the same layout.")
    private Integer rounds;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Where chance begins. Default: 1.")
    private long seed;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "The folder for layout.pdf, layout.svg, layout.json.")
    private Path out;

    @Mixin
    private PaperOption paper;

    @Mixin
    private UnitsOption units;

    /** For the command line. */
    public LayCommand() {}

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Pattern pattern = Together.of(
                patterns.stream().map(p -> PatternOption.read(p, err)).toList());
        LayWishes wishes = wishes();
        Stuff from = Stuff.ofWord(stuff)
                .orElseThrow(() -> new InputException(
                        "--cut-from takes fashion, lining or interfacing, and not \"" + stuff + "\"."));
        Cloth asked = cloth.cloth(units.bareUnit());
        int[] spent = {0};
        Lay lay;
        try {
            Laying laying = cloth.saysHowItLies()
                    ? Laying.of(pattern, asked, from, wishes)
                    : Laying.asItFits(pattern, asked, from, wishes);
            lay = search(laying, spent);
        } catch (LayException e) {
            throw new InputException(e.place() + ": " + e.getMessage());
        }
        List<Finding> faults = LayProof.faults(lay);
        if (!faults.isEmpty()) {
            throw new IllegalStateException("the layout does not pass its own test: " + faults);
        }
        List<WidthNeed> needs = ClothNeed.in(
                pattern, lay.cloth(), from, wishes, ClothNeed.USUAL_WIDTHS_MM, seed, ClothNeed.USUAL_ROUNDS);
        CutLength shop = ClothWords.shop(units.format());
        Map<String, Object> json = LayJson.of(lay, needs, seed, spent[0], shop);
        new OutputFiles()
                .add(
                        out.resolve("layout.pdf"),
                        LaySheet.pdf(pattern.name(), lay, needs, units.format(), paper.sheets(units.bareUnit())))
                .add(out.resolve("layout.svg"), LaySvg.of(pattern.name(), lay))
                .add(out.resolve("layout.json"), Json.write(json))
                .write();
        ClothWords.notes(lay, units.format()).forEach(err::println);
        PrintWriter say = spec.commandLine().getOut();
        if (units.json()) {
            say.println(Json.write(json));
            return 0;
        }
        say.println(String.format(
                java.util.Locale.ROOT,
                "%s wide, %s: %s needed, buy %s; %.0f %% of it becomes garment.",
                units.format().show(lay.cloth().widthMm()),
                lay.cloth().layers().words(),
                units.format().show(lay.neededMm()),
                ClothWords.buy(shop.roundUpMm(lay.toBuyMm()), units.format()),
                100 * lay.density()));
        for (WidthNeed need : needs) {
            say.println("  " + ClothWords.sold(need.widthMm()) + " wide: "
                    + need.needed()
                            .map(n -> "buy " + ClothWords.buy(n, units.format()))
                            .orElse(need.why()));
        }
        say.println("Written to " + out + ": layout.pdf, layout.svg, layout.json. Pin all pieces before you cut.");
        return 0;
    }

    private Lay search(Laying laying, int[] spent) {
        long began = System.nanoTime();
        double limit = seconds == null ? USUAL_SECONDS : seconds;
        Patience counting = r -> {
            spent[0] = r;
            return rounds == null ? (System.nanoTime() - began) / 1e9 / limit : (double) r / rounds;
        };
        return laying.search(seed, counting, found -> {});
    }

    private LayWishes wishes() {
        if (seconds != null && rounds != null) {
            throw new InputException("Give --seconds or --rounds, not both.");
        }
        if ((seconds != null && !(seconds > 0)) || (rounds != null && rounds < 1)) {
            throw new InputException("A search needs more than no time; give --seconds or --rounds above 0.");
        }
        double apart = gap == null
                ? LayWishes.USUAL_GAP_MM
                : Length.parse(gap, units.bareUnit()).mm();
        Set<String> names = new HashSet<>(only);
        try {
            return new LayWishes(
                    apart,
                    tilt,
                    names,
                    matched.isEmpty() ? Optional.empty() : Optional.of(Set.copyOf(matched)),
                    List.of());
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage());
        }
    }
}
