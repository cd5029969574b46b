package linewalk.linker;

/** Two slots that may be, or are, the two ends of one line. */
record Pairing(Slot a, Slot b, Facts facts, double confidence) {

    Pairing sure(double value) {
        return new Pairing(a, b, facts, value);
    }

    Slot other(Slot s) {
        return s.equals(a) ? b : a;
    }
}
