package trueseam.app.input;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import trueseam.intake.bring.Brought;
import trueseam.intake.namesfile.NamesFile;
import trueseam.intake.said.Corrections;

/** What somebody says about a drawing, in a text file beside it. */
public final class NamesOption {

    @Option(
            names = "--names",
            paramLabel = "FILE",
            description =
                    "What you say about the pieces and edges (docs/bring-in.md). Default: blouse.names.txt beside blouse.svg, if it"
                            + " is there.")
    private Path names;

    @Option(
            names = "--write-names",
            description =
                    "Write the names file: everything that was proposed, with how sure it is, to be corrected in any editor. What an"
                            + " earlier one said is kept in it, its remarks are not.")
    private boolean write;

    /** For the command line. */
    public NamesOption() {}

    /**
     * What is said.
     *
     * @param drawing the drawing's file
     * @param err where it is told which file was read
     * @return what the names file says; nothing where there is none
     */
    public Corrections read(Path drawing, PrintWriter err) {
        Path file = file(drawing);
        if (names == null && !Files.exists(file)) {
            return Corrections.NONE;
        }
        Corrections said = NamesFile.read(file.getFileName().toString(), Texts.read(file));
        err.println(file.getFileName() + ": What it says goes before what is proposed.");
        return said;
    }

    /**
     * Adds the names file to what is written, if it is wanted.
     *
     * @param files what is written
     * @param drawing the drawing's file
     * @param brought what came of it
     * @return where it will be; empty if it is not wanted
     */
    public String write(OutputFiles files, Path drawing, Brought brought) {
        if (!write) {
            return "";
        }
        Path file = file(drawing);
        files.add(file, NamesFile.write(drawing.getFileName().toString(), brought));
        return file.toString();
    }

    private Path file(Path drawing) {
        return names != null
                ? names
                : drawing.resolveSibling(NamesFile.beside(drawing.getFileName().toString()));
    }
}
