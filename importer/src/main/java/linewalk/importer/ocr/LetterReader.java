package linewalk.importer.ocr;

import java.util.List;

/** Reads lines of text from rasters. One a thread: its engine stays open between lines. */
public interface LetterReader extends AutoCloseable {

    /** What reads letters cannot be loaded on this machine; the message is one sentence for the user. */
    final class Missing extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Missing(String message, Throwable cause) {
            super(message, cause);
        }
    }

    /**
     * The letters of one line, left to right; empty where none is seen.
     *
     * @throws Missing where natives or language data are not there
     */
    List<ReadLetter> line(Crop crop);

    @Override
    void close();

    /** Loads nothing before the first line is asked for. */
    static LetterReader lazy() {
        return new LazyReader();
    }
}
