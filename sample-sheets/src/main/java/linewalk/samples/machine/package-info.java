/**
 * The one description of the invented link-span: parts where they are drawn, lines as runs, references, the cycle, flow
 * paths, pressure classes and the errors made on purpose. Everything else is made from it.
 */
package linewalk.samples.machine;
