package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Zone;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.ReferenceGrammar;
import linewalk.importer.lettering.ReferenceGrammar.Parsed;
import linewalk.importer.lettering.SaidReadings;
import linewalk.importer.lettering.TextBlocks;
import linewalk.importer.page.Glyph;
import linewalk.importer.page.Near;
import linewalk.importer.page.Stroke;

/** Tells outlines around words (flags, match letters, bubbles, balloons) from figures of parts. */
public final class FlagTest {

    private static final Pattern MATCH_LETTER = Pattern.compile("[A-Z]{1,2}\\d?|\\d{1,4}");

    private static final Pattern SHEET_NUMBER = Pattern.compile("\\d{1,3}[A-Z]?");

    /** An item number in a balloon. */
    private static final Pattern ITEM = Pattern.compile("\\d{1,3}");

    /** How far "SH 4" may stand from the letter it belongs to, in text sizes. */
    private static final double BESIDE = 1.5;

    private static final int ALIKE = 2;

    private final ReferenceGrammar grammar;

    public FlagTest(ReferenceGrammar grammar) {
        this.grammar = grammar;
    }

    List<Outline> flags(List<Outline> closed, List<Label> labels, List<Stroke> strokes, double tolPt) {
        List<Outline> flags = new ArrayList<>();
        List<Outline> lettered = new ArrayList<>();
        for (Outline o : closed) {
            List<Label> inside = inside(o, labels);
            if (inside.isEmpty() || !fits(o, inside)) {
                continue;
            } else if (isFlag(o, inside, labels) || bubble(o, inside, strokes, tolPt)) {
                flags.add(o);
            } else if (inside.size() == 1
                    && MATCH_LETTER.matcher(inside.get(0).text()).matches()) {
                lettered.add(o);
            }
        }
        List<Label> free = outside(labels, flags);
        TextBlocks blocks = new TextBlocks(free);
        lettered.stream().filter(o -> !said(grammar, o, free, blocks).isEmpty()).forEach(flags::add);
        return flags;
    }

    /** Labels that stand in none of the flags. */
    public static List<Label> outside(List<Label> labels, List<Outline> flags) {
        return labels.stream()
                .filter(l -> flags.stream().noneMatch(f -> f.covers(l.center())))
                .toList();
    }

    /** Drafters who print sheets beside a name do so everywhere: one such flag alone is something else. */
    static List<NamedFlag> named(List<Outline> closed, List<Label> labels, List<Glyph> glyphs) {
        Near<Label> words = new Near<>(PrintedWords.of(glyphs), Label::box);
        List<NamedFlag> named = closed.stream()
                .flatMap(o -> NamedFlag.of(o, labels, words).stream())
                .toList();
        return named.stream().filter(f -> !f.glued()).count() < ALIKE ? List.of() : named;
    }

    /** Open brackets around a text, closed by the side that is left out. */
    List<Outline> brackets(List<Stroke> strokes, List<Label> labels, double tolPt) {
        List<Outline> found = new ArrayList<>();
        for (Stroke s : strokes) {
            if (s.closed() || s.curved() || s.points().size() != 4 || !s.dash().solid()) {
                continue;
            }
            Outline o = Outline.bracket(s);
            List<Label> inside = o.rectangle() ? inside(o, labels) : List.of();
            if (inside.size() == 1
                    && fits(o, inside)
                    && parse(grammar, o, inside).isPresent()) {
                found.add(o);
            }
        }
        return found;
    }

    public static List<Label> inside(Outline o, List<Label> labels) {
        return labels.stream()
                .filter(l -> o.box().contains(l.center()) && o.covers(l.center()))
                .sorted(Comparator.comparingDouble((Label l) -> l.box().y0Pt())
                        .thenComparing(l -> l.box().x0Pt()))
                .toList();
    }

    /** What the words inside an outline say together; one above the other they may be sheet and zone. */
    public static Optional<Parsed> parse(ReferenceGrammar grammar, Outline o, List<Label> inside) {
        return inside.isEmpty()
                ? Optional.empty()
                : SaidReadings.of(Label.joined(inside), text -> parse(grammar, o, inside, text));
    }

