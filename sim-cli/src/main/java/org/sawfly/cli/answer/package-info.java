/**
 * What a command says, and the writers that turn it into text, JSON and CSV. Start at {@link org.sawfly.cli.answer.Answer}.
 * A number is put into the tree of fields first, which hands back its printed form: no text can show a number that the
 * JSON lacks. Files are written whole or not at all by {@link org.sawfly.cli.answer.OutputFiles}.
 */
package org.sawfly.cli.answer;
