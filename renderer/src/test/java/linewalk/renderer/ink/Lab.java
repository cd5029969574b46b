package linewalk.renderer.ink;

/** A colour in CIE L*a*b*, white point D65. */
record Lab(double l, double a, double b) {

    private static final double[][] XYZ_OF_SRGB = {
        {0.4124564, 0.3575761, 0.1804375}, {0.2126729, 0.7151522, 0.0721750}, {0.0193339, 0.1191920, 0.9503041}
    };

    /** From linear red, green and blue of sRGB (IEC 61966-2-1), 0 to 1 each. */
    static Lab of(double[] linear) {
        double[] f = new double[3];
        for (int i = 0; i < 3; i++) {
            double[] row = XYZ_OF_SRGB[i];
            double white = row[0] + row[1] + row[2];
            double t = (row[0] * linear[0] + row[1] * linear[1] + row[2] * linear[2]) / white;
            f[i] = t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
        }
        return new Lab(116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2]));
    }

    /** The colour difference CIEDE2000, after Sharma, Wu and Dalal, Color Research and Application 30 (2005). */
    double differenceTo(Lab o) {
        double c7 = Math.pow((Math.hypot(a, b) + Math.hypot(o.a, o.b)) / 2, 7);
        double g = 1 + 0.5 * (1 - Math.sqrt(c7 / (c7 + Math.pow(25, 7))));
        double c1 = Math.hypot(g * a, b);
        double c2 = Math.hypot(g * o.a, o.b);
        double h1 = degrees(b, g * a);
        double h2 = degrees(o.b, g * o.a);
        boolean grey = c1 * c2 == 0;
        double dh = grey ? 0 : turn(h2 - h1);
        double h = grey ? h1 + h2 : (h1 + h2 + (Math.abs(h1 - h2) > 180 ? h1 + h2 < 360 ? 360 : -360 : 0)) / 2;
        double c = (c1 + c2) / 2;
        double l50 = Math.pow((l + o.l) / 2 - 50, 2);
        double t = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.20 * cos(4 * h - 63);
        double light = (o.l - l) / (1 + 0.015 * l50 / Math.sqrt(20 + l50));
        double chroma = (c2 - c1) / (1 + 0.045 * c);
        double hue = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(dh / 2)) / (1 + 0.015 * c * t);
        double turned = 60 * Math.exp(-Math.pow((h - 275) / 25, 2));
        double rotation =
                -2 * Math.sqrt(Math.pow(c, 7) / (Math.pow(c, 7) + Math.pow(25, 7))) * Math.sin(Math.toRadians(turned));
        return Math.sqrt(light * light + chroma * chroma + hue * hue + rotation * chroma * hue);
    }

    private static double degrees(double y, double x) {
        return y == 0 && x == 0 ? 0 : (Math.toDegrees(Math.atan2(y, x)) + 360) % 360;
    }

    private static double turn(double d) {
        return d > 180 ? d - 360 : d < -180 ? d + 360 : d;
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
