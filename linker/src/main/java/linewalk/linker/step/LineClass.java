package linewalk.linker.step;

/** A pilot line that hangs on a working line of another sheet is still a pilot line: fed, or vented and so idle. */
final class LineClass {

    private LineClass() {}

    static PressureClass of(Net net, int line, PressureClass volume) {
        if (!net.pilotLine(line)) {
            return volume;
        } else if (volume.pressed()) {
            return net.pilotOnly[net.volumes(line)[0]] ? volume : PressureClass.PILOT;
        }
        return volume == PressureClass.RETURN ? PressureClass.IDLE : volume;
    }
}
