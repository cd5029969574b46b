/**
 * Readings, hand tags and settings become one {@link linewalk.drawing.DrawingSet}; traces are walked over it. A pure
 * function: the same input gives the same output, whatever the order of pages and files, and no file is touched.
 *
 * <p>{@link linewalk.linker.Linker} works in this order: {@code SheetNaming} gives each page the name that references
 * use; {@code Qualifier} makes ids unique in the set; tags are laid over what was read ({@code SheetTags}, {@code
 * ComponentTags}, {@code ReferenceTags}, {@code JoinTags}) and {@code PartEvidence} adds the parts list; {@code Sifter}
 * decides which candidates are references; {@code MateFinder} finds the mates, by name and by one {@code Matching} over
 * all zones; {@code Checks} tells what does not agree, each fault once.
 *
 * <p>{@link linewalk.linker.Tracer} walks a {@code Circuit} of lines: {@code Passes} and {@code PumpSides} say what oil
 * passes against how much resistance ({@code Cost}), {@code Search} finds the walks of least cost that use no line
 * twice, {@code DeadEnds} tells where and why a trace ends without arriving.
 */
package linewalk.linker;
