package trueseam.app.input;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads the user's files as text. */
public final class Texts {

    /** Nothing that the program reads as text is larger: 64 MB. */
    private static final long LARGEST = 64L << 20;

    private Texts() {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @return its text
     * @throws InputException if it cannot be read as UTF-8 text
     */
    public static String read(Path file) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes(file)))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new InputException(file + " is not UTF-8 text; save it as UTF-8.");
        }
    }

    /**
     * Reads a file that is not text.
     *
     * @param file the file
     * @return what is in it
     * @throws InputException if it cannot be read
     */
    public static byte[] bytes(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new InputException(file + " is a folder; name a file.");
            }
            if (Files.size(file) > LARGEST) {
                throw new InputException(file + " is larger than 64 MB; that is no pattern, body or table of ours.");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new InputException("There is no file " + file + "; check the name.");
        } catch (IOException e) {
            throw new InputException(file + " cannot be read (" + e.getMessage() + "); check that you may open it.");
        }
    }
}
