package linewalk.samples.machine;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.symbol.Place;
import linewalk.samples.symbol.Spot;
import linewalk.samples.symbol.Symbol;

/**
 * One sheet being described: parts first, then nets as runs of words. A run's words: {@code TAG.PORT} a port,
 * {@code x12} or {@code y7} go along one axis to there, {@code @20,27} a join on an earlier run, {@code >101 <101 =101}
 * a reference with flow out, in or not stated (as first word with its place: {@code <101@4,12}).
 */
public final class SheetPlan {
    private final int number;
    private final String title;
    private final List<Part> parts = new ArrayList<>();
    private final List<Net> nets = new ArrayList<>();
    private final List<Reference> references = new ArrayList<>();
    private final List<Furniture> furniture = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<List<String>> revisions = new ArrayList<>();

    public SheetPlan(int number, String title) {
        this.number = number;
        this.title = title;
        revisions.add(List.of("A", "-", "FIRST ISSUE", "2024-03-11"));
    }

    public int number() {
        return number;
    }

    public String title() {
        return title;
    }

    public List<Part> parts() {
        return List.copyOf(parts);
    }

    public List<Net> nets() {
        return List.copyOf(nets);
    }

    public List<Reference> references() {
        return List.copyOf(references);
    }

    public List<Furniture> furniture() {
        return List.copyOf(furniture);
    }

    public List<String> notes() {
        return List.copyOf(notes);
    }

    /** Revision, zone, description, date. */
    public List<List<String>> revisions() {
        return List.copyOf(revisions);
    }

    public String revision() {
        return revisions.get(revisions.size() - 1).get(0);
    }

    PartPlan part(String tag, String description, Symbol symbol, double x, double y) {
        return new PartPlan(this, tag, description, symbol, new Place(x, y, 0, false));
    }

    public void add(Part part) {
        parts.add(part);
    }

    NetPlan net(LineKind kind, String classes) {
        return new NetPlan(this, kind, classes);
    }

    NetPlan main(String classes) {
        return net(LineKind.MAIN, classes);
    }

    NetPlan drain() {
        return net(LineKind.DRAIN, "DDDDDDDD");
    }

    public void add(LineKind kind, String classes, List<Run> runs) {
        nets.add(new Net("n" + number + "." + (nets.size() + 1), number, kind, classes, runs));
    }

    /** Puts a reference on the sheet. */
    public Reference reference(List<String> links, Flow flow, Spot end, Heading heading, String label, boolean sized) {
        String id = "r" + number + "." + (references.size() + 1);
        Reference reference = new Reference(id, number, links, flow, end, heading, label, sized);
        references.add(reference);
        return reference;
    }

    Part part(String tag) {
        return parts.stream()
                .filter(part -> part.tag().equals(tag))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no part " + tag + " on sheet " + number));
    }

    public SheetPlan with(Furniture thing) {
        furniture.add(thing);
        return this;
    }

    public SheetPlan note(String text) {
        notes.add(text);
        return this;
    }

    SheetPlan revised(String letter, String zone, String text, String date) {
        revisions.add(List.of(letter, zone, text, date));
        return this;
    }
}
