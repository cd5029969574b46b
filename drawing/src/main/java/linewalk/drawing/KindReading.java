package linewalk.drawing;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * What a drawn symbol itself says about its kind.
 *
 * @param choices kinds that the shape may stand for, likeliest first
 * @param evidence what was seen, in words
 */
public record KindReading(List<Choice> choices, String evidence) {

    /** @param likelihood 0 to 1 */
    public record Choice(Kind kind, double likelihood) {}

    public KindReading {
        choices = List.copyOf(choices);
    }

    @JsonIgnore
    public Kind kind() {
        return choices.isEmpty() ? Kind.UNKNOWN : choices.get(0).kind();
    }

    @JsonIgnore
    public double likelihood() {
        return choices.isEmpty() ? 0 : choices.get(0).likelihood();
    }

    /** The shape may stand for this kind too. */
    public boolean allows(Kind kind) {
        return choices.stream().anyMatch(c -> c.kind() == kind);
    }
}
