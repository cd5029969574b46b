/** Sets put together in code, by chance or to measure with, without a drawing. */
package linewalk.tests.plant;
