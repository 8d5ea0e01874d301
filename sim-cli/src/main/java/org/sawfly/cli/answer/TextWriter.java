package org.sawfly.cli.answer;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/** Writes an answer for people: plain ASCII, 80 columns, cautions before the last line, the verdict last. */
public final class TextWriter {
    /** Columns of a page. */
    public static final int WIDTH = 80;

    private static final String CAUTION = "Caution: ";

    private TextWriter() {}

    /** The whole text, each line ended. */
    public static String write(Answer answer) {
        List<String> lines = new ArrayList<>();
        answer.blocks().forEach(block -> lines.addAll(block.lines()));
        if (!answer.cautions().isEmpty()) {
            lines.add("");
        }
        for (String caution : answer.cautions()) {
            String text = caution.startsWith("Warning") || caution.startsWith("Weak") ? caution : CAUTION + caution;
            lines.addAll(new Block.Paragraph(text, 2).lines());
        }
        if (!answer.verdict().isEmpty()) {
            lines.addAll(new Block.Paragraph(answer.verdict(), 0).lines());
        }
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(ascii(line).stripTrailing()).append('\n'));
        return text.toString();
    }

    /** Letters without their accents, and "?" for what ASCII lacks. */
    static String ascii(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
        return plain.replaceAll("[^\\x20-\\x7e]", "?");
    }
}
