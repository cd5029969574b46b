package linewalk.drawing;

/** One page of one source file; pages count from 1. */
public record PageKey(String source, int page) implements Comparable<PageKey> {

    @Override
    public int compareTo(PageKey other) {
        int bySource = source.compareTo(other.source);
        return bySource != 0 ? bySource : Integer.compare(page, other.page);
    }

    @Override
    public String toString() {
        return source + " page " + page;
    }

    // written out: a record's own are spun at run time, which a short command waits for
    @Override
    public boolean equals(Object o) {
        return o instanceof PageKey k && page == k.page && source.equals(k.source);
    }

    @Override
    public int hashCode() {
        return 31 * source.hashCode() + page;
    }
}
