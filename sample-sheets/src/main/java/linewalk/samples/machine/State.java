package linewalk.samples.machine;

import java.util.Set;

/** A row of the cycle chart. */
public record State(String name, Set<String> energised) {}
