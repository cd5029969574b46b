package linewalk.importer.kind;

/** What a closed outline looks like. */
enum Form {
    CIRCLE,
    /** Two straight sides with rounded ends, or an ellipse. */
    CAPSULE,
    /** Half a disc on its chord. */
    HALF_DISC,
    SQUARE,
    BOX,
    /** Four equal sides on a corner. */
    DIAMOND,
    TRIANGLE,
    /** Two triangles tip to tip in one outline. */
    BOWTIE,
    OTHER
}
