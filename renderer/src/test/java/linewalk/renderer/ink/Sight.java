package linewalk.renderer.ink;

import java.awt.Color;

/**
 * How people see colours: matrices on linear sRGB at severity 1 of Machado, Oliveira and Fernandes, "A
 * physiologically-based model for simulation of color vision deficiency", IEEE Transactions on Visualization and Computer
 * Graphics 15 (2009), read from transcriptions in public sources.
 */
enum Sight {
    FULL(1, 0, 0, 0, 1, 0, 0, 0, 1),
    PROTANOPIA(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
    DEUTERANOPIA(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
    TRITANOPIA(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

    private final double[] matrix;

    Sight(double... matrix) {
        this.matrix = matrix;
    }

    Lab see(Color color) {
        double[] in = {linear(color.getRed()), linear(color.getGreen()), linear(color.getBlue())};
        double[] out = new double[3];
        for (int i = 0; i < 3; i++) {
            double v = matrix[3 * i] * in[0] + matrix[3 * i + 1] * in[1] + matrix[3 * i + 2] * in[2];
            out[i] = Math.max(0, Math.min(1, v));
        }
        return Lab.of(out);
    }

    /** IEC 61966-2-1. */
    static double linear(int byteValue) {
        double v = byteValue / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
