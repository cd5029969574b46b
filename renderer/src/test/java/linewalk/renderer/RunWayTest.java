package linewalk.renderer;

import static linewalk.renderer.Bench.at;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The way along a line's drawn course. */
class RunWayTest {

    @Test
    void followsOneRun() {
        assertThat(RunWay.between(List.of(List.of(at(0, 0), at(50, 0), at(50, 80))), at(0, 0), at(50, 80)))
                .contains(List.of(at(0, 0), at(50, 0), at(50, 80)));
    }

    @Test
    void leavesOutBranches() {
        // a main from left to right, a branch down from its middle
        var runs =
                List.of(List.of(at(0, 0), at(50, 0)), List.of(at(50, 0), at(100, 0)), List.of(at(50, 0), at(50, 60)));
        assertThat(RunWay.between(runs, at(0, 0), at(50, 60))).contains(List.of(at(0, 0), at(50, 0), at(50, 60)));
    }

    @Test
    void takesTheShorterSideOfALoop() {
        var runs = List.of(List.of(at(0, 0), at(0, 10), at(40, 10), at(40, 0)), List.of(at(0, 0), at(40, 0)));
        assertThat(RunWay.between(runs, at(0, 0), at(40, 0))).contains(List.of(at(0, 0), at(40, 0)));
    }

    @Test
    void joinsABranchThatMeetsARunBetweenItsPoints() {
        var runs = List.of(List.of(at(0, 0), at(100, 0)), List.of(at(50, 0), at(50, 60)));
        assertThat(RunWay.between(runs, at(0, 0), at(50, 60))).contains(List.of(at(0, 0), at(50, 0), at(50, 60)));
    }

    @Test
    void findsNoneWhereNothingIsDrawn() {
        assertThat(RunWay.between(List.of(), at(0, 0), at(1, 1))).isEmpty();
        assertThat(RunWay.between(List.of(List.of(at(0, 0), at(9, 0))), at(0, 0), at(40, 0)))
                .isEmpty();
    }
}
