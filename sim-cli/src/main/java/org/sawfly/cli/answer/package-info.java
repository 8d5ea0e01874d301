/**
 * What a command says, and the writers that turn it into text, JSON and CSV. Numbers are rounded and formatted here,
 * nowhere else in the program.
 */
package org.sawfly.cli.answer;
