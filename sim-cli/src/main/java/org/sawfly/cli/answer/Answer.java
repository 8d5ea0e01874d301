package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.sawfly.cli.chart.Figure;

/**
 * What a command says, gathered by the command and rendered by the writers: a title, blocks of text, cautions and, last,
 * the verdict; the fields that JSON shows; rows for CSV; figures. No command formats a number or prints.
 */
public final class Answer {
    private static final int HANGING = 2;

    private final String command;
    private final Fields inputs = new Fields();
    private final Fields results = new Fields();
    private final List<Block> blocks = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private final List<String> verdict = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();
    private Rows rows;

    /** An empty answer of a command. */
    public Answer(String command) {
        this.command = command;
    }

    /** The command's name. */
    public String command() {
        return command;
    }

    /** What the command was given. */
    public Fields inputs() {
        return inputs;
    }

    /** What it found. */
    public Fields results() {
        return results;
    }

    /** Adds words that are broken at the end of a line, with the further lines indented by two. */
    public Answer say(String text) {
        blocks.add(new Block.Paragraph(text, HANGING));
        return this;
    }

    /** Adds words that are broken at the end of a line, not indented: a title, a closing sentence. */
    public Answer sayFlush(String text) {
        blocks.add(new Block.Paragraph(text, 0));
        return this;
    }

    /** Adds lines that stay as they are. */
    public Answer lines(String... lines) {
        blocks.add(new Block.Lines(List.of(lines)));
        return this;
    }

    /** Adds an empty line. */
    public Answer gap() {
        return lines("");
    }

    /** Adds a table. */
    public Answer table(Table table) {
        blocks.add(table);
        return this;
    }

    /** Adds something to heed about this answer; shown on the message stream and kept in JSON. */
    public Answer warn(String warning) {
        addOnce(warnings, warning);
        return this;
    }

    /** Adds a caution about an act the answer leads to; shown before the verdict. */
    public Answer caution(String caution) {
        addOnce(cautions, caution);
        return this;
    }

    /** Adds a sentence to what decides; the verdict is printed last. */
    public Answer verdict(String sentence) {
        if (!sentence.isEmpty()) {
            verdict.add(sentence);
        }
        return this;
    }

    /** Adds a figure for those who ask for a chart. */
    public Answer figure(Figure figure) {
        figures.add(figure);
        return this;
    }

    /** Sets the rows for those who ask for CSV and puts them into the results as "rows". */
    public Answer rows(Rows table) {
        rows = table;
        table.putInto(results, "rows");
        return this;
    }

    /** Warnings in their order. */
    public List<String> warnings() {
        return Collections.unmodifiableList(warnings);
    }

    /** Cautions in their order. */
    public List<String> cautions() {
        return Collections.unmodifiableList(cautions);
    }

    /** The verdict as one line. */
    public String verdict() {
        return String.join(" ", verdict);
    }

    /** Figures in their order. */
    public List<Figure> figures() {
        return Collections.unmodifiableList(figures);
    }

    /** Rows for CSV, when the command has any. */
    public Optional<Rows> rows() {
        return Optional.ofNullable(rows);
    }

    List<Block> blocks() {
        return blocks;
    }

    private static void addOnce(List<String> list, String text) {
        if (!list.contains(text)) {
            list.add(text);
        }
    }
}
