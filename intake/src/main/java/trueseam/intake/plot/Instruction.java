package trueseam.intake.plot;

import java.util.List;

/**
 * Two letters that tell a plotter what to do.
 *
 * @param name the letters, upper case
 * @param numbers what follows them
 * @param words what is to be written, for LB
 * @param place number of the instruction in the file, the first being 1
 */
record Instruction(String name, List<Double> numbers, String words, int place) {

    double number(int i, double otherwise) {
        return i < numbers.size() ? numbers.get(i) : otherwise;
    }
}
