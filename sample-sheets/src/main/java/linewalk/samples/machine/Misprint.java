package linewalk.samples.machine;

/**
 * A drafting error made on purpose. At the end of {@code link} on {@code sheet}; {@code otherLink} and
 * {@code otherSheet} tell where a wrongly copied target comes from.
 */
public record Misprint(Kind kind, String link, int sheet, String otherLink, int otherSheet, String explain) {
    public enum Kind {
        NOTHING_THERE("nothing-there"),
        NO_SUCH_SHEET("no-such-sheet"),
        NOT_RETURNED("not-returned"),
        NEXT_ZONE("next-zone"),
        LABEL_DIFFERS("label-differs"),
        FLOW_CLASH("flow-clash");

        public final String rule;

        Kind(String rule) {
            this.rule = rule;
        }
    }

    static Misprint at(Kind kind, String link, int sheet, String explain) {
        return new Misprint(kind, link, sheet, null, 0, explain);
    }
}
