/**
 * Letters from small rasters. {@link linewalk.importer.ocr.LetterReader} is all that others see; nothing else in the
 * program depends on Tesseract or its natives, and nothing is loaded before the first line is read.
 */
package linewalk.importer.ocr;
