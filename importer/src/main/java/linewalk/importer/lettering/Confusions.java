package linewalk.importer.lettering;

import java.util.ArrayList;
import java.util.List;

/** Letters that are taken for one another. */
public final class Confusions {

    private static final List<String> ALIKE = List.of("B8", "D0O", "1Ili|", "17", "7?", "5S", "8S", "2Z", "6G");

    private Confusions() {}

    /** What else a letter may be. */
    public static List<String> others(String letter) {
        return ALIKE.stream()
                .filter(a -> a.contains(letter))
                .flatMap(a -> a.chars().mapToObj(Character::toString))
                .filter(o -> !o.equals(letter))
                .distinct()
                .toList();
    }

    /** The text with one of its letters taken for another. */
    public static List<String> variants(String text) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < text.length(); i++) {
            for (String other : others(text.substring(i, i + 1))) {
                out.add(text.substring(0, i) + other + text.substring(i + 1));
            }
        }
        return out;
    }
}