    private static Optional<Parsed> parse(ReferenceGrammar grammar, Outline o, List<Label> inside, String text) {
        Optional<Parsed> joined = grammar.parse(text);
        if (joined.isPresent()) {
            return joined;
        } else if (inside.size() == 2) {
            return grammar.parse(text.replaceFirst(" (?=\\S*$)", "/"));
        }
        // a box around "2A1" may well be a part of that name; hexagons, pentagons and brackets are drawn for references
        return inside.size() == 1 && (o.corners() != 4 && !o.circle() || o.bracket())
                ? grammar.glued(text)
                : Optional.empty();
    }

    /** An outline drawn for its words is not much larger than they are. */
    private static boolean fits(Outline o, List<Label> inside) {
        Box words = inside.stream().map(Label::box).reduce(Box::union).orElseThrow();
        double size = inside.get(0).sizePt();
        double room = (o.corners() == 4 || o.circle() ? 6 : 12) * size;
        return o.box().widthPt() < words.widthPt() + room && o.box().heightPt() < words.heightPt() + room;
    }

    private boolean isFlag(Outline o, List<Label> inside, List<Label> labels) {
        String text = inside.stream().map(Label::text).collect(Collectors.joining(" "));
        if (parse(grammar, o, inside).isPresent()) {
            return true;
        }
        boolean balloon = inside.size() == 1 && o.circle() && ITEM.matcher(text).matches();
        return balloon || zoneBeside(o, inside, labels).isPresent();
    }

    /** A circle divided by a bar between two words. */
    private static boolean bubble(Outline o, List<Label> inside, List<Stroke> strokes, double tolPt) {
        return o.circle()
                && inside.size() == 2
                && strokes.stream()
                        .filter(s ->
                                s.points().size() == 2 && o.box().grow(tolPt).contains(s.box()))
                        .anyMatch(s -> o.edgeDistancePt(s.first()) <= tolPt && o.edgeDistancePt(s.last()) <= tolPt);
    }

    /** The zone printed beside a pentagon or hexagon that holds the number of a sheet alone. */
    public static Optional<Label> zoneBeside(Outline o, List<Label> inside, List<Label> labels) {
        if (inside.size() != 1
                || o.circle()
                || o.corners() < 5
                || !SHEET_NUMBER.matcher(inside.get(0).text()).matches()) {
            return Optional.empty();
        }
        return labels.stream()
                .filter(l -> !o.box().contains(l.center()))
                .filter(l -> Math.abs(l.angleDeg() - inside.get(0).angleDeg()) < 5)
                .filter(l -> l.box().distancePt(o.box()) < BESIDE * l.sizePt())
                .filter(l -> Zone.parse(l.text()).isPresent())
                .min(Comparator.comparingDouble(l -> l.box().distancePt(o.box())));
    }

    /**
     * What stands beside an outline around a letter or number, in one row or two: "SH 4", "TO SHEET 4" above "ZONE B2", or
     * the number of a drawing. Empty where nothing does.
     */
    public static List<Label> said(ReferenceGrammar grammar, Outline o, List<Label> labels, TextBlocks blocks) {
        return labels.stream()
                .filter(l -> !o.box().contains(l.center()))
                .filter(l -> l.box().distancePt(o.box()) < BESIDE * l.sizePt())
                .flatMap(l -> Stream.concat(
                        Stream.of(List.of(l)), blocks.below(l).stream().map(next -> List.of(l, next))))
                .filter(rows -> says(grammar, rows).isPresent())
                .min(Comparator.comparing((List<Label> rows) ->
                                !says(grammar, rows).orElseThrow().zoned())
                        .thenComparing(rows -> rows.get(0).box().distancePt(o.box())))
                .orElse(List.of());
    }

    private static Optional<Parsed> says(ReferenceGrammar grammar, List<Label> rows) {
        return saysSheet(grammar, Label.joined(rows).text());
    }

    public static Optional<Parsed> saysSheet(ReferenceGrammar grammar, String text) {
        Optional<Parsed> parsed = grammar.parse(text).filter(p -> p.words() || p.zoned());
        return parsed.isPresent() ? parsed : grammar.drawingNumber(text);
    }
}
