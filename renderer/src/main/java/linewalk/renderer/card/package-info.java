/**
 * The job card: what a planner hands out with a print. {@code Surroundings} finds what is joined to what is shown;
 * {@code Isolation}, {@code StoredEnergy}, {@code Gauges} and {@code Checklist} say what there is to do; {@code Blocks}
 * puts it into tables, {@code Pouring} into columns, {@code JobCard} on paper. Knows nothing of pictures.
 */
package linewalk.renderer.card;
