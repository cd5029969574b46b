package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;

/** What is on the drawings of a set; every part may be missing, and a page may be left out of the scoring. */
public record Truth(JsonNode data) {

    /** The entries of a list that stand on pages which were checked by eye. */
    List<JsonNode> on(String name) {
        return onCheckedPages(data.path(name));
    }

    List<JsonNode> onCheckedPages(JsonNode list) {
        Set<Integer> checked = new HashSet<>();
        data.path(data.has("checked_pages") ? "checked_pages" : "sheets")
                .forEach(p -> checked.add(p.isInt() ? p.asInt() : p.get("page").asInt()));
        List<JsonNode> out = new ArrayList<>();
        list.forEach(x -> {
            if (checked.contains(x.get("page").asInt())) {
                out.add(x);
            }
        });
        return out;
    }

    /** Upper-case letters and digits alone. */
    public static String plain(String text) {
        return text == null ? "" : text.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }

    /** B4, B-4 and 4B are one zone: letters first. */
    static String zone(String text) {
        return plain(text).replaceFirst("^(\\d+)([A-Z]+)$", "$2$1");
    }

    /** A list, or a single value as a list of one; empty for none. */
    static List<String> texts(JsonNode x) {
        List<String> out = new ArrayList<>();
        if (x.isArray()) {
            x.forEach(y -> out.add(y.asText()));
        } else if (!x.isNull() && !x.isMissingNode()) {
            out.add(x.asText());
        }
        return out;
    }

    static List<String> texts(JsonNode x, UnaryOperator<String> as) {
        return texts(x).stream().map(as).toList();
    }

    /** Nothing wanted and nothing missed is right. */
    static double ratio(long hits, long of) {
        return of == 0 ? 1 : (double) hits / of;
    }

    static double f1(double precision, double recall) {
        return precision + recall == 0 ? 0 : 2 * precision * recall / (precision + recall);
    }

    static <T> long common(Collection<T> a, Set<T> b) {
        return a.stream().filter(b::contains).count();
    }

    /** From a place to a thing's box; 0 inside. */
    static double distancePt(double xPt, double yPt, JsonNode boxPt) {
        double dx = Math.max(
                Math.max(boxPt.get(0).asDouble() - xPt, 0), xPt - boxPt.get(2).asDouble());
        double dy = Math.max(
                Math.max(boxPt.get(1).asDouble() - yPt, 0), yPt - boxPt.get(3).asDouble());
        return Math.hypot(dx, dy);
    }
}
