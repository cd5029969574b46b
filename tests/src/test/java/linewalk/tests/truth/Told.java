package linewalk.tests.truth;

/** One thing that was told, with its confidence, and whether it is so. */
record Told(double confidence, boolean right) {}
