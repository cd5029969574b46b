package linewalk.linker;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Rule;

/**
 * The lines that end at references, and whether the two that mates join are of one size and kind. Only lines of two ends
 * are compared, and no reference that leads to several mates: a branch may have another size, and another drawn form, than
 * the leg that goes on.
 */
final class MateLines {

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?");

    private final Map<String, Line> at = new HashMap<>();

    MateLines(List<PageDraft> pages) {
        for (PageDraft p : pages) {
            for (Line l : p.lines) {
                for (End e : l.ends()) {
                    if (e instanceof End.AtReference r) {
                        at.put(r.reference(), l);
                    }
                }
            }
        }
    }

    Optional<Line> line(Ref r) {
        return Optional.ofNullable(at.get(r.id()));
    }

    private Optional<Line> unbranched(Ref r) {
        return line(r).filter(l -> l.ends().size() == 2);
    }

    /** Of an unbranched line, where it is more than the reference's own name; or null. */
    String number(Ref r) {
        return unbranched(r)
                .map(Line::label)
                .filter(l -> !Names.labelKey(l).equals(r.labelKey()))
                .orElse(null);
    }

    void check(Mates mates, List<Finding> findings) {
        Map<Ref, Long> pairings = mates.pairings.stream()
                .flatMap(p -> Stream.of(p.a().ref(), p.b().ref()).distinct())
                .collect(Collectors.groupingBy(r -> r, Collectors.counting()));
        for (Pairing p : mates.pairings) {
            boolean branches = pairings.get(p.a().ref()) > 1 || pairings.get(p.b().ref()) > 1;
            Optional<Line> one = unbranched(p.a().ref());
            Optional<Line> other = unbranched(p.b().ref());
            if (one.isPresent() && other.isPresent() && p.confidence() >= Moves.SURE && !branches) {
                size(p, one.get(), other.get()).ifPresent(findings::add);
                kind(p, one.get(), other.get()).ifPresent(findings::add);
            }
        }
    }

    private static Optional<Finding> size(Pairing p, Line one, Line other) {
        if (one.size() == null || other.size() == null || sameSize(one.size(), other.size())) {
            return Optional.empty();
        }
        return Optional.of(
                differ(Rule.SIZE_DIFFERS, p, one.size(), other.size(), "give both ends one size, or draw the reducer"));
    }

    /** Sizes of different systems ({@code DN25}, {@code 1"}) can't be compared. */
    private static boolean sameSize(String a, String b) {
        return !system(a).equals(system(b)) || numbers(a).equals(numbers(b));
    }

    private static String system(String size) {
        return NUMBER.matcher(size.toUpperCase(Locale.ROOT).replace(" ", "")).replaceAll("9");
    }

    private static String numbers(String size) {
        StringBuilder numbers = new StringBuilder();
        Matcher m = NUMBER.matcher(size);
        while (m.find()) {
            numbers.append(Double.parseDouble(m.group().replace(',', '.'))).append(' ');
        }
        return numbers.toString();
    }

    /** Pilot and drain are told apart by the length of their dashes alone, which not every drafter keeps to. */
    private static Optional<Finding> kind(Pairing p, Line one, Line other) {
        boolean working = one.kind() == LineKind.WORKING;
        if (working == (other.kind() == LineKind.WORKING)) {
            return Optional.empty();
        }
        return Optional.of(differ(Rule.KIND_DIFFERS, p, word(one.kind()), word(other.kind()), "draw both ends alike"));
    }

    private static String word(LineKind kind) {
        return "a " + kind.name().toLowerCase(Locale.ROOT) + " line";
    }

    private static Finding differ(Rule rule, Pairing p, String one, String other, String remedy) {
        Ref a = p.a().ref();
        Ref b = p.b().ref();
        return new Finding(
                rule,
                a.page().page,
                a.place(),
                List.of(a.id(), b.id()),
                List.of(),
                "One line is " + one + " at " + a.said() + " and " + other + " at its mate " + b.said() + ".",
                remedy);
    }
}
