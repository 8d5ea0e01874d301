package org.sawfly.cli.answer;

import java.util.LinkedHashMap;
import java.util.Map;

/** Writes an answer for machines, one document: command, version, inputs, results, warnings, cautions, verdict. */
public final class JsonWriter {
    private JsonWriter() {}

    /** The whole document, ended by a line feed; equal answers give equal bytes. */
    public static String write(Answer answer, String version) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("command", answer.command());
        document.put("version", version);
        document.put("inputs", answer.inputs());
        document.put("results", answer.results());
        document.put("warnings", answer.warnings());
        document.put("cautions", answer.cautions());
        document.put("verdict", answer.verdict());
        return JsonText.of(document);
    }
}
