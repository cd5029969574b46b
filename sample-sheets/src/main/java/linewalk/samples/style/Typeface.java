package linewalk.samples.style;

/** Fonts that need nothing installed: the standard fourteen by name, one embedded. */
public enum Typeface {
    EMBEDDED_SANS,
    HELVETICA,
    HELVETICA_BOLD,
    COURIER,
    COURIER_BOLD,
    HELVETICA_OBLIQUE,
    HELVETICA_BOLD_OBLIQUE,
    TIMES,
    TIMES_BOLD
}
