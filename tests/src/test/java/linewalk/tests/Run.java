package linewalk.tests;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import linewalk.app.CommandLineAccess;

/** One run of the command line in this process: exit status and what it printed. */
public record Run(int status, String out, String err) {

    /** As the program's own start does it; held, since loggers nobody holds forget their level. */
    private static final List<Logger> QUIET =
            List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

    static {
        QUIET.forEach(l -> l.setLevel(Level.OFF));
    }

    /** Runs {@code linewalk ARGS}; paths may be given as they are. */
    public static Run linewalk(Object... args) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        ByteArrayOutputStream complained = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
            System.setErr(new PrintStream(complained, true, StandardCharsets.UTF_8));
            String[] words = Arrays.stream(args).map(Object::toString).toArray(String[]::new);
            int status = CommandLineAccess.execute(words);
            return new Run(status, said.toString(StandardCharsets.UTF_8), complained.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
    }

    /** The same, where anything but success is a fault of the test's own set-up. */
    public static Run fine(Object... args) {
        Run run = linewalk(args);
        if (run.status() != 0) {
            throw new AssertionError(List.of(args) + " ended with " + run);
        }
        return run;
    }

    public JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
