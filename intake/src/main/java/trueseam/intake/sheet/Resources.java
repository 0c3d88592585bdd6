package trueseam.intake.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The tables that ship with the program, as resources beside a class. */
public final class Resources {

    private Resources() {}

    /**
     * Reads a sheet that ships with the program.
     *
     * @param owner the class that it lies beside
     * @param name the file's name
     * @return the sheet
     * @throws IllegalStateException when it is missing
     */
    public static Sheet sheet(Class<?> owner, String name) {
        try (InputStream in = owner.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("table " + name + " is missing beside " + owner.getName());
            }
            return Sheet.read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("table " + name + " cannot be read", e);
        }
    }
}
