package trueseam.intake.namesfile;

import trueseam.intake.bring.Brought;
import trueseam.intake.said.Corrections;
import trueseam.intake.sheet.SheetException;

/** Reads and writes names files. */
public final class NamesFile {

    /** What it is called beside {@code blouse.svg}: {@code blouse.names.txt}. */
    public static final String ENDING = ".names.txt";

    private NamesFile() {}

    /**
     * Writes everything that a drawing was taken for, with how sure it is.
     *
     * @param drawing what the drawing is called
     * @param brought what came of it
     * @return the text
     */
    public static String write(String drawing, Brought brought) {
        return new NamesWriter().all(drawing, brought);
    }

    /**
     * Writes what is said, and nothing else.
     *
     * @param corrections what is said
     * @return the text; read again it gives the same, places to a tenth of a millimetre
     */
    public static String write(Corrections corrections) {
        return new NamesWriter().said(corrections);
    }

    /**
     * Reads what is said.
     *
     * @param file what the file is called
     * @param text its text
     * @return what it says
     * @throws SheetException with file and line, for the first line that cannot be read
     */
    public static Corrections read(String file, String text) {
        return new NamesReader(file).read(text);
    }

    /**
     * What the names file of a drawing is called.
     *
     * @param drawing what the drawing is called
     * @return its name with another ending
     */
    public static String beside(String drawing) {
        return drawing.replaceAll("\\.[A-Za-z0-9]{1,5}$", "") + ENDING;
    }
}
