package linewalk.renderer.iso;

/** Which way oil goes on an upright axis. */
enum Way {
    UP,
    DOWN,
    UNTOLD;

    boolean down() {
        return this == DOWN;
    }

    boolean told() {
        return this != UNTOLD;
    }

    Way back() {
        return this == UP ? DOWN : this == DOWN ? UP : UNTOLD;
    }
}
