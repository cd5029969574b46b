package linewalk.samples.sheet;

import java.util.TreeMap;
import linewalk.samples.machine.Part;
import linewalk.samples.machine.Words;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.PlacedInk;
import linewalk.samples.symbol.Spot;

/** Symbols with their designations, settings and port letters. */
final class PartPainter {
    private static final double TAG_HEIGHT = 0.42;
    private static final double SETTING_HEIGHT = 0.3;

    private final ScaledInk ink;
    private final boolean usUnits;

    PartPainter(ScaledInk ink, boolean usUnits) {
        this.ink = ink;
        this.usUnits = usUnits;
    }

    void paint(Part part) {
        ink.as(DrawnText.Role.OTHER);
        part.symbol().draw(new PlacedInk(ink, part.place()));
        ink.as(DrawnText.Role.PORT);
        // In order of names: maps have none that is the same in every run.
        new TreeMap<>(part.symbol().letters()).forEach((name, at) -> {
            Spot spot = part.place().of(at);
            ink.text(Lettering.centred(0.24), spot.x(), spot.y(), name);
        });
        ink.as(DrawnText.Role.TAG);
        Spot at = part.tagAt();
        ink.text(Lettering.left(TAG_HEIGHT).inBold(), at.x(), at.y(), part.tag());
        if (part.setting() != null) {
            ink.as(DrawnText.Role.OTHER)
                    .text(Lettering.left(SETTING_HEIGHT), at.x(), at.y() + 0.5, said(part.setting()));
        }
    }

    String said(Words words) {
        return usUnits ? words.us() : words.metric();
    }
}
