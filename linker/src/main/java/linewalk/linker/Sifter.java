package linewalk.linker;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Flow;
import linewalk.drawing.Origin;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.ReferenceReading.Says;
import linewalk.drawing.Rule;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;

/**
 * Takes candidates for references, or drops them: by their page's own evidence and by their likeness to the rest of the
 * set. Chooses among what a text may say only where the page itself finds several likely; a text layer that is sure
 * of itself is never talked out of a drafting error.
 */
final class Sifter {

    private static final double DROPPED = 0.4;
    static final double DOUBTFUL = 0.7;
    private static final double SURE_READING = 0.9;
    private static final double STRONG = 0.8;
    private static final int SEVERAL = 3;

    /** Odds by what the set says. */
    private static final double ANSWERED = 20;

    private static final double KNOWN_SHEET = 1.5;
    private static final double STRANGE_SHEET = 0.4;
    private static final double COMMON_FORM = 2;
    private static final double USUAL_FORM = 3;
    private static final double RARE_FORM = 0.6;
    /** {@code 24.9K} at a line's end, among references of another form and beyond the set's sheets, is rather a value. */
    private static final double RARE_AND_STRANGE = 0.2;

    /** Nor does any grid of the set have such a zone. */
    private static final double FOREIGN_NOWHERE = 0.05;

    private final List<PageDraft> pages;
    private final List<Finding> findings;
    private final FarPart farParts;
    private final Map<String, List<PageDraft>> sheets = new HashMap<>();
    private final Map<String, Integer> strongForms = new HashMap<>();
    /** How many of them lead to a sheet and zone that the set has. */
    private final Map<String, Integer> knownForms = new HashMap<>();

    /** "from sheet > to sheet @ zone" of every likely reading, by the place it stands. */
    private final Map<String, Integer> pointing = new HashMap<>();

    private final Set<ReferenceReading> strong = Collections.newSetFromMap(new IdentityHashMap<>());
    /** Ids of what is likely no reference at all. */
    private final Set<String> strange = new HashSet<>();

    private boolean tipsSpeak;

    Sifter(List<PageDraft> pages, List<Finding> findings) {
        this.pages = pages;
        this.findings = findings;
        this.farParts = new FarPart(pages);
    }

    /** Leaves the references sorted by id; line ends at dropped candidates become open ends. */
    List<Ref> sift() {
        Map<PageDraft, Placing> placings = new HashMap<>();
        for (PageDraft p : pages) {
            sheets.computeIfAbsent(Names.sheetKey(p.name), k -> new ArrayList<>())
                    .add(p);
            placings.put(p, new Placing(p));
        }
        pages.forEach(p -> p.candidates.forEach(r -> note(p, placings.get(p), r)));
        pages.forEach(p -> p.candidates.forEach(r -> noteAnswered(p, placings.get(p), r)));
        tipsSpeak = tipsSpeak();
        List<Ref> refs = new ArrayList<>();
        for (PageDraft p : pages) {
            Set<String> kept = new HashSet<>();
            for (ReferenceReading r : p.candidates) {
                Ref ref = judge(p, placings.get(p), r);
                if (ref != null) {
                    refs.add(ref);
                    kept.add(ref.id());
                }
            }
            LineEdits.replaceEnds(
                    p,
                    e -> e instanceof End.AtReference a && !kept.contains(a.reference()) ? new End.Open(e.place()) : e);
        }
        refs.sort(Comparator.comparing(Ref::id));
        return refs;
    }

    /** Ids of references that are kept in doubt of being any; needs {@link #sift}. */
    Set<String> strange() {
        return strange;
    }

    /** Where all tips point one way, seen from the line, tips are a shape; where both ways occur, they mean the flow. */
    private boolean tipsSpeak() {
        long fewer = Math.min(tips(Flow.IN), tips(Flow.OUT));
        return fewer >= 2 && fewer * 10 >= Math.max(tips(Flow.IN), tips(Flow.OUT));
    }

    private long tips(Flow flow) {
        return pages.stream()
                .flatMap(p -> p.candidates.stream())
                .filter(r -> r.tip() == flow)
                .count();
    }

