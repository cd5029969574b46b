package linewalk.samples.symbol;

/** One position: {@code by} is rest, pilot or a solenoid; passages such as {@code P>A B>T} or {@code A-T}. */
public record SpoolPosition(String by, String how, String passages) {}
