package linewalk.renderer.overlay;

import linewalk.drawing.Component;
import linewalk.drawing.Line;
import linewalk.drawing.Reference;

/** Confidence is a promise from 0.9 upwards; what lies below is shown as doubt. */
final class Doubt {

    static final double PROMISE = 0.9;

    private Doubt() {}

    static boolean of(Line line) {
        return line.confidence() < PROMISE;
    }

    static boolean of(Component part) {
        return part.confidence() < PROMISE;
    }

    /** A reference without a mate leads nowhere: nothing is promised about it either. */
    static boolean of(Reference reference) {
        return Math.min(reference.confidence(), reference.mateConfidence()) < PROMISE;
    }
}
