package linewalk.linker;

import java.util.HashSet;
import java.util.Set;

/** Whether a sheet's name looks like a drawing of another set rather than a slip in the numbers of this one. */
final class DrawingNumbers {

    private static final int LONGER = 3;

    private final Set<String> shapes = new HashSet<>();
    private int longest;

    DrawingNumbers(RefIndex index) {
        index.refs.forEach(r -> add(r.page().name));
    }

    private void add(String name) {
        shapes.add(shape(name));
        longest = Math.max(longest, Names.plain(name).length());
    }

    /** Letters and digits as classes: {@code UER-1234567} is {@code ANNNNNNN} however long the runs. */
    private static String shape(String name) {
        return Names.plain(name).replaceAll("\\p{L}+", "A").replaceAll("\\p{Nd}+", "N");
    }

    boolean outside(String name) {
        String plain = Names.plain(name);
        boolean drawing = plain.length() >= 4 && plain.chars().anyMatch(Character::isDigit);
        boolean ownNumbers = shapes.contains("N") && shape(name).equals("N") && plain.length() < longest + LONGER;
        return drawing && !ownNumbers;
    }
}
