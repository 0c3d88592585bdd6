package trueseam.worktable.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;

/** A file that is taken away. */
public final class Download {

    private Download() {}

    /**
     * What the file is called: whose and what, so that two on one pile can be told apart. Letters of other alphabets stay; what a file system
     * may not like does not.
     *
     * @param project the project's name
     * @param word what it is, such as {@code print-a4.pdf}
     * @return for example {@code rosalind-s-bodice-print-a4.pdf}
     */
    public static String named(String project, String word) {
        String whose = Normalizer.normalize(project, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return (whose.isEmpty() ? "" : whose + "-") + word;
    }

    /**
     * Answers with it.
     *
     * @param visit the request
     * @param name what it is called
     * @param type its kind, such as {@code application/pdf}
     * @param content what is in it
     */
    public static void give(Visit visit, String name, String type, byte[] content) {
        // RFC 6266: the plain name for the oldest, the encoded one for names beyond ASCII.
        visit.context()
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"" + name.replaceAll("[^\\x20-\\x7e]", "_") + "\"; filename*=UTF-8''"
                                + URLEncoder.encode(name, StandardCharsets.UTF_8)
                                        .replace("+", "%20"))
                .contentType(type)
                .result(content);
    }

    /**
     * Answers with a sentence instead.
     *
     * @param visit the request
     * @param status what kind of refusal
     * @param sentence why, and what to do
     */
    public static void refuse(Visit visit, int status, String sentence) {
        visit.context().status(status).contentType("text/plain; charset=utf-8").result(sentence);
    }
}
