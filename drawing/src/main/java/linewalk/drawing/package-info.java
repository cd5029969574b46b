/**
 * The words of the project as immutable records.
 *
 * <p>All places are PDF points (1/72 inch) with the origin at the top left of the page as displayed, x to the right and
 * y downwards: after /Rotate, CropBox and UserUnit have been applied once by the importer.
 */
package linewalk.drawing;
