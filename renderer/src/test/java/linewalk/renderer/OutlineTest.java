package linewalk.renderer;

import static linewalk.renderer.Bench.at;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The main corners of a course. */
class OutlineTest {

    @Test
    void leavesOutAHop() {
        var course = List.of(at(0, 0), at(45, 0), at(50, 5), at(55, 0), at(100, 0));
        assertThat(Outline.of(course, 10)).containsExactly(at(0, 0), at(100, 0));
    }

    @Test
    void keepsCorners() {
        var course = List.of(at(0, 0), at(100, 0), at(100, 80), at(30, 80));
        assertThat(Outline.of(course, 10)).isEqualTo(course);
    }
}
