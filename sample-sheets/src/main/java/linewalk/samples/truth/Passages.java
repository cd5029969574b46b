package linewalk.samples.truth;

import java.util.ArrayList;
import java.util.List;

/** Reads {@code P>A B>T} and {@code A-T} into pairs of port names. */
final class Passages {
    private Passages() {}

    static List<String[]> in(String words) {
        List<String[]> out = new ArrayList<>();
        if (!words.isEmpty()) {
            for (String word : words.split(" ")) {
                out.add(word.split("[->]"));
            }
        }
        return out;
    }
}
