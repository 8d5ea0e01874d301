package org.sawfly.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The text of an input, decoded strictly: UTF-8, with or without a byte order mark, with any line ends. Text in another
 * encoding is reported and read on as best it can be, so that what else is wrong is found in the same run.
 *
 * @param name  name as the user gave it
 * @param text  the text with line feeds only and without a byte order mark
 * @param lines its lines
 */
record Source(String name, String text, List<String> lines) {
    /** More than any file of this kind can need. */
    static final int MOST_BYTES = 1_000_000;

    static Source of(String name, String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        plain = plain.replace("\r\n", "\n").replace('\r', '\n');
        return new Source(name, plain, List.of(plain.split("\n", -1)));
    }

    static Source of(String name, byte[] bytes, Problems problems) {
        if (bytes.length > MOST_BYTES) {
            problems.add(Place.whole(name), "", "larger than 1 MB, which no glider file is", "another file was meant");
            return of(name, "");
        }
        Charset wide = wide(bytes);
        if (wide != null) {
            problems.add(Place.whole(name), "", "saved as " + wide.name() + ", not as UTF-8", "save it again as UTF-8");
            return of(name, new String(bytes, wide));
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (!result.isError()) {
            return of(name, out.flip().toString());
        }
        Source read = of(name, out.flip().toString());
        int line = read.lines.size();
        String before = read.lines.get(line - 1);
        int wrong = bytes[in.position()] & 0xff;
        problems.add(
                new Place(name, line, before.codePointCount(0, before.length()) + 1),
                "",
                "the byte " + Integer.toHexString(wrong) + " (hexadecimal) is not UTF-8",
                sign(wrong) + "the file was saved in an old code page: save it again as UTF-8");
        return of(name, new String(bytes, StandardCharsets.ISO_8859_1));
    }

    /** The sixteen-bit encoding whose mark the bytes begin with, or null. */
    private static Charset wide(byte[] bytes) {
        if (bytes.length < 2) {
            return null;
        }
        int mark = (bytes[0] & 0xff) << 8 | bytes[1] & 0xff;
        return mark == 0xfeff ? StandardCharsets.UTF_16BE : mark == 0xfffe ? StandardCharsets.UTF_16LE : null;
    }

    private static String sign(int latin) {
        return switch (latin) {
            case 0xb0 -> "it is a degree sign; ";
            case 0x91, 0x92, 0x93, 0x94 -> "it is a curly quote; ";
            case 0xb2 -> "it is a small 2 as in dm2; ";
            case 0x96, 0x97 -> "it is a long dash; ";
            default -> "";
        };
    }

    /** The character at a place, or 0 when there is none. */
    int at(int line, int column) {
        if (line < 1 || line > lines.size() || column < 1) {
            return 0;
        }
        String text = lines.get(line - 1);
        return column > text.codePointCount(0, text.length())
                ? 0
                : text.codePointAt(text.offsetByCodePoints(0, column - 1));
    }
}
