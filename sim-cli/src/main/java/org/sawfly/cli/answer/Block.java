package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;

/** A piece of the text of an answer. */
sealed interface Block permits Block.Paragraph, Block.Lines, Table {
    /** The lines as printed, at most {@link TextWriter#WIDTH} wide where they can be broken. */
    List<String> lines();

    /**
     * Words that are broken where the line ends; what follows the first line is indented.
     *
     * @param text the words
     * @param indent blanks before the lines after the first
     */
    record Paragraph(String text, int indent) implements Block {
        @Override
        public List<String> lines() {
            String first = " ".repeat(leading(text));
            String further = first + " ".repeat(indent);
            List<String> lines = new ArrayList<>();
            StringBuilder line = new StringBuilder(first);
            boolean empty = true;
            for (String word : text.trim().split("\\s+")) {
                if (!empty && line.length() + 1 + word.length() > TextWriter.WIDTH) {
                    lines.add(line.toString());
                    line = new StringBuilder(further);
                    empty = true;
                }
                line.append(empty ? "" : " ").append(word);
                empty = false;
            }
            lines.add(line.toString());
            return lines;
        }

        private static int leading(String text) {
            return text.length() - text.stripLeading().length();
        }
    }

    /**
     * Lines that stay as they are.
     *
     * @param lines the lines
     */
    record Lines(List<String> lines) implements Block {
        /** Takes a copy. */
        public Lines {
            lines = List.copyOf(lines);
        }
    }
}
