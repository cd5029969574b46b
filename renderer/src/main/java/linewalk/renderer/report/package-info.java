/** What a check found, for people and other programs: text, CSV, a page with pictures, notes in the original PDF. */
package linewalk.renderer.report;