    private void note(PageDraft page, Placing placing, ReferenceReading r) {
        Set<String> said = new HashSet<>();
        for (Says s : likely(r)) {
            for (Target t : s.targets()) {
                for (String from : places(page, placing, r)) {
                    said.add(from + ">" + place(t, r));
                }
            }
        }
        said.forEach(k -> pointing.merge(k, 1, Integer::sum));
    }

    /** What is plain on its page, or answered from where it points, shows the form of the set's references. */
    private void noteAnswered(PageDraft page, Placing placing, ReferenceReading r) {
        if (strong(page, placing, r)) {
            strong.add(r);
            strongForms.merge(one(r.form()), 1, Integer::sum);
            boolean known =
                    likely(r).stream().anyMatch(s -> s.targets().stream().anyMatch(this::known));
            knownForms.merge(one(r.form()), known ? 1 : 0, Integer::sum);
        }
    }

    private boolean strong(PageDraft page, Placing placing, ReferenceReading r) {
        return r.confidence() >= STRONG
                || likely(r).stream().anyMatch(s -> s.targets().stream().anyMatch(t -> answered(page, placing, r, t)));
    }

    /** The ways to read a candidate that its page finds likely. */
    private static List<Says> likely(ReferenceReading r) {
        if (r.readings().isEmpty()) {
            return List.of();
        }
        Says top = r.readings().get(0);
        if (top.likelihood() >= SURE_READING || r.origin() == Origin.HAND) {
            return List.of(top);
        }
        return r.readings().stream()
                .filter(s -> s.likelihood() >= top.likelihood() / 5)
                .toList();
    }

    /** Keys of where a candidate stands: its zones, and its sheet with its label where others go by labels. */
    private static List<String> places(PageDraft page, Placing placing, ReferenceReading r) {
        List<String> keys = new ArrayList<>();
        String sheet = Names.sheetKey(page.name);
        for (Zone z : placing.touched(r)) {
            keys.add(sheet + "@" + z);
        }
        if (r.label() != null) {
            keys.add(sheet + "#" + Names.labelKey(r.label()));
        }
        return keys;
    }

    private static String place(Target t, ReferenceReading r) {
        String sheet = Names.sheetKey(t.sheet());
        return t.zone() != null ? sheet + "@" + t.zone() : sheet + "#" + Names.labelKey(r.label());
    }

    private Ref judge(PageDraft page, Placing placing, ReferenceReading r) {
        List<Says> likely = likely(r);
        if (likely.isEmpty() || likely.get(0).targets().isEmpty()) {
            return null;
        }
        Says best = null;
        double bestWeight = -1;
        double sum = 0;
        for (Says s : likely) {
            double weight = s.likelihood() * context(page, placing, r, s);
            sum += weight;
            if (weight > bestWeight) {
                best = s;
                bestWeight = weight;
            }
        }
        double any = r.origin() == Origin.HAND ? 1 : posterior(page, placing, r, best);
        if (any < DROPPED) {
            return null;
        }
        double confidence = r.origin() == Origin.HAND ? 1 : any * bestWeight / sum;
        Ref ref = ref(page, placing, r, best, confidence);
        if (confidence < DOUBTFUL) {
            findings.add(doubtful(ref, likely));
        }
        return ref;
    }

    private double context(PageDraft page, Placing placing, ReferenceReading r, Says s) {
        double odds = 1;
        for (Target t : s.targets()) {
            odds *= answered(page, placing, r, t) ? ANSWERED : sheets.containsKey(Names.sheetKey(t.sheet())) ? 1 : 0.3;
        }
        return odds;
    }

    /** Something stands where the target points, and says that it goes on here. */
    private boolean answered(PageDraft page, Placing placing, ReferenceReading r, Target t) {
        String there = place(t, r);
        for (String here : places(page, placing, r)) {
            int back = pointing.getOrDefault(there + ">" + here, 0);
            if (back > (there.equals(here) ? 1 : 0)) {
                return true;
            }
        }
        return false;
    }

