package trueseam.intake.dxf;

/** Something drawn that cannot be taken; the rest of the drawing can. The message says what is wrong with it. */
final class EntityException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    EntityException(String what) {
        super(what);
    }
}
