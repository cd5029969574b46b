package linewalk.importer.scan;

import linewalk.drawing.Affine;

/**
 * Registration on the frame: from pixels as scanned to pixels in which the drawing's lines lie level and stand upright,
 * and back. Keeps the middle of the page where it is.
 */
record Upright(Affine forth, Affine back) {

    static Upright of(Tilt tilt, int width, int height) {
        double h = Math.toRadians(tilt.rowsDeg());
        double v = Math.toRadians(tilt.columnsDeg());
        // where a level and a standing unit of the drawing lie on the scan
        Affine turn = new Affine(Math.cos(h), -Math.sin(v), 0, Math.sin(h), Math.cos(v), 0);
        double cx = width / 2.0;
        double cy = height / 2.0;
        Affine back = new Affine(
                turn.a(),
                turn.b(),
                cx - turn.a() * cx - turn.b() * cy,
                turn.d(),
                turn.e(),
                cy - turn.d() * cx - turn.e() * cy);
        return new Upright(back.inverse(), back);
    }

    /** Turned further by quarters around the origin, clockwise. */
    Upright turned(int quarters) {
        Upright turned = this;
        for (int i = 0; i < Math.floorMod(quarters, 4); i++) {
            Affine m = turned.forth;
            Affine next = new Affine(-m.d(), -m.e(), -m.f(), m.a(), m.b(), m.c());
            turned = new Upright(next, next.inverse());
        }
        return turned;
    }

    /** Shifted so that a page of this size, turned, starts at the origin again. */
    Upright onPage(int width, int height) {
        double w = width / 2.0;
        double h = height / 2.0;
        boolean lying = Math.abs(forth.a()) > 0.7;
        double cx = (lying ? w : h) - x(w, h);
        double cy = (lying ? h : w) - y(w, h);
        Affine m = new Affine(forth.a(), forth.b(), forth.c() + cx, forth.d(), forth.e(), forth.f() + cy);
        return new Upright(m, m.inverse());
    }

    double x(double px, double py) {
        return forth.a() * px + forth.b() * py + forth.c();
    }

    double y(double px, double py) {
        return forth.d() * px + forth.e() * py + forth.f();
    }

    double backX(double x, double y) {
        return back.a() * x + back.b() * y + back.c();
    }

    double backY(double x, double y) {
        return back.d() * x + back.e() * y + back.f();
    }
}