    private double posterior(PageDraft page, Placing placing, ReferenceReading r, Says s) {
        double p = Math.min(Math.max(r.confidence(), 0.001), 0.999);
        double odds = p / (1 - p);
        int like = strongForms.getOrDefault(one(r.form()), 0) - (strong.contains(r) ? 1 : 0);
        boolean known = s.targets().stream().anyMatch(this::known);
        double form = known ? form(like) : isForeign(r.form()) ? foreign(s) : isRare(like) ? strange(r, s) : form(like);
        if (form <= RARE_AND_STRANGE) {
            strange.add(r.id());
        }
        odds *= form;
        odds *= known ? KNOWN_SHEET : STRANGE_SHEET;
        odds *= s.targets().stream().anyMatch(t -> answered(page, placing, r, t)) ? ANSWERED : 1;
        return odds / (1 + odds);
    }

    /**
     * Of what is printed in this form hardly anything leads into the set, while another form does: {@code X1:26} is then a
     * clamp of a device, not zone X1 of sheet 26.
     */
    private boolean isForeign(String form) {
        int strongOnes = strongForms.getOrDefault(one(form), 0);
        int knownOnes = knownForms.getOrDefault(one(form), 0);
        return strongOnes >= SEVERAL
                && knownOnes * 4 <= strongOnes
                && knownForms.values().stream().anyMatch(n -> n >= SEVERAL && n > knownOnes);
    }

    /** A zone that was read from drawn letters may be another. */
    private double strange(ReferenceReading r, Says s) {
        return r.origin() == Origin.TEXT ? foreign(s) : RARE_AND_STRANGE;
    }

    private double foreign(Says s) {
        boolean nowhere = s.targets().stream().allMatch(t -> t.zone() != null && !isZone(t.zone()));
        return nowhere ? FOREIGN_NOWHERE : RARE_AND_STRANGE;
    }

    /** Several of one form behind one another are of that form. */
    private static String one(String form) {
        String all = String.valueOf(form);
        for (int n = 1; n <= all.length() / 2; n++) {
            if (all.length() % n == 0
                    && all.substring(0, n).repeat(all.length() / n).equals(all)) {
                return all.substring(0, n);
            }
        }
        return all;
    }

    /** A sheet without a grid of its own has the zones of its fellows. */
    private boolean known(Target t) {
        List<PageDraft> there = sheets.getOrDefault(Names.sheetKey(t.sheet()), List.of());
        if (there.isEmpty() || t.zone() == null) {
            return !there.isEmpty();
        }
        return there.stream().allMatch(p -> p.grid() == null ? isZone(t.zone()) : p.has(t.zone()));
    }

    private boolean isZone(Zone zone) {
        return pages.stream().allMatch(p -> p.grid() == null)
                || pages.stream().anyMatch(p -> p.grid() != null && p.has(zone));
    }

    /** @param like how many others of the set are printed in this form */
    private double form(int like) {
        return isRare(like) ? RARE_FORM : like >= 10 ? USUAL_FORM : like >= 3 ? COMMON_FORM : 1;
    }

    private boolean isRare(int like) {
        return strong.size() >= 10 && like * 20 < strong.size();
    }

    private Ref ref(PageDraft page, Placing placing, ReferenceReading r, Says says, double confidence) {
        String label = r.label() == null || r.label().isBlank() ? null : r.label();
        return new Ref(
                page,
                r.id(),
                r.place(),
                r.box(),
                page.zoneAt(r.place()).orElse(null),
                placing.touched(r),
                r.text(),
                says.targets(),
                label,
                r.flow() == Flow.UNKNOWN && tipsSpeak ? r.tip() : r.flow(),
                r.origin(),
                confidence,
                placing.kind(r.id()),
                Ref.Keys.of(page, farParts.named(label) ? null : label, says.targets()));
    }

    private Finding doubtful(Ref r, List<Says> likely) {
        String others =
                likely.size() < 2 ? "" : "; it may also read " + likely.get(1).targets();
        boolean known = r.keys().targets().stream().anyMatch(sheets::containsKey);
        String strange = known ? "" : ": the set has no such sheet, and its references look otherwise";
        return new Finding(
                Rule.DOUBTFUL_READING,
                r.page().page,
                r.place(),
                List.of(r.id()),
                List.of(),
                r.said() + " was read as " + r.targets() + " with doubt" + strange + others + ".",
                "say what it is with a reference tag");
    }
}
