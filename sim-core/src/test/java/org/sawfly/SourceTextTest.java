package org.sawfly;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Rules about the text of the sources and documents of the whole project, each with its name. */
class SourceTextTest {
    private static final int MOST_LINES = 400;

    /** Files that may be longer, each for a reason worth writing here. None so far. */
    private static final Set<String> LONG_FILES = Set.of();

    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);
    private static final Pattern UNIT_FACTOR = Pattern.compile(
            "toRadians|toDegrees|[*/] ?(1e-?3|1000(\\.0)?|0\\.001|180(\\.0)?)\\b|\\b(1e-?3|1000(\\.0)?|0\\.001|180(\\.0)?) ?[*/]");
    private static final Pattern STANDARD = Pattern.compile("(?<![0-9.])(9\\.80665|1\\.225|288\\.15)(?![0-9])");
    private static final Pattern MACHINE_OR_TRACKER = Pattern.compile(
            "(?<![\\w./])/(home|tmp|work|root|Users)/|\\b(issue|ticket|pull request|PR) #?\\d+|\\b(TODO|FIXME|XXX)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s]+)(#[^)]*)?\\)");

    private static final Path TOP = top();
    private static final List<Path> FILES = files();

    @Test
    void filesAreNoLongerThanOneReads() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path file : sources("src/")) {
            int lines = Files.readAllLines(file).size();
            if (lines > MOST_LINES && !LONG_FILES.contains(file.getFileName().toString())) {
                tooLong.add(name(file) + ": " + lines + " lines");
            }
        }
        assertThat(tooLong).isEmpty();
    }

    @Test
    void unitFactorsStandInQuantityAndFileOnly() throws IOException {
        List<Path> others = sources("src/main/java/").stream()
                .filter(file -> !name(file).contains("/sawfly/quantity/"))
                .filter(file -> !name(file).contains("/sawfly/file/"))
                .toList();
        assertThat(hits(others, UNIT_FACTOR, true)).isEmpty();
    }

    @Test
    void standardConstantsStandInOnePlace() throws IOException {
        List<Path> others = sources("src/main/java/").stream()
                .filter(file -> !name(file).endsWith("/air/Standard.java"))
                .toList();
        assertThat(hits(others, STANDARD, true)).isEmpty();
    }

    @Test
    void everyPackageSaysWhatItIsFor() throws IOException {
        List<String> silent = new ArrayList<>();
        for (Path file : sources("src/main/java/")) {
            if (!Files.exists(file.resolveSibling("package-info.java"))) {
                silent.add(name(file.getParent()));
            }
        }
        assertThat(silent).isEmpty();
    }

    @Test
    void textsNameNoMachineAndNoTracker() throws IOException {
        List<Path> texts = FILES.stream()
                .filter(file -> name(file).matches(".*\\.(java|md|txt|yaml|csv|json|xml|properties)|sawfly|\\.ci/run"))
                .filter(file -> !name(file).endsWith("SourceTextTest.java"))
                .toList();
        assertThat(hits(texts, MACHINE_OR_TRACKER, false)).isEmpty();
    }

    @Test
    void everyLinkOfADocumentLeadsSomewhere() throws IOException {
        List<String> dead = new ArrayList<>();
        for (Path file : FILES) {
            if (!name(file).endsWith(".md")) {
                continue;
            }
            Matcher link = LINK.matcher(Files.readString(file));
            while (link.find()) {
                String target = link.group(1);
                if (!target.contains(":") && !Files.exists(file.resolveSibling(target))) {
                    dead.add(name(file) + ": " + target);
                }
            }
        }
        assertThat(dead).isEmpty();
    }

    private static List<String> hits(List<Path> files, Pattern pattern, boolean withoutComments) throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files) {
            String text = Files.readString(file);
            if (withoutComments) {
                text = COMMENT.matcher(text).replaceAll(gone -> "\n".repeat(newlines(gone.group())));
            }
            Matcher hit = pattern.matcher(text);
            while (hit.find()) {
                found.add(name(file) + ":" + (newlines(text.substring(0, hit.start())) + 1) + ": " + hit.group());
            }
        }
        return found;
    }

    private static int newlines(String text) {
        return (int) text.chars().filter(c -> c == '\n').count();
    }

    private static List<Path> sources(String below) {
        List<Path> found = FILES.stream()
                .filter(file -> name(file).contains("/" + below))
                .filter(file -> name(file).endsWith(".java"))
                .toList();
        assertThat(found).as("the sources are found from here").isNotEmpty();
        return found;
    }

    private static String name(Path file) {
        return TOP.relativize(file).toString().replace('\\', '/');
    }

    private static Path top() {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(here.resolve("sim-core")) || !Files.isDirectory(here.resolve("sim-cli"))) {
            here = here.getParent();
        }
        return here;
    }

    private static List<Path> files() {
        List<Path> found = new ArrayList<>();
        try {
            Files.walkFileTree(TOP, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                    String last = folder.getFileName().toString();
                    boolean foreign = last.equals("target") || last.equals(".git") || last.equals(".idea");
                    return foreign ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    found.add(file);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return found;
    }
}
