package linewalk.linker;

import java.util.List;

/** The answer to a {@link Question}. */
public sealed interface Answer {

    /** Ways found, the one of least resistance first. */
    record Found(List<Trace> traces) implements Answer {
        public Found {
            traces = List.copyOf(traces);
        }
    }

    /**
     * No way, or a stop at doubt.
     *
     * @param reached the longest way that was walked, to be shown; its last leg is where it ended
     * @param why in a sentence, with the place
     * @param atDoubt there is a way if a doubt is crossed
     */
    record Stopped(Trace reached, String why, boolean atDoubt) implements Answer {}
}
