package trueseam.worktable.page;

import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** A file that was brought. */
public final class Brought {

    private Brought() {}

    /**
     * What it was called, without the folder that some browsers send along.
     *
     * @param file the file
     * @return its name
     */
    public static String name(UploadedFile file) {
        return file.filename().replaceAll(".*[/\\\\]", "");
    }

    /**
     * What is in it.
     *
     * @param file the file
     * @return all of it
     * @throws IOException if it cannot be read
     */
    public static byte[] bytes(UploadedFile file) throws IOException {
        try (InputStream in = file.content()) {
            return in.readAllBytes();
        }
    }

    /**
     * Its text.
     *
     * @param file the file
     * @return all of it
     * @throws IOException if it is not text in UTF-8
     */
    public static String text(UploadedFile file) throws IOException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes(file)))
                .toString();
    }
}
