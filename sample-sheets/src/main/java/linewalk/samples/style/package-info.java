/**
 * Drafting styles: paper, border grid, form of references, fonts, page set-up.
 */
package linewalk.samples.style;
