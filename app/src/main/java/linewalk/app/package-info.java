/** The command line: parse, call, print. Everything else lives in the modules below. */
package linewalk.app;
