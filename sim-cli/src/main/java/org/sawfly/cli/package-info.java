/**
 * The program's entry. Start at {@link org.sawfly.cli.Main}: it runs one command line on given streams and returns the
 * exit code, so that tests run it in their own process.
 */
package org.sawfly.cli;
