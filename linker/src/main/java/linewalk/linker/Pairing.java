package linewalk.linker;

/** Two slots that may be, or are, the two ends of one line. */
record Pairing(Slot a, Slot b, Facts facts, double confidence) {

    Pairing sure(double value) {
        return new Pairing(a, b, facts, value);
    }

    Slot other(Slot s) {
        return s.equals(a) ? b : a;
    }

    boolean touches(Ref r) {
        return a.ref().equals(r) || b.ref().equals(r);
    }

    /** Two slots are paired in one way only. */
    @Override
    public boolean equals(Object o) {
        return o instanceof Pairing p && a.equals(p.a) && b.equals(p.b) && confidence == p.confidence;
    }

    @Override
    public int hashCode() {
        return 31 * a.hashCode() + b.hashCode();
    }
}
