/**
 * Scores what the program exports against what is known to be on the drawings. Both are JSON; points are PDF points,
 * origin at the top left of the page as displayed.
 */
package linewalk.tests.truth;
