package linewalk.importer.scan;

import boofcv.alg.filter.binary.impl.BinaryThinning;
import boofcv.struct.image.GrayU8;

/** Line work thinned to lines of one pixel. */
final class Skeleton {

    private Skeleton() {}

    /** Thins the blobs into the raster, whose own content is lost. */
    static void draw(Iterable<Blob> blobs, GrayU8 raster) {
        java.util.Arrays.fill(raster.data, (byte) 0);
        for (Blob b : blobs) {
            int[] r = b.runs();
            for (int i = 0; i < r.length; i += 3) {
                int row = raster.startIndex + r[i] * raster.stride;
                java.util.Arrays.fill(raster.data, row + r[i + 1], row + r[i + 2], (byte) 1);
            }
        }
        clearRim(raster);
        new BinaryThinning().apply(raster, -1);
        blobs.forEach(b -> dropCorners(b, raster));
    }

    private static void clearRim(GrayU8 raster) {
        for (int x = 0; x < raster.width; x++) {
            raster.data[x] = 0;
            raster.data[raster.startIndex + (raster.height - 1) * raster.stride + x] = 0;
        }
        for (int y = 0; y < raster.height; y++) {
            raster.data[raster.startIndex + y * raster.stride] = 0;
            raster.data[raster.startIndex + y * raster.stride + raster.width - 1] = 0;
        }
    }

    /** Steps of a slanting line are left as corners, which would look like branches: a pixel whose neighbours touch without it goes. */
    private static void dropCorners(Blob blob, GrayU8 g) {
        byte[] d = g.data;
        int[] r = blob.runs();
        for (int i = 0; i < r.length; i += 3) {
            int row = g.startIndex + r[i] * g.stride;
            for (int at = row + r[i + 1]; at < row + r[i + 2]; at++) {
                if (d[at] != 0 && isCorner(d, at, g.stride)) {
                    d[at] = 0;
                }
            }
        }
    }

    private static boolean isCorner(byte[] d, int at, int s) {
        boolean n = d[at - s] != 0;
        boolean e = d[at + 1] != 0;
        boolean so = d[at + s] != 0;
        boolean w = d[at - 1] != 0;
        return n && e && !so && !w && d[at + s - 1] == 0
                || e && so && !n && !w && d[at - s - 1] == 0
                || so && w && !n && !e && d[at - s + 1] == 0
                || w && n && !so && !e && d[at + s + 1] == 0;
    }
}
