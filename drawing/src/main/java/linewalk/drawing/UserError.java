package linewalk.drawing;

/** Wrong use or bad input: one clear sentence that says what to do. Printed as one line, exit status 2. */
public final class UserError extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UserError(String message) {
        super(message);
    }

    public UserError(String message, Throwable cause) {
        super(message, cause);
    }
}
