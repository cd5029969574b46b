package linewalk.linker;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.Component;
import linewalk.drawing.Finding;
import linewalk.drawing.Kind;
import linewalk.drawing.Origin;
import linewalk.drawing.Part;
import linewalk.drawing.Rule;

/**
 * What the parts list and the designation add to a drawn component. The list says what kind it is where only the shape of
 * the symbol was read; where the two disagree that is a finding. A drawn outline that is plain keeps its kind; the letter
 * of ISO 1219-2:1995 (1P1, 1A1) is a weak hint for what nothing else tells.
 */
final class PartEvidence {

    private static final double SURE = 0.9;
    private static final Pattern DESIGNATION = Pattern.compile("\\d*([PA])\\d+");

    private final Map<String, Part> byTag = new HashMap<>();

    PartEvidence(List<Part> parts) {
        parts.forEach(p -> byTag.putIfAbsent(Names.plain(p.tag()), p));
    }

    void fill(List<PageDraft> pages) {
        for (PageDraft p : pages) {
            p.components.replaceAll(c -> fill(c, p));
        }
    }

    private Component fill(Component c, PageDraft page) {
        Part part = c.tag() == null ? null : byTag.get(Names.plain(c.tag()));
        boolean tank = c.kind() == Kind.TANK && Names.plain(c.tag()).isEmpty();
        Kind kind = kind(c, part);
        boolean told = c.origin() == Origin.HAND
                || c.symbol() == null
                || kind == c.kind()
                || c.symbol().allows(kind);
        if (!told) {
            page.doubts.add(otherwise(c, kind));
        }
        String setting = c.setting() == null && part != null ? part.setting() : c.setting();
        return new Component(
                c.id(),
                tank ? "TANK" : c.tag() == null ? "" : c.tag(),
                c.page(),
                c.place(),
                c.box(),
                kind,
                setting,
                c.origin(),
                c.confidence(),
                c.ports(),
                told ? c.positions() : List.of(),
                c.symbol());
    }

    /** Shape and list disagree: the list is kept, and what the shape passes does not hold for it. */
    private static Finding otherwise(Component c, Kind listed) {
        return new Finding(
                Rule.DOUBTFUL_READING,
                c.page(),
                c.place(),
                List.of(),
                List.of(c.tag()),
                c.tag() + " is a " + listed.word() + " in the parts list and looks like a "
                        + c.symbol().kind().word() + " ("
                        + c.symbol().evidence() + ")",
                "correct the parts list, or say the kind with a component tag");
    }

    private static Kind kind(Component c, Part part) {
        Kind drawn = c.kind() == null ? Kind.UNKNOWN : c.kind();
        boolean read = c.symbol() != null && c.origin() != Origin.HAND;
        boolean drawnWins = drawn != Kind.UNKNOWN && !read && (c.origin() == Origin.HAND || c.confidence() >= SURE);
        if (!drawnWins && part != null) {
            Optional<Kind> listed = listed(part);
            if (listed.isPresent()) {
                return listed.get();
            }
        }
        return drawn != Kind.UNKNOWN ? drawn : hint(c);
    }

    private static Optional<Kind> listed(Part part) {
        if (part.kind() != null && part.kind() != Kind.UNKNOWN) {
            return Optional.of(part.kind());
        }
        return part.description() == null ? Optional.empty() : inWords(part.description());
    }

    /** The kind whose words all stand in the description, the longest name first. */
    private static Optional<Kind> inWords(String description) {
        List<String> words = List.of(description.toLowerCase(Locale.ROOT).split("[^a-z]+"));
        Kind best = null;
        for (Kind k : Kind.values()) {
            List<String> name = List.of(k.word().split("-"));
            if (k != Kind.UNKNOWN
                    && words.containsAll(name)
                    && (best == null || name.size() > best.word().split("-").length)) {
                best = k;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Kind hint(Component c) {
        Matcher m = DESIGNATION.matcher(Names.plain(c.tag()));
        if (!m.matches()) {
            return Kind.UNKNOWN;
        }
        return m.group(1).equals("P") ? Kind.PUMP : c.ports().size() == 2 ? Kind.CYLINDER : Kind.UNKNOWN;
    }
}
