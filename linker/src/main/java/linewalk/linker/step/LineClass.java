package linewalk.linker.step;

/** A pilot line that hangs on a working line of another sheet is still a pilot line: fed, or vented and so idle. */
final class LineClass {

    private LineClass() {}

    static PressureClass of(Net net, int line, int volume, PressureClass said) {
        if (net.pilotOnly[volume] || !net.pilotLine[line]) {
            return said;
        }
        return said.pressed() ? PressureClass.PILOT : said == PressureClass.RETURN ? PressureClass.IDLE : said;
    }
}
