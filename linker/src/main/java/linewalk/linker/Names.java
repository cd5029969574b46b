package linewalk.linker;

import java.util.Locale;

/** When two names on drawings are one: case, blanks, punctuation and leading zeros are drafting habits. */
final class Names {

    private Names() {}

    /** A sheet's name for comparison: {@code 05} is {@code 5}; a point between digits stays, {@code 1.1} is not {@code 11}. */
    static String sheetKey(String name) {
        StringBuilder key = new StringBuilder();
        boolean gap = false;
        for (char c : upper(name).toCharArray()) {
            if (!Character.isLetterOrDigit(c)) {
                gap = true;
                continue;
            }
            boolean digits =
                    key.length() > 0 && Character.isDigit(c) && Character.isDigit(key.charAt(key.length() - 1));
            if (gap && digits) {
                key.append('.');
            }
            key.append(c);
            gap = false;
        }
        int zeros = 0;
        while (zeros + 1 < key.length() && key.charAt(zeros) == '0' && Character.isDigit(key.charAt(zeros + 1))) {
            zeros++;
        }
        return key.substring(zeros);
    }

    /** A designation for comparison: letters and digits only. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        upper(text).chars().filter(Character::isLetterOrDigit).forEach(c -> plain.append((char) c));
        return plain.toString();
    }

    /** A label for comparison; a sign at its end tells {@code OUT+} from {@code OUT-}. */
    static String labelKey(String label) {
        String text = upper(label).strip();
        boolean sign = text.endsWith("+") || text.endsWith("-");
        return plain(text) + (sign ? text.substring(text.length() - 1) : "");
    }

    private static String upper(String text) {
        return text == null ? "" : text.toUpperCase(Locale.ROOT);
    }

    /** Edits (insert, drop, change, swap of neighbours) that make one text of the other. */
    static int edits(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int step(int[][] d, String a, String b, int i, int j) {
        int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }

    /** One slip of the pen apart: one edit, or the same characters in another order. */
    static boolean slip(String a, String b) {
        return edits(a, b) <= 1 || sorted(a).equals(sorted(b));
    }

    private static String sorted(String text) {
        return text.chars()
                .sorted()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
