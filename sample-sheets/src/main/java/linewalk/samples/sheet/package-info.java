/**
 * Draws the description in a style as a PDF and tells what was drawn where. Zones in references are read off the
 * style's grid once every reference has its place.
 */
package linewalk.samples.sheet;
