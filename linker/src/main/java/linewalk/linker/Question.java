package linewalk.linker;

import java.util.List;

/**
 * What a trace is asked for.
 *
 * @param from designation, or {@code designation:port}
 * @param via designations to pass, in order
 * @param to designation, {@code designation:port}, or null for the tank
 * @param step number or name of a step of the cycle chart, or null for the machine as drawn, at rest
 * @param anyPosition valves may be in any position; the trace then says which must shift
 * @param crossDoubt go on over joins and mates that are not sure, and say so
 * @param paths how many ways to list at the most, at least 1
 */
public record Question(
        String from, List<String> via, String to, String step, boolean anyPosition, boolean crossDoubt, int paths) {

    public Question {
        via = List.copyOf(via);
    }
}
