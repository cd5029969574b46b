package linewalk.importer.kind;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Kind;
import linewalk.drawing.KindReading;
import linewalk.drawing.KindReading.Choice;
import linewalk.drawing.Position;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Marks;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Symbols;

/** Reads what a figure is and what it joins; says nothing where no rule fits. */
public final class KindReader {

    /** In the evidence of a kind where a figure holds more than what its kind is known by. */
    public static final String UNEXPLAINED = "more inside that was not made out";

    /** What is less likely than this is no kind. */
    private static final double LEAST = 0.5;

    /** Passages are given only where the kind is this sure. */
    private static final double SURE = 0.8;

    /** What is left over inside, in sizes of the figure: less is ragged ink; more does not count. */
    private static final double SOME = 0.1;

    private static final double MOST = 0.4;

    /**
     * @param kind what the shape says
     * @param positions what it joins, empty where that is not surely read
     */
    public record Read(KindReading kind, List<Position> positions) {

        public Kind surely() {
            return kind.likelihood() >= LEAST ? kind.kind() : Kind.UNKNOWN;
        }
    }

    private static final Set<Kind> PRESSED = EnumSet.of(Kind.RELIEF_VALVE, Kind.SEQUENCE_VALVE, Kind.UNLOADING_VALVE);

    private final PictureMaker pictures;

    private final boolean scanned;

    /**
     * @param named figures that are parts of their own
     * @param scanned marks are what an image shows: what is left over inside a figure may be what was not made out
     */
    public KindReader(Marks marks, List<Label> labels, Symbols symbols, Set<Body> named, boolean scanned) {
        pictures = new PictureMaker(marks, labels, symbols, named, scanned);
        this.scanned = scanned;
    }

    /**
     * @param bodies the figure, and nameless ones that hang on it
     * @param tag its designation
     */
    public Optional<Read> read(List<Body> bodies, List<Contact> contacts, String tag) {
        Picture picture = pictures.of(bodies, contacts);
        Motifs motifs = Motifs.of(picture);
        Optional<Verdict> seen = verdict(picture, motifs, scanned).map(v -> withTag(v, tag));
        return seen.map(v -> scanned ? doubted(v, motifs) : v).map(v -> {
            List<Position> positions = sure(v) < SURE ? List.of() : new Passing(motifs, v.kind()).positions();
            return new Read(v.reading(), positions);
        });
    }

    /** The more is left over inside, the less likely is what was seen all there is. */
    private static Verdict doubted(Verdict v, Motifs motifs) {
        double share = new Leftover(motifs, v.kind()).share();
        return share < SOME ? v : v.weaker(1 - Math.min(MOST, share), ", " + UNEXPLAINED);
    }

    /** Kinds that pass oil in one and the same way are sure together. */
    private static double sure(Verdict v) {
        return v.choices().stream()
                .filter(c -> c.kind() == v.kind() || PRESSED.contains(v.kind()) && PRESSED.contains(c.kind()))
                .mapToDouble(Choice::likelihood)
                .sum();
    }

    /** Motifs that no other symbol holds go first. */
    private static Optional<Verdict> verdict(Picture picture, Motifs motifs, boolean scanned) {
        ValveRule valves = new ValveRule(motifs);
        BoxRule boxes = new BoxRule(picture);
        RoundRule round = new RoundRule(picture);
        return new CylinderRule(picture, scanned)
                .read()
                .or(round::controlled)
                .or(() -> row(motifs))
                .or(valves::control)
                .or(round::read)
                .or(boxes::diamond)
                .or(boxes::capsule)
                .or(valves::throttle)
                .or(boxes::cock)
                .or(valves::check)
                .or(boxes::poppet)
                .or(boxes::contacts)
                .or(() -> new HoseRule(picture).read());
    }

    private static Optional<Verdict> row(Motifs motifs) {
        return motifs.row() < 2
                ? Optional.empty()
                : Optional.of(Verdict.of(Kind.DIRECTIONAL_VALVE, 0.9, "a row of like squares")
                        .or(Kind.PROPORTIONAL_VALVE, 0.1));
    }

    /** Letters that name another group make every choice of the shape less likely, and order those that are close. */
    private static Verdict withTag(Verdict v, String tag) {
        List<Choice> weighed = new ArrayList<>();
        for (Choice c : v.choices()) {
            int agrees = TagHint.agrees(tag, c.kind());
            double likelihood =
                    agrees > 0 ? 1 - 0.7 * (1 - c.likelihood()) : agrees < 0 ? 0.7 * c.likelihood() : c.likelihood();
            weighed.add(new Choice(c.kind(), likelihood));
        }
        boolean close = weighed.size() > 1 && v.choices().get(1).likelihood() > 0.3;
        if (close) {
            weighed.sort((a, b) -> Double.compare(b.likelihood(), a.likelihood()));
        }
        int first = TagHint.agrees(tag, weighed.get(0).kind());
        String letters = first == 0
                ? ""
                : first > 0 ? "; its letter agrees" : "; its letter " + TagHint.letters(tag) + " says otherwise";
        return new Verdict(List.copyOf(weighed), v.evidence() + letters);
    }
}
