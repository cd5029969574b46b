package linewalk.app;

/** Opens the command line to tests of other packages; it is the program's own business otherwise. */
public final class CommandLineAccess {

    private CommandLineAccess() {}

    /** Runs one command in this process and returns its exit status. */
    public static int execute(String... args) {
        return Main.commandLine().execute(args);
    }
}
