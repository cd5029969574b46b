package linewalk.importer.ocr;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import net.sourceforge.tess4j.TessAPI;
import org.bytedeco.javacpp.Loader;

/**
 * The natives and the language data that the program carries, loaded once. Whatever is missing is found before the
 * native code looks for it, since that ends the JVM.
 */
final class Natives {

    private static final String LANGUAGE_DATA = "/tessdata/eng.traineddata";

    private Natives() {}

    private static final class Held {
        static final TessAPI API = load();
    }

    static TessAPI api() {
        try {
            return Held.API;
        } catch (LinkageError e) {
            throw new LetterReader.Missing(
                    "the libraries that read letters cannot be loaded on this machine (" + reason(e)
                            + "); pages with a text layer are read without them",
                    e);
        }
    }

    private static String reason(Throwable e) {
        Throwable cause = e;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return String.valueOf(cause.getMessage()).lines().findFirst().orElse("unknown");
    }

    /** Tess4J looks for its library where this property says, before it looks at what the machine has installed. */
    private static TessAPI load() {
        String leptonica = Loader.load(org.bytedeco.leptonica.global.leptonica.class);
        String tesseract = Loader.load(org.bytedeco.tesseract.global.tesseract.class);
        System.setProperty(
                "jna.library.path",
                new File(tesseract).getParent() + File.pathSeparator + new File(leptonica).getParent());
        return TessAPI.INSTANCE;
    }

    /** A folder that holds the language data, in the user's own temporary space for as long as the program runs. */
    static Path languageFolder() {
        try (InputStream in = Natives.class.getResourceAsStream(LANGUAGE_DATA)) {
            if (in == null) {
                throw new LetterReader.Missing("the language data for reading letters is missing; build again", null);
            }
            Path folder = Files.createTempDirectory("linewalk-letters");
            Path file = folder.resolve("eng.traineddata");
            Files.copy(in, file);
            folder.toFile().deleteOnExit();
            file.toFile().deleteOnExit();
            return folder;
        } catch (IOException e) {
            throw new LetterReader.Missing(
                    "the language data for reading letters cannot be unpacked (" + e.getMessage() + ")", e);
        }
    }
}
