package trueseam.worktable.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Draws pages from templates that were made into classes by the build. Safe for use by several threads. */
public final class Pages {

    private final TemplateEngine engine;
    private final String secret;
    private final Optional<Signed> signed;

    /**
     * How pages are drawn.
     *
     * @param secret tells our own pages from other people's
     */
    public Pages(String secret) {
        this(TemplateEngine.createPrecompiled(ContentType.Html), secret, Optional.empty());
    }

    private Pages(TemplateEngine engine, String secret, Optional<Signed> signed) {
        this.engine = engine;
        this.secret = secret;
        this.signed = signed;
    }

    /**
     * The same for somebody who is signed in.
     *
     * @param ofSession tells our own pages from other people's, for this session alone
     * @param who who is signed in
     * @return how pages are drawn for her
     */
    public Pages forSession(String ofSession, Signed who) {
        return new Pages(engine, ofSession, Optional.of(who));
    }

    /**
     * Who is signed in.
     *
     * @return nobody where the program is used alone
     */
    public Optional<Signed> signed() {
        return signed;
    }

    /**
     * What stands around a page that belongs to no project.
     *
     * @return the frame
     */
    public Frame frame() {
        return new Frame("", "", 0, Optional.empty(), Set.of(), Optional.empty(), Optional.empty(), secret, signed);
    }

    /**
     * What tells our own pages from other people's.
     *
     * @return the secret of the data folder, or of the session
     */
    public String secret() {
        return secret;
    }

    /**
     * Draws a page.
     *
     * @param template the template, such as {@code start/page.jte}
     * @param values its parameters by name
     * @return HTML
     */
    public String draw(String template, Map<String, Object> values) {
        StringOutput html = new StringOutput(16_384);
        engine.render(template, values, html);
        return html.toString();
    }
}
