package linewalk.linker;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Line;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;

/**
 * A finding's id: short, and the same as long as what it says and what is drawn around its place stay the same. Places
 * themselves do not count, since a new print of an unchanged drawing may shift them a little.
 */
final class Surroundings {

    /** Around a finding, as a part of the page's larger side. */
    private static final double AROUND = 0.04;

    private static final int LETTERS = 8;

    private final Map<PageKey, List<Reference>> references = new HashMap<>();
    private final Map<PageKey, List<Component>> components = new HashMap<>();
    private final Map<PageKey, List<Line>> lines = new HashMap<>();
    private final Map<PageKey, Double> aroundPt = new HashMap<>();
    private final Map<String, String> words = new HashMap<>();

    Surroundings(DrawingSet set) {
        set.references().forEach(r -> add(references, r.page(), r));
        set.components().forEach(c -> add(components, c.page(), c));
        set.lines().forEach(l -> add(lines, l.page(), l));
        set.references().forEach(r -> words.put(r.id(), r.text() + "|" + r.label()));
        set.components().forEach(c -> c.ports().forEach(p -> words.put(p.id(), c.tag() + ":" + p.name())));
        set.sheets().forEach(s -> aroundPt.put(s.page(), AROUND * Math.max(s.widthPt(), s.heightPt())));
    }

    private static <T> void add(Map<PageKey, List<T>> map, PageKey page, T thing) {
        map.computeIfAbsent(page, k -> new ArrayList<>()).add(thing);
    }

    String id(Finding f) {
        StringBuilder text = new StringBuilder(f.rule().word()).append('\n').append(f.message());
        f.references().forEach(r -> text.append('\n').append(words.get(r)));
        if (f.page() != null && f.place() != null) {
            around(f.page(), f.place()).forEach(w -> text.append('\n').append(w));
        }
        return digest(text.toString());
    }

    private TreeSet<String> around(PageKey page, Point place) {
        double pt = aroundPt.getOrDefault(page, 0.0);
        TreeSet<String> said = new TreeSet<>();
        references.getOrDefault(page, List.of()).stream()
                .filter(r -> r.box().distancePt(place) <= pt)
                .forEach(r -> said.add("reference " + words.get(r.id()) + " " + r.targets() + " " + r.flow()));
        components.getOrDefault(page, List.of()).stream()
                .filter(c -> c.box().distancePt(place) <= pt)
                .forEach(c -> said.add(
                        "part " + c.tag() + " " + c.kind() + " " + c.ports().size()));
        lines.getOrDefault(page, List.of()).stream()
                .filter(l -> l.ends().stream().anyMatch(e -> e.place().distancePt(place) <= pt))
                .forEach(l -> said.add("line " + l.kind() + " " + l.label() + " " + l.size() + " " + ends(l)));
        return said;
    }

    private List<String> ends(Line l) {
        return l.ends().stream().map(this::end).sorted().toList();
    }

    private String end(End e) {
        if (e instanceof End.AtPort p) {
            return String.valueOf(words.get(p.port()));
        }
        return e instanceof End.AtReference r ? String.valueOf(words.get(r.reference())) : "open";
    }

    private static String digest(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum).substring(0, LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java platform has it
        }
    }
}
