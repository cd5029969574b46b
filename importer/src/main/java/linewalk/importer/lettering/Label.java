package linewalk.importer.lettering;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Point;

/**
 * A run of text on one baseline.
 *
 * @param text its words, separated by single blanks
 * @param box upright box around the letters
 * @param sizePt font size
 * @param angleDeg of the baseline, clockwise; 270 reads upwards
 * @param words its words with their own boxes
 * @param readings all that it may say, with {@link #text} first; empty where a text layer says what it is
 */
public record Label(String text, Box box, double sizePt, double angleDeg, List<Word> words, List<Reading> readings) {

    /** One way to read the whole label. */
    public record Reading(String text, double likelihood) {}

    /** Letters without a blank between them. */
    public record Word(String text, Box box) {}

    public Label {
        words = List.copyOf(words);
        readings = List.copyOf(readings);
    }

    /** Of a text layer. */
    public Label(String text, Box box, double sizePt, double angleDeg, List<Word> words) {
        this(text, box, sizePt, angleDeg, words, List.of());
    }

    /** Its letters are drawn or are in a picture, so it is read, not told. */
    public boolean drawn() {
        return !readings.isEmpty();
    }

    public Point center() {
        return box.center();
    }

    /** The label is turned so that it reads upwards or downwards. */
    public boolean upright() {
        return Math.abs(angleDeg - 90) < 20 || Math.abs(angleDeg - 270) < 20;
    }

    /** Lines of text as one text. */
    public static Label joined(List<Label> lines) {
        Label first = lines.get(0);
        Box box = first.box();
        List<Word> words = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (Label l : lines) {
            box = box.union(l.box());
            words.addAll(l.words());
            text.append(text.length() == 0 ? "" : " ").append(l.text());
        }
        return new Label(text.toString(), box, first.sizePt(), first.angleDeg(), words, Readings.joined(lines));
    }
}
