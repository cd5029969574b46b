package linewalk.samples.machine;

import java.util.List;
import linewalk.samples.symbol.Spot;

/** One unbroken stroke of a net; {@code first} and {@code last} tell what it meets: a port, a reference or a join. */
public record Run(LineKind kind, List<Spot> points, End first, End last) {
    /** {@code reference} is set at a reference, {@code port} (TAG:PORT) at a port; both null at a join. */
    public record End(String port, Reference reference) {}
}
