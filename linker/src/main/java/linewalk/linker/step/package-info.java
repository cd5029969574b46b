/**
 * The machine in one step: positions of all parts and the pressure class of every line. A pure function of the set and
 * its cycle chart, linear in the size of the set.
 *
 * <p>In order: {@code Facts} reads the step; {@code Positions} sets each part; {@code Hydraulics} links volumes, finds
 * what leads to tank and floods the rest from pumps and accumulators; both are repeated until no pilot moves anything;
 * {@code Classes} names what is fed, metered, held, returning, drawn in, drained or idle. Doubtful joins, untold
 * passages and loose ends are never guessed: {@code StepSolver} tries what they could be ({@code Guess}), and a class
 * that is not the same in all of them is unknown.
 */
package linewalk.linker.step;
