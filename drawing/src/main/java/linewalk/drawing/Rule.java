package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;

/** What a finding is about. */
public enum Rule {
    NO_SUCH_SHEET(Severity.ERROR),
    NO_SUCH_ZONE(Severity.ERROR),
    NOTHING_THERE(Severity.ERROR),
    NOT_RETURNED(Severity.ERROR),
    NEXT_ZONE(Severity.ERROR),
    SAME_PLACE(Severity.WARNING),
    LABEL_DIFFERS(Severity.WARNING),
    FLOW_CLASH(Severity.WARNING),
    LOOSE_END(Severity.WARNING),
    SHEET_TWICE(Severity.WARNING),
    SHEET_UNNUMBERED(Severity.WARNING),
    SHEET_GAP(Severity.WARNING),
    UNREAD(Severity.WARNING),
    TAG_UNPLACED(Severity.WARNING),
    UNKNOWN_SOLENOID(Severity.WARNING),
    UNUSED_SOLENOID(Severity.WARNING),
    UNSETTLED(Severity.WARNING),
    TAG_TWICE(Severity.WARNING),
    NOT_LISTED(Severity.WARNING),
    NOT_DRAWN(Severity.WARNING),
    SETTING_DIFFERS(Severity.WARNING),
    DRAIN_ON_RETURN(Severity.WARNING),
    SIZE_DIFFERS(Severity.WARNING),
    KIND_DIFFERS(Severity.WARNING),
    FAR_PART_DIFFERS(Severity.WARNING),
    RETURNS_TO_START(Severity.NOTE),
    DOUBTFUL_READING(Severity.NOTE),
    DOUBTFUL_JOIN(Severity.NOTE),
    NOT_IN_SET(Severity.NOTE);

    private final Severity severity;

    Rule(Severity severity) {
        this.severity = severity;
    }

    public Severity severity() {
        return severity;
    }

    /** The word used in files, such as {@code next-zone}. */
    @JsonValue
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @JsonCreator
    static Rule fromJson(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
