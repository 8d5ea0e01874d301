/**
 * One class a command. A command reads files, asks the core and returns what it has to say; it neither formats nor prints.
 * Start at {@link org.sawfly.cli.command.Root}, which lists them all.
 */
package org.sawfly.cli.command;
