/** Measures a finished print: what lies over what, how its lines run, how much of it is empty, how small it is lettered. */
package linewalk.tests.quality;
