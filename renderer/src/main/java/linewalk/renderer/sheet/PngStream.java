package linewalk.renderer.sheet;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes a PNG row by row, without ever holding the picture (Java's own writer wants it whole): true colour, 8 bit, with
 * its resolution and title. Chunks as in the W3C's recommendation "Portable Network Graphics (PNG) Specification".
 */
final class PngStream {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final double INCHES_PER_METRE = 1 / 0.0254;
    private static final int CHUNK_BYTES = 1 << 16;
    private static final int TRUE_COLOUR = 2;

    private final DataOutputStream out;
    private final int width;
    private final ByteArrayOutputStream packed = new ByteArrayOutputStream();
    private final Deflater deflater = new Deflater();
    private final OutputStream pixels = new DeflaterOutputStream(packed, deflater);

    PngStream(OutputStream out, int width, int height, int dpi, String title) throws IOException {
        this.out = new DataOutputStream(out);
        this.width = width;
        out.write(SIGNATURE);
        chunk("IHDR", d -> {
            d.writeInt(width);
            d.writeInt(height);
            d.write(new byte[] {8, TRUE_COLOUR, 0, 0, 0});
        });
        int perMetre = (int) Math.round(dpi * INCHES_PER_METRE);
        chunk("pHYs", d -> {
            d.writeInt(perMetre);
            d.writeInt(perMetre);
            d.write(1);
        });
        chunk("iTXt", d -> {
            d.write("Title\0\0\0en\0\0".getBytes(StandardCharsets.ISO_8859_1));
            d.write(title.getBytes(StandardCharsets.UTF_8));
        });
    }

    /** The first rows of an image as wide as the picture. */
    void rows(BufferedImage image, int count) throws IOException {
        int[] rgb = new int[width];
        byte[] row = new byte[1 + 3 * width];
        for (int y = 0; y < count; y++) {
            image.getRGB(0, y, width, 1, rgb, 0, width);
            for (int x = 0; x < width; x++) {
                row[3 * x + 1] = (byte) (rgb[x] >> 16);
                row[3 * x + 2] = (byte) (rgb[x] >> 8);
                row[3 * x + 3] = (byte) rgb[x];
            }
            pixels.write(row);
            if (packed.size() >= CHUNK_BYTES) {
                flush();
            }
        }
    }

    void finish() throws IOException {
        pixels.close();
        deflater.end();
        flush();
        chunk("IEND", d -> {});
        out.flush();
    }

    private void flush() throws IOException {
        chunk("IDAT", packed::writeTo);
        packed.reset();
    }

    private interface Body {
        void writeTo(DataOutputStream out) throws IOException;
    }

    private void chunk(String type, Body body) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(bytes);
        data.write(type.getBytes(StandardCharsets.ISO_8859_1));
        body.writeTo(data);
        CRC32 crc = new CRC32();
        crc.update(bytes.toByteArray());
        out.writeInt(bytes.size() - type.length());
        bytes.writeTo(out);
        out.writeInt((int) crc.getValue());
    }
}
