package linewalk.linker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.HandTag;
import linewalk.drawing.Point;
import linewalk.drawing.Rule;
import linewalk.drawing.SetSettings;
import linewalk.drawing.Severity;
import linewalk.drawing.UserError;

/**
 * What people say about findings: rules that the settings switch off or weigh otherwise, and findings that a tag keeps
 * with a reason. A kept finding is back as soon as the drawing at its place has changed.
 */
public final class Review {

    /** A tag holds on to a finding no farther than this part of the page's larger side. */
    private static final double REACH = 0.02;

    private final DrawingSet set;
    private final Map<Rule, Optional<Severity>> weights;
    private final List<HandTag.OfKept> tags;
    private final List<Finding> findings = new ArrayList<>();

    private Review(DrawingSet set, SetSettings settings, List<HandTag> tags) {
        this.set = set;
        this.weights = weights(settings);
        this.tags = tags.stream()
                .filter(HandTag.OfKept.class::isInstance)
                .map(HandTag.OfKept.class::cast)
                .toList();
    }

    /**
     * The set with its findings weighed, called by ids, and those that are kept marked so.
     *
     * @param set with all its findings
     * @throws UserError where the settings name a rule or a weight that there is not
     */
    public static DrawingSet of(DrawingSet set, SetSettings settings, List<HandTag> tags) {
        Review review = new Review(set, settings, tags);
        review.call();
        review.tags.forEach(review::keep);
        review.findings.sort(FindingOrder.BY_PLACE);
        return new DrawingSet(
                set.sheets(), set.references(), set.components(), set.enclosures(), set.lines(), review.findings);
    }

    private static Map<Rule, Optional<Severity>> weights(SetSettings settings) {
        Map<Rule, Optional<Severity>> weights = new EnumMap<>(Rule.class);
        settings.rules().forEach((rule, weight) -> weights.put(rule(rule), severity(rule, weight)));
        return weights;
    }

    private static Rule rule(String word) {
        return Arrays.stream(Rule.values())
                .filter(r -> r.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new UserError("set.json weighs a rule '" + word + "' that there is not; rules are "
                        + Arrays.stream(Rule.values()).map(Rule::word).collect(Collectors.joining(", "))));
    }

    private static Optional<Severity> severity(String rule, String weight) {
        if (weight.equals("off")) {
            return Optional.empty();
        }
        return Optional.of(Arrays.stream(Severity.values())
                .filter(s -> s.name().toLowerCase(Locale.ROOT).equals(weight))
                .findFirst()
                .orElseThrow(() -> new UserError("set.json weighs rule " + rule + " with '" + weight
                        + "'; a weight is off, note, warning or error")));
    }

    private void call() {
        Surroundings surroundings = new Surroundings(set);
        Map<String, Integer> uses = new HashMap<>();
        for (Finding f : set.findings()) {
            Optional<Severity> weight =
                    weights.getOrDefault(f.rule(), Optional.of(f.rule().severity()));
            if (weight.isPresent()) {
                String id = surroundings.id(f);
                int use = uses.merge(id, 1, Integer::sum);
                findings.add(f.weighed(weight.get()).called(use == 1 ? id : id + "-" + use));
            }
        }
    }

    private void keep(HandTag.OfKept tag) {
        List<Finding> near = findings.stream()
                .filter(f -> f.rule().word().equals(tag.rule()) && here(tag, f))
                .toList();
        Optional<Finding> same = near.stream()
                .filter(f -> f.kept() == null && plainId(f.id()).equals(plainId(String.valueOf(tag.saw()))))
                .min(java.util.Comparator.comparingDouble(f -> distancePt(tag, f)));
        if (same.isPresent()) {
            findings.set(findings.indexOf(same.get()), same.get().kept(reason(tag)));
        } else if (near.stream().anyMatch(f -> f.kept() == null)) {
            Finding changed =
                    near.stream().filter(f -> f.kept() == null).findFirst().orElseThrow();
            findings.set(
                    findings.indexOf(changed),
                    changed.saying(changed.message() + " It was kept before (" + reason(tag)
                            + "), but the drawing here has changed since."));
        } else if (!weights.getOrDefault(rule(tag), Optional.of(Severity.NOTE)).isEmpty()) {
            findings.add(gone(tag));
        }
    }

    private static Rule rule(HandTag.OfKept tag) {
        return rule(String.valueOf(tag.rule()));
    }

    private static String reason(HandTag.OfKept tag) {
        return tag.reason() == null || tag.reason().isBlank() ? "no reason told" : tag.reason();
    }

    private static String plainId(String id) {
        return id.replaceFirst("-\\d+$", "");
    }

    private boolean here(HandTag.OfKept tag, Finding f) {
        if (tag.page() == null || f.page() == null) {
            return tag.page() == null && f.page() == null;
        }
        boolean source = tag.source() == null || tag.source().equals(f.page().source());
        return source && tag.page() == f.page().page() && distancePt(tag, f) <= reachPt(f);
    }

    private double reachPt(Finding f) {
        return REACH
                * Math.max(
                        set.getSheet(f.page()).widthPt(), set.getSheet(f.page()).heightPt());
    }

    private static double distancePt(HandTag.OfKept tag, Finding f) {
        boolean placed = tag.xPt() != null && tag.yPt() != null;
        return f.place() == null || !placed
                ? Objects.equals(f.place() == null, !placed) ? 0 : Double.MAX_VALUE
                : f.place().distancePt(new Point(tag.xPt(), tag.yPt()));
    }

    private static Finding gone(HandTag.OfKept tag) {
        return new Finding(
                Rule.TAG_UNPLACED,
                null,
                null,
                List.of(),
                List.of(),
                "The tag that keeps a finding " + tag.rule() + " (" + reason(tag)
                        + ") fits nothing: there is no such finding at its place any more.",
                "remove the tag");
    }
}
