package linewalk.renderer.scheme;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Match marks as nodes, each made once: a part that is cut out again in the same way is known to have been laid out. */
final class MatchNodes {

    private record Mark(Net net, int here, List<Integer> otherPages, boolean above, int part) {}

    private final Paging.MatchMark marks;
    private final Map<Mark, Node> made = new ConcurrentHashMap<>();

    MatchNodes(Paging.MatchMark marks) {
        this.marks = marks;
    }

    /**
     * @param otherPages counted from 0
     * @param part of its page, counted from 0
     */
    Node of(Net net, int here, List<Integer> otherPages, boolean above, int part) {
        return made.computeIfAbsent(new Mark(net, here, otherPages, above, part), this::make);
    }

    private Node make(Mark m) {
        Figure figure = marks.mark(m.net, m.here, m.otherPages, m.above);
        return new Node("match " + m.net.name() + " " + m.part, figure, m.net.height());
    }
}
