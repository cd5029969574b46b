package linewalk.importer.symbol;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.Box;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;

/**
 * An empty flag at a line's end with a name beside it, and in that row the list of sheets on which the name stands again:
 * {@code 6}, {@code 3,7,15}, {@code [5,14]}. The list may stand far from the name, even on the line.
 *
 * @param name the name alone, one word
 * @param list as printed
 */
public record NamedFlag(Outline flag, Label name, Label list) {

    private static final Pattern NAME = Pattern.compile("(?=.*\\p{L})\\S{2,}");
    private static final Pattern LIST = Pattern.compile("[\\[{(]?\\d{1,4}(?:,\\d{1,4})*[\\]})]?");

    /** A name that says something: {@code 3-G1} is an address, not the name 3-G with a list behind it. */
    private static final Pattern GLUED = Pattern.compile("((?=.*\\p{L}{2}).+\\p{L})(\\d{1,2})");

    /** How far a name may stand from its flag, in text sizes. */
    private static final double BESIDE = 3;

    /** How far a list may stand from its name, in text sizes: lists of one sheet stand in columns. */
    private static final double IN_ROW = 20;

    /** How far from the row's axis, in text sizes. */
    private static final double ASIDE = 0.7;

    /** The same for a list: it is printed on its name's line, a pin's number beside its own. */
    private static final double LIST_ASIDE = 0.4;

    /**
     * Empty where the outline is no such flag.
     *
     * @param words as printed one after another, see {@link PrintedWords}
     */
    static Optional<NamedFlag> of(Outline o, List<Label> labels, Near<Label> words) {
        if (o.corners() < 5 || o.corners() > 6 || !FlagTest.inside(o, labels).isEmpty()) {
            return Optional.empty();
        }
        double highPt = Math.max(o.box().widthPt(), o.box().heightPt());
        return words.touching(o.box().grow(BESIDE * highPt)).stream()
                .filter(l -> l.box().distancePt(o.box()) < BESIDE * l.sizePt() && inRow(o.box(), l, ASIDE))
                .filter(l -> largeEnough(o, l))
                .filter(l -> NAME.matcher(l.text()).matches()
                        && !LIST.matcher(l.text()).matches())
                .min(Comparator.comparingDouble(l -> l.box().distancePt(o.box())))
                .flatMap(name ->
                        listed(o, name, words, true).or(() -> glued(o, name)).or(() -> listed(o, name, words, false)));
    }

    /** Where the list touches the name both are one word: {@code DATA5_P11}. */
    private static Optional<NamedFlag> glued(Outline o, Label word) {
        Matcher m = GLUED.matcher(word.text());
        return m.matches()
                ? Optional.of(new NamedFlag(o, said(word, m.group(1)), said(word, m.group(2))))
                : Optional.empty();
    }

    private static Label said(Label word, String text) {
        List<Label.Reading> readings = word.drawn()
                ? List.of(new Label.Reading(text, word.readings().get(0).likelihood()))
                : List.of();
        return new Label(text, word.box(), word.sizePt(), word.angleDeg(), word.words(), readings);
    }

    /** Only the other end can tell that a number at the end of a name is none of it. */
    public boolean glued() {
        return name.box().equals(list.box());
    }

    /** A flag is about as high as its name's letters. */
    private static boolean largeEnough(Outline o, Label l) {
        double across = l.upright() ? o.box().widthPt() : o.box().heightPt();
        return across > 0.5 * l.sizePt() && across < 3 * l.sizePt();
    }

    private static boolean inRow(Box row, Label l, double aside) {
        Direction across = Direction.ofAngle(l.angleDeg() + 90);
        return Math.abs(across.ahead(row.center(), l.center())) < aside * l.sizePt();
    }

    /** @param beyond on the far side of the name; else over the line, where a pin's number may stand too */
    private static Optional<NamedFlag> listed(Outline o, Label name, Near<Label> words, boolean beyond) {
        double reachPt = IN_ROW * name.sizePt();
        return words.touching(name.box().grow(reachPt)).stream()
                .filter(l -> Math.abs(l.angleDeg() - name.angleDeg()) < 5 && inRow(name.box(), l, LIST_ASIDE))
                .filter(l -> Math.abs(l.sizePt() - name.sizePt()) < 0.3 * name.sizePt())
                .filter(l -> LIST.matcher(l.text()).matches())
                .filter(l -> l.box().distancePt(name.box()) < reachPt)
                .filter(l -> beyond == isBeyond(o, name, l))
                .min(Comparator.comparingDouble(l -> l.box().center().distancePt(name.center())))
                .map(l -> new NamedFlag(o, name, l));
    }

    /** Printed over the name counts as beyond it. */
    private static boolean isBeyond(Outline o, Label name, Label list) {
        Direction away = Direction.of(o.box().center(), name.center());
        return away.ahead(name.center(), list.center()) > 0 || list.box().intersects(name.box());
    }

    /** The sheets of the list, in its order. */
    public List<String> sheets() {
        return List.of(list.text().replaceAll("[^\\d,]", "").split(","));
    }

    /** Whether a label says what this flag says already. */
    public boolean says(Label l) {
        return l.box().contains(name.center()) || l.box().contains(list.center());
    }
}
