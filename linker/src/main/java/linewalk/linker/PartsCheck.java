package linewalk.linker;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import linewalk.drawing.Component;
import linewalk.drawing.Finding;
import linewalk.drawing.Kind;
import linewalk.drawing.Part;
import linewalk.drawing.Rule;

/** The drawn parts against each other and against the parts list: designations, what is listed, settings. */
final class PartsCheck {

    /** A designation that was read with doubt proves nothing. */
    private static final double READ = 0.7;

    private static final int SEVERAL = 2;

    private final Map<String, List<Drawn>> drawn = new TreeMap<>();
    private final Map<String, Part> listed = new LinkedHashMap<>();
    private final Set<Kind> kindsListed = EnumSet.noneOf(Kind.class);

    /** What was drawn before the list filled its gaps. */
    private record Drawn(Component part, PageDraft page) {
        String said() {
            return page.address(part.place());
        }
    }

    PartsCheck(List<PageDraft> pages, List<Part> list) {
        for (PageDraft p : pages) {
            for (Component c : p.components) {
                if (!Names.plain(c.tag()).isEmpty() && c.confidence() >= READ) {
                    drawn.computeIfAbsent(Names.plain(c.tag()), k -> new ArrayList<>())
                            .add(new Drawn(c, p));
                }
            }
        }
        list.forEach(p -> listed.putIfAbsent(Names.plain(p.tag()), p));
        drawn.forEach((tag, parts) -> {
            if (listed.containsKey(tag)) {
                kindsListed.add(parts.get(0).part.kind());
            }
        });
    }

    void check(List<Finding> findings) {
        if (unique()) {
            drawn.values().forEach(parts -> twice(parts, findings));
        }
        if (!listed.isEmpty()) {
            drawn.forEach((tag, parts) -> against(tag, parts.get(0), findings));
            notDrawn(findings);
        }
    }

    /** Where texts beside parts often come twice they are values or types, no designations. */
    private boolean unique() {
        int parts = drawn.values().stream().mapToInt(List::size).sum();
        int repeated = parts - drawn.size();
        return repeated <= SEVERAL || repeated * 10 <= parts;
    }

    /** One part may be drawn on several sheets; two on one sheet, or of two kinds, or with the same ports, are two. */
    private static void twice(List<Drawn> parts, List<Finding> findings) {
        for (int i = 1; i < parts.size(); i++) {
            Drawn b = parts.get(i);
            for (Drawn a : parts.subList(0, i)) {
                String why = why(a, b);
                if (why != null) {
                    findings.add(finding(
                            Rule.TAG_TWICE,
                            b,
                            b.part.tag() + " stands at two parts, on " + a.said() + " and on " + b.said() + ": " + why
                                    + ".",
                            "give one of them its own designation"));
                    break;
                }
            }
        }
    }

    private static String why(Drawn a, Drawn b) {
        if (a.part.kind() == Kind.TANK && b.part.kind() == Kind.TANK) {
            return null; // every sheet draws the reservoir anew
        }
        if (a.part.kind() == Kind.UNKNOWN || b.part.kind() == Kind.UNKNOWN) {
            return null; // an outline of unknown kind may be part of the other
        }
        if (a.page == b.page) {
            return "both are drawn on one sheet";
        }
        Kind one = a.part.kind();
        Kind other = b.part.kind();
        if (one != other) {
            return "one is drawn as a " + one.word() + ", one as a " + other.word();
        }
        Set<String> shared = ports(a.part);
        shared.retainAll(ports(b.part));
        return shared.isEmpty() ? null : "both have a line at port " + String.join(", ", shared);
    }

    private static Set<String> ports(Component c) {
        Set<String> names = new HashSet<>();
        c.ports().stream().filter(p -> p.name() != null).forEach(p -> names.add(p.name()));
        return names;
    }

    private void against(String tag, Drawn d, List<Finding> findings) {
        Part part = listed.get(tag);
        if (part == null) {
            if (kindsListed.contains(d.part.kind())) {
                findings.add(finding(
                        Rule.NOT_LISTED,
                        d,
                        d.part.tag() + " is drawn on " + d.said() + " and is not in the parts list, which has others of"
                                + " its kind (" + d.part.kind().word() + ").",
                        "add it to the parts list, or correct its designation"));
            }
        } else if (Setting.differ(d.part.setting(), part.setting())) {
            findings.add(finding(
                    Rule.SETTING_DIFFERS,
                    d,
                    d.part.tag() + " is set to " + d.part.setting() + " on " + d.said() + " and to " + part.setting()
                            + " in the parts list.",
                    "find out which is right, and correct the other"));
        }
    }

    private void notDrawn(List<Finding> findings) {
        for (Map.Entry<String, Part> e : listed.entrySet()) {
            if (!drawn.containsKey(e.getKey())) {
                findings.add(new Finding(
                        Rule.NOT_DRAWN,
                        null,
                        null,
                        List.of(),
                        List.of(e.getValue().tag()),
                        e.getValue().tag() + " is in the parts list and was not found on any sheet.",
                        "take it out of the list, or tag it where it is drawn"));
            }
        }
    }

    private static Finding finding(Rule rule, Drawn d, String message, String remedy) {
        return new Finding(rule, d.page.page, d.part.place(), List.of(), List.of(d.part.tag()), message, remedy);
    }
}
