/**
 * What the drawings hold, for scoring, and the files that go with them: hand tags, cycle chart, parts list.
 */
package linewalk.samples.truth;
