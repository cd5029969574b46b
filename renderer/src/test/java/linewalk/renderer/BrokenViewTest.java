package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Point;
import org.junit.jupiter.api.Test;

/** Which areas of an original a cutting shows, and how large. */
class BrokenViewTest {

    /** Two parts far apart, joined by a line with one bend. */
    private static BrokenView view(List<SourceLetters.Letter> letters) {
        Bench bench = new Bench();
        Component a = bench.part(1, "V1", Kind.CHECK_VALVE, 100, 100, "B@100,125");
        Component b = bench.part(1, "V2", Kind.CHECK_VALVE, 700, 500, "A@675,500");
        bench.through(a, null, "B", null);
        bench.along(1, null, Bench.at(100, 125), Bench.at(100, 500), Bench.at(675, 500));
        bench.through(b, "A", null, null);
        PrintJob job = bench.job();
        Stay stay = Stay.of(job.trace().legs()).get(0);
        return BrokenView.of(stay, job.set().getSheet(Bench.page(1)), letters);
    }

    private static List<SourceLetters.Letter> letters(String word, double xPt, double yPt, double capPt) {
        List<SourceLetters.Letter> letters = new ArrayList<>();
        for (int i = 0; i < word.length(); i++) {
            Box box = new Box(xPt + i * capPt, yPt - capPt, xPt + (i + 1) * capPt, yPt);
            letters.add(new SourceLetters.Letter(word.substring(i, i + 1), box, capPt));
        }
        return letters;
    }

    @Test
    void pullsTheEmptyStretchesTogether() {
        BrokenView view = view(List.of());
        assertThat(view.scale).isEqualTo(1);
        assertThat(view.extent().getWidth()).isLessThan(300);
        assertThat(view.extent().getHeight()).isLessThan(350);
    }

    @Test
    void keepsStraightLinesStraightThroughTheGaps() {
        BrokenView view = view(List.of());
        List<Point> course = view.stay.courses().values().iterator().next();
        List<BrokenView.Stretch> stretches = view.map(course);
        assertThat(stretches).extracting(BrokenView.Stretch::seen).containsExactly(true, false, true, false, true);
        double downX = stretches.get(0).points().get(0).getX();
        assertThat(stretches.get(1).points())
                .allSatisfy(p -> assertThat(p.getX()).isEqualTo(downX));
    }

    @Test
    void bringsSmallLetteringToAReadableSize() {
        BrokenView view = view(letters("10um", 110, 90, 5));
        assertThat(5 * view.scale * 25.4 / 72).isGreaterThanOrEqualTo(2.5);
    }

    @Test
    void doesNotGrowForTheFinePrintOfATitleBlock() {
        assertThat(view(letters("10um", 110, 90, 3)).scale).isEqualTo(1);
    }

    @Test
    void showsTheDesignationEvenWhereItStandsApart() {
        List<SourceLetters.Letter> tag = letters("V1", 195, 105, 8);
        Box word = tag.get(0).box().union(tag.get(1).box());
        assertThat(view(List.of()).cells).noneMatch(c -> c.source().contains(word));
        assertThat(view(tag).cells).anyMatch(c -> c.source().contains(word));
    }

    @Test
    void cutsNoWordThatStandsAtItsEdge() {
        // begins inside the window about V1 and ends outside
        List<SourceLetters.Letter> note = letters("NOTE", 145, 70, 8);
        Box word = SourceLetters.phrases(note).get(0);
        assertThat(view(List.of()).cells).noneMatch(c -> c.source().contains(word));
        assertThat(view(note).cells).anyMatch(c -> c.source().contains(word));
    }

    @Test
    void joinsLettersToPhrasesOverABlankButNotOverAGap() {
        List<SourceLetters.Letter> text = new ArrayList<>(letters("10", 100, 50, 8));
        text.addAll(letters("um", 121, 50, 8));
        text.addAll(letters("P", 160, 50, 8));
        assertThat(SourceLetters.phrases(text)).hasSize(2);
    }
}
