package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sawfly.file.SchemaWriter.Kind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Keeps the schemas and the page of keys true; run with {@code -Dupdate} to write them anew. */
class SchemaWriterTest {
    private static final Path SCHEMAS = Path.of("../shared/schema");

    @ParameterizedTest
    @EnumSource(Kind.class)
    void schemaIsWhatTheReadersAsk(Kind kind) throws IOException {
        same(SCHEMAS.resolve(kind.fileName()), SchemaWriter.schema(kind));
    }

    @Test
    void pageOfKeysIsWhatTheReadersAsk() throws IOException {
        same(SCHEMAS.resolve("keys.md"), SchemaWriter.reference());
    }

    @Test
    void listsPaths() {
        assertThat(SchemaWriter.paths(Kind.GLIDER))
                .contains("ready_to_fly.cg_mm", "parts.NAME.mass_g", "wing.stations[].chord_mm", "correction.drag_pct");
        assertThat(SchemaWriter.paths(Kind.LAUNCH)).contains("thrower.usual_height_m", "air.wind_mps");
        assertThat(SchemaWriter.paths(Kind.STUDY)).contains("vary", "cut.joint_g", "versions.NAME.rebalance.keep");
    }

    static Stream<Path> scenarios() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("../scenarios"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    /** Every key of every scenario stands in its schema. */
    @ParameterizedTest
    @MethodSource("scenarios")
    void schemaKnowsTheScenarios(Path file) {
        Problems problems = new Problems();
        Documents.Document document = new Documents(problems).any(file);
        JsonNode schema = JsonMapper.shared()
                .readTree(SchemaWriter.schema(Kind.valueOf(document.kind().name())));
        check(document.tree(), schema, "");
        assertThat(problems.all()).isEmpty();
    }

    private static void check(Node node, JsonNode schema, String path) {
        if (node instanceof Node.Keys keys && schema.has("properties")) {
            keys.entries().forEach((key, entry) -> {
                assertThat(schema.get("properties").has(key))
                        .as(path + "." + key)
                        .isTrue();
                check(entry.value(), schema.get("properties").get(key), path + "." + key);
            });
        } else if (node instanceof Node.Keys keys
                && schema.path("additionalProperties").isObject()) {
            keys.entries()
                    .forEach(
                            (key, entry) -> check(entry.value(), schema.get("additionalProperties"), path + "." + key));
        } else if (node instanceof Node.Items items && schema.path("items").has("properties")) {
            items.items().forEach(item -> check(item, schema.get("items"), path + "[]"));
        }
    }

    private static void same(Path file, String wanted) throws IOException {
        if (System.getProperty("update") != null) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, wanted);
        }
        assertThat(List.of(Files.readString(file).split("\n"))).containsExactlyElementsOf(List.of(wanted.split("\n")));
    }
}
