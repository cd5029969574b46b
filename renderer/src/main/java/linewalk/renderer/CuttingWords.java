package linewalk.renderer;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Position;
import linewalk.linker.Leg;

/** What must be said of a part that the original beside it does not say. */
final class CuttingWords {

    private static final double MOST_PT = 118;

    private final PrintJob job;
    private final SourcePages sources;
    private final Stands stands;
    private final HeldEnergy energy;

    CuttingWords(PrintJob job, SourcePages sources) {
        this.job = job;
        this.sources = sources;
        stands = new Stands(job);
        energy = new HeldEnergy(job);
    }

    /** No rows where there is nothing to say. */
    TextStack of(Leg.Through t) {
        Component c = t.component();
        TextStack text = new TextStack(MOST_PT);
        text.plain(isNamed(t) ? "" : c.tag());
        told(c, text);
        return text;
    }

    /** Of a part beside the print's own, of which a cutting shows something; no rows where there is nothing to say. */
    TextStack ofStray(Component c) {
        TextStack told = new TextStack(MOST_PT);
        told(c, told);
        if (told.isEmpty()) {
            return told;
        }
        TextStack text = new TextStack(MOST_PT);
        text.plain(c.tag());
        told(c, text);
        return text;
    }

    /** The original shows every valve at rest. */
    private void told(Component c, TextStack text) {
        Position now = stands.position(c);
        if (stands.shift(c) != null) {
            text.loud("SHIFT: " + String.join(" or ", stands.shift(c).by()));
        } else if (now != null && !now.isRest()) {
            text.plain("drawn at rest; shifted: " + String.join(" or ", now.by()));
        }
        if (job.moment().hasChanged(c)) {
            text.plain("changed in this step");
        }
        energy.caution(c).ifPresent(text::loud);
    }

    /** The designation stands on the original, near enough to be in the cutting. */
    private boolean isNamed(Leg.Through t) {
        List<SourceLetters.Letter> letters =
                sources.marks(job.set().getSheet(t.component().page())).letters();
        return SourceLetters.word(t.component().tag(), letters, Stay.anchor(t), Stay.DESIGNATION_REACH_PT)
                .isPresent();
    }
}
