package org.sawfly.file;

import java.util.Map;

/** Writes a launch as a file that reads back to the same: its keys as they stand, without comments. */
final class LaunchWriter {
    private LaunchWriter() {}

    static String write(Node.Keys launch, String name) {
        StringBuilder text = new StringBuilder();
        text.append("launch: ")
                .append(Settings.flow(new Node.Scalar(launch.place(), Node.Kind.QUOTED, name)))
                .append('\n');
        for (Map.Entry<String, Node.Entry> one :
                launch.without("launch").entries().entrySet()) {
            text.append(one.getKey()).append(':');
            Node value = one.getValue().value();
            if (value instanceof Node.Keys keys && !keys.entries().isEmpty()) {
                keys.entries()
                        .forEach((key, entry) ->
                                text.append("\n  ").append(key).append(": ").append(Settings.flow(entry.value())));
            } else {
                text.append(' ').append(Settings.flow(value));
            }
            text.append('\n');
        }
        return text.toString();
    }
}
