package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Sets pieces in rows that stand one below the other: the tallest first, each on the first shelf that has room. */
final class Shelves {

    static final double BETWEEN_PT = 16;

    /** A row of pieces that stand on one level: pumps and tanks are in line. */
    static final class Shelf {
        final List<Integer> pieces = new ArrayList<>();
        double widthPt;
        double heightPt;

        private boolean hasRoom(Size piece, double mostPt) {
            return pieces.isEmpty() || widthPt + BETWEEN_PT + piece.widthPt() <= mostPt;
        }

        private void add(int number, Size piece) {
            widthPt += (pieces.isEmpty() ? 0 : BETWEEN_PT) + piece.widthPt();
            heightPt = Math.max(heightPt, piece.heightPt());
            pieces.add(number);
        }
    }

    private Shelves() {}

    /** @param mostPt width that shelves may take; a piece that is wider has one of its own */
    static List<Shelf> of(List<Size> pieces, double mostPt) {
        List<Integer> tallest = new ArrayList<>();
        pieces.forEach(p -> tallest.add(tallest.size()));
        tallest.sort(Comparator.comparingDouble(i -> -pieces.get(i).heightPt()));
        List<Shelf> shelves = new ArrayList<>();
        for (int i : tallest) {
            Size piece = pieces.get(i);
            Shelf shelf = shelves.stream()
                    .filter(s -> s.hasRoom(piece, mostPt))
                    .findFirst()
                    .orElse(null);
            if (shelf == null) {
                shelf = new Shelf();
                shelves.add(shelf);
            }
            shelf.add(i, piece);
        }
        return shelves;
    }

    /** @return of all pieces on their shelves */
    static Size size(List<Size> pieces, double mostPt) {
        double widthPt = 0;
        double heightPt = 0;
        for (Shelf shelf : of(pieces, mostPt)) {
            widthPt = Math.max(widthPt, shelf.widthPt);
            heightPt += (heightPt == 0 ? 0 : BETWEEN_PT) + shelf.heightPt;
        }
        return new Size(widthPt, heightPt);
    }
}
