/** Drawings as a scanner would see them, with truths moved to where things then lie. */
package linewalk.samples.scan;
