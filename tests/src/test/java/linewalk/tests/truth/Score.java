package linewalk.tests.truth;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.TreeMap;

/**
 * All figures of one set: ratios from 0 to 1, and counts of what must not happen ({@code silent.*},
 * {@code defects.false_alarms}). A figure that the truth says nothing about is left out.
 */
public final class Score {

    private Score() {}

    public static Map<String, Double> of(Truth truth, JsonNode export) {
        Map<String, Double> figures = new TreeMap<>();
        SheetScore.score(truth, export, figures);
        ReferenceScore references = new ReferenceScore(truth, export);
        references.score(figures);
        PairScore pairs = new PairScore(truth, references);
        pairs.score(figures);
        new DefectScore(truth, export, references, pairs).score(figures);
        ComponentScore components = new ComponentScore(truth, export);
        components.score(figures);
        if (truth.data().has("nets")) {
            components.scorePorts(figures);
            new LineScore(truth, export, references, components).score(figures);
            new PassageScore(truth, export, components).score(figures);
        }
        return figures;
    }
}
