package linewalk.samples.machine;

/** One thing said in metric and in US units. */
public record Words(String metric, String us) {
    public static Words same(String text) {
        return new Words(text, text);
    }
}
