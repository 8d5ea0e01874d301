/**
 * The program's entry: {@link org.sawfly.cli.Main} runs one command line on given streams and returns the exit code, so
 * that tests run it in their own process.
 */
package org.sawfly.cli;
