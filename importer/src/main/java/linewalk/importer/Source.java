package linewalk.importer;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import linewalk.drawing.UserError;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/** Opens a source file, or says in one sentence why it can't be read. */
final class Source {

    private static final int TAIL = 4096;

    private Source() {}

    static PDDocument open(Path file) {
        if (!Files.exists(file)) {
            throw new UserError("there is no file " + file + "; check the name and the folder");
        }
        if (Files.isDirectory(file)) {
            throw new UserError(file + " is a folder; name the file itself");
        }
        try {
            if (isImage(file)) {
                return ImageFile.open(file);
            }
            checkEnds(file);
            PDDocument document = Loader.loadPDF(file.toFile());
            if (document.getNumberOfPages() == 0) {
                document.close();
                throw new UserError(file + " has no pages; export the drawing set again");
            }
            return document;
        } catch (InvalidPasswordException e) {
            throw new UserError(
                    file + " is encrypted and wants a password; save a copy without one and import that", e);
        } catch (IOException e) {
            throw new UserError(file + " cannot be read (" + firstLine(e) + "); export or copy it again", e);
        }
    }

    private static boolean isImage(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return ImageFile.is(in.readNBytes(4));
        }
    }

    private static void checkEnds(Path file) throws IOException {
        try (RandomAccessFile raw = new RandomAccessFile(file.toFile(), "r")) {
            byte[] head = new byte[(int) Math.min(1024, raw.length())];
            raw.readFully(head);
            if (!new String(head, StandardCharsets.ISO_8859_1).contains("%PDF-")) {
                throw new UserError(
                        file
                                + " is not a PDF, nor a PNG, JPEG or TIFF image; export the drawing set as PDF and import that");
            }
            byte[] tail = new byte[(int) Math.min(TAIL, raw.length())];
            raw.seek(raw.length() - tail.length);
            raw.readFully(tail);
            if (!new String(tail, StandardCharsets.ISO_8859_1).contains("%%EOF")) {
                throw new UserError(file + " is cut short: its end is missing; copy or download it again");
            }
        }
    }

    private static String firstLine(IOException e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("malformed");
    }
}
