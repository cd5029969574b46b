package linewalk.app;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import linewalk.drawing.UserError;
import linewalk.drawing.store.SetFolder;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Exit status: 0 fine; 1 the answer is no; 2 wrong use or bad input, in one line; 3 an error of the program's own. */
@Command(
        name = "linewalk",
        mixinStandardHelpOptions = true,
        version = "linewalk 0.1.0",
        description =
                "Reads a set of hydraulic installation drawings, joins the lines that run over its sheets, and prints"
                        + " any flow path on one sheet.")
public final class Main implements Runnable {

    private static final Map<String, Class<?>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("demo", DemoCommand.class);
        COMMANDS.put("import", ImportCommand.class);
        COMMANDS.put("check", CheckCommand.class);
        COMMANDS.put("trace", TraceCommand.class);
        COMMANDS.put("circuit", CircuitCommand.class);
        COMMANDS.put("overlay", OverlayCommand.class);
        COMMANDS.put("link", LinkCommand.class);
        COMMANDS.put("export", ExportCommand.class);
    }

    /** Held on to: a logger that nobody holds is collected, and its level with it. */
    private static final List<Logger> TALKATIVE =
            List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

    private static final int WRONG_USE = 2;
    private static final int OUR_ERROR = 3;

    private Main() {}

    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true");
        // PDFBox tells of every font that a drawing does not embed
        TALKATIVE.forEach(logger -> logger.setLevel(Level.OFF));
        // building the command line and the readers of a set's files takes equally long: side by side
        Thread readers = new Thread(SetFolder::prepare, "readers");
        readers.setDaemon(true);
        readers.start();
        System.exit(commandLine(args).execute(args));
    }

    /** All commands. */
    static CommandLine commandLine() {
        return commandLine(new String[0]);
    }

    /** The command that is asked for, alone: building all of them takes longer than most of them run. */
    private static CommandLine commandLine(String[] arguments) {
        CommandLine line = new CommandLine(new Main());
        Class<?> asked = arguments.length == 0 ? null : COMMANDS.get(arguments[0]);
        if (asked != null) {
            line.addSubcommand(asked);
        } else {
            COMMANDS.values().forEach(line::addSubcommand);
        }
        line.getSubcommands().values().forEach(c -> c.getCommandSpec().mixinStandardHelpOptions(true));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler((e, args) -> {
            PrintWriter err = e.getCommandLine().getErr();
            err.println("linewalk: " + e.getMessage() + "; see: "
                    + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
            return WRONG_USE;
        });
        line.setExecutionExceptionHandler((e, command, parsed) -> {
            PrintWriter err = command.getErr();
            if (e instanceof UserError) {
                err.println("linewalk: " + e.getMessage());
                return WRONG_USE;
            }
            err.println("linewalk: an error of the program itself; please report it with the lines below");
            e.printStackTrace(err);
            return OUR_ERROR;
        });
        return line;
    }

    @Override
    public void run() {
        commandLine().usage(System.out);
    }
}
