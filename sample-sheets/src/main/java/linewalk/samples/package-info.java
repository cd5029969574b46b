/** The invented demo machine as a drawing set: {@link linewalk.samples.DemoSet} writes it in any drafting style. */
package linewalk.samples;
