package org.sawfly.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher in an unpacked release, started with a java that only says how it was called. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    private static final String SAYS_HOW = "#!/bin/sh\n"
            + "case \" $* \" in *\" -Xshare:dump \"*) dumps=yes;; esac\n"
            + "for word; do\n"
            + "  case $dumps$word in\n"
            + "    -XX:DumpLoadedClassList=*) echo names >\"${word#*=}\";;\n"
            + "    yes-XX:SharedArchiveFile=*) echo classes >\"${word#*=}\"; echo trained >>\"$TRACE\";;\n"
            + "  esac\n"
            + "done\n"
            + "for word; do echo \"$word\"; done\n";

    @TempDir
    private Path folder;

    private Path launcher;
    private Path lib;
    private Path trace;

    @BeforeEach
    void unpack() throws IOException {
        Path release = Files.createDirectories(folder.resolve("my planes/sawfly"));
        lib = Files.createDirectories(release.resolve("lib"));
        Files.writeString(lib.resolve("sim-cli-0.1.0.jar"), "a jar");
        launcher = release.resolve("sawfly");
        Files.copy(Path.of("..", "sawfly"), launcher);
        trace = folder.resolve("trace");
        java("17.0.1", SAYS_HOW);
    }

    @Test
    void passesTheWordsOnUnchanged() throws Exception {
        assertThat(start(launcher, "fly", "my glider.yaml", "--change", "a=1,b='2'")
                        .out())
                .endsWith("fly", "my glider.yaml", "--change", "a=1,b='2'");
    }

    @Test
    void findsItsJarsThroughLinksAndFromElsewhere() throws Exception {
        Path first = Files.createSymbolicLink(folder.resolve("first"), Path.of("my planes/sawfly/sawfly"));
        Path second = Files.createSymbolicLink(folder.resolve("second"), first);
        assertThat(start(second, "fly").out())
                .containsSequence("-jar", lib.toRealPath().resolve("sim-cli-0.1.0.jar") + "", "fly");
    }

    @Test
    void makesTheArchiveOnceAndUsesIt() throws Exception {
        Result first = start(launcher, "fly");
        Result second = start(launcher, "fly");
        assertThat(Files.readAllLines(trace)).hasSize(1);
        assertThat(first.err()).isNotEmpty();
        assertThat(second.err()).isEmpty();
        String archive = "-XX:SharedArchiveFile=" + lib.toRealPath();
        assertThat(second.out()).contains("-Xshare:auto", "-Xlog:disable").anyMatch(word -> word.startsWith(archive));
        try (var files = Files.list(lib)) {
            assertThat(files.map(Path::toString)).noneMatch(name -> name.endsWith(".part") || name.endsWith(".list"));
        }
    }

    @Test
    void triesOnceOnlyWhereJavaMakesNoArchive() throws Exception {
        java("17.0.1", "#!/bin/sh\necho tried >>\"$TRACE\"\nfor word; do echo \"$word\"; done\n");
        start(launcher, "fly");
        Result second = start(launcher, "fly");
        assertThat(Files.readAllLines(trace)).as("one training, two runs").hasSize(3);
        assertThat(second.err()).isEmpty();
        assertThat(second.out()).noneMatch(word -> word.startsWith("-XX:SharedArchiveFile"));
    }

    @Test
    void makesTheArchiveAgainForAnotherJava() throws Exception {
        start(launcher, "fly");
        java("21.0.2", SAYS_HOW);
        start(launcher, "fly");
        assertThat(Files.readAllLines(trace)).hasSize(2);
    }

    @Test
    void compilesLittleOnlyWhereTheRunIsShort() throws Exception {
        assertThat(start(launcher, "check", "x.yaml").out()).contains("-XX:TieredStopAtLevel=1");
        assertThat(start(launcher, "fly", "x.yaml").out()).contains("-XX:TieredStopAtLevel=1");
        assertThat(start(launcher, "vary", "x.yaml").out())
                .contains("-XX:+UseSerialGC")
                .doesNotContain("-XX:TieredStopAtLevel=1", "-XX:+UseG1GC");
        assertThat(start(launcher, "vary", "--help").out()).contains("-XX:TieredStopAtLevel=1");
    }

    @Test
    void refusesAnOldJavaWithItsVersion() throws Exception {
        for (String old : List.of("11.0.2", "1.8.0_392")) {
            java(old, SAYS_HOW);
            Result result = start(launcher, "fly");
            assertThat(result.code()).isEqualTo(1);
            assertThat(result.out()).isEmpty();
            assertThat(result.err())
                    .singleElement()
                    .asString()
                    .contains("too old")
                    .contains("17");
        }
    }

    @Test
    void passesTheExitCodeOn() throws Exception {
        java("17.0.1", "#!/bin/sh\nexit 4\n");
        assertThat(start(launcher, "fly").code()).isEqualTo(4);
    }

    @Test
    void saysWhenTheReleaseIsIncomplete() throws Exception {
        Files.delete(lib.resolve("sim-cli-0.1.0.jar"));
        Result result = start(launcher, "fly");
        assertThat(result.code()).isEqualTo(1);
        assertThat(result.err()).singleElement().asString().contains("no sim-cli jar");
    }

    private record Result(int code, List<String> out, List<String> err) {}

    private void java(String version, String script) throws IOException {
        Path bin = Files.createDirectories(folder.resolve("jdk/bin"));
        Path java = bin.resolve("java");
        Files.writeString(java, script);
        assertThat(java.toFile().setExecutable(true)).isTrue();
        Files.writeString(folder.resolve("jdk/release"), "JAVA_VERSION=\"" + version + "\"\n");
    }

    private Result start(Path what, String... words) throws Exception {
        List<String> command = new ArrayList<>(List.of("sh", what.toString()));
        command.addAll(List.of(words));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().putAll(Map.of("JAVA_HOME", folder.resolve("jdk").toString(), "TRACE", trace.toString()));
        Process process = builder.start();
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return new Result(process.exitValue(), Files.readAllLines(out), Files.readAllLines(err));
    }
}
