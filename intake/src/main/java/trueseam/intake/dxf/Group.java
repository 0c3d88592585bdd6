package trueseam.intake.dxf;

/**
 * Two lines of a DXF file: a number that says what follows, and what follows.
 *
 * @param code the group code
 * @param value as written, without blanks around it if it is a number
 * @param line the line of the code, the first being 1
 */
record Group(int code, String value, int line) {}
