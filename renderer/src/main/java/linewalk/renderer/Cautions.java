package linewalk.renderer;

import java.util.List;

/** What every print warns of: after 29 CFR 1910.147(d)(5) on stored energy, and common practice with oil under pressure. */
final class Cautions {

    /** @param accumulators those joined to what is shown, with their addresses; may be empty */
    static List<String> all(String accumulators) {
        String discharge = accumulators.isEmpty()
                ? "Discharge accumulators, then prove zero pressure at the test points."
                : "Discharge accumulators (" + accumulators + "), prove zero at the test points.";
        return List.of(
                "Locking out is not enough: oil, gas charges, springs and raised loads still hold energy. Release, block or"
                        + " hold it, and check again where it can build up anew.",
                discharge,
                "Block every load that oil holds up.",
                "Oil under pressure goes through skin. Look for leaks with cardboard or wood, never with a hand. Treat an"
                        + " injection injury as an emergency at once.",
                "The drawing, and this print made from it, may be wrong: check them on the machine.",
                "Local codes and the licensed or authorised people of the plant decide.");
    }

    private Cautions() {}
}
