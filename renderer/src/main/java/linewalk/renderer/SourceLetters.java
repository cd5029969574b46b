package linewalk.renderer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;

/** Lettering of an original, letter by letter. */
final class SourceLetters {

    /** One letter as displayed. */
    record Letter(String text, Box box, double capHeightPt) {}

    private SourceLetters() {}

    /** The box of a word that stands within reach of a part, written letter by letter; the nearest of several. */
    static Optional<Box> word(String word, List<Letter> letters, Box near, double reachPt) {
        Box best = null;
        for (int i = 0; i < letters.size(); i++) {
            if (near.distancePt(letters.get(i).box()) > reachPt) {
                continue;
            }
            Box box = wordAt(word, letters, i);
            if (box != null && (best == null || near.distancePt(box) < near.distancePt(best))) {
                best = box;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Box wordAt(String word, List<Letter> letters, int from) {
        StringBuilder text = new StringBuilder();
        Box box = letters.get(from).box();
        for (int i = from; i < letters.size() && text.length() < word.length(); i++) {
            if (letters.get(i).box().distancePt(box) > letters.get(i).capHeightPt()) {
                return null;
            }
            text.append(letters.get(i).text());
            box = box.union(letters.get(i).box());
        }
        return text.toString().equals(word) ? box : null;
    }

    /** Letters that stand side by side, words of one phrase together. */
    static List<Box> phrases(List<Letter> letters) {
        List<Box> phrases = new ArrayList<>();
        Letter before = null;
        for (Letter l : letters) {
            int n = phrases.size() - 1;
            if (before != null && follows(before, l)) {
                phrases.set(n, phrases.get(n).union(l.box()));
            } else {
                phrases.add(l.box());
            }
            before = l;
        }
        return phrases;
    }

    /** Along one baseline, level or upright, no farther apart than a blank. */
    private static boolean follows(Letter a, Letter b) {
        double blank = 0.9 * a.capHeightPt();
        boolean level = Math.abs(a.box().y1Pt() - b.box().y1Pt()) < 0.2 * blank;
        boolean upright = Math.abs(a.box().x1Pt() - b.box().x1Pt()) < 0.2 * blank;
        return (level || upright) && a.box().distancePt(b.box()) < blank;
    }
}
