package linewalk.renderer.card;

/**
 * Something to be done before or after work.
 *
 * @param what part or place, with why it matters
 * @param where its address; empty where the drawings tell none
 */
record Task(String what, String where, String how) {}
