package org.sawfly.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.sawfly.cli.answer.CannotWrite;
import org.sawfly.cli.command.CommandException;
import org.sawfly.cli.command.Exit;
import org.sawfly.file.InputException;
import org.sawfly.study.NoAnswerException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns what went wrong into lines for the user and an exit code. A stack trace only with SAWFLY_TRACE=1. */
final class Failures {
    /** What people type for an option that is not there. */
    private static final Map<String, String> MEANT = Map.of(
            "--cut", "--change boom.cut_mm=40",
            "--cg", "--change ready_to_fly.cg_mm=67",
            "--output", "--csv FILE or --chart FILE",
            "-o", "--csv FILE or --chart FILE",
            "--quiet", "-q");

    /** How often, by the name another command has for it. */
    private static final Map<String, String> ALIKE = Map.of("--draws", "--throws", "--throws", "--draws");

    private static final Pattern OPTION = Pattern.compile("-(?![\\d.]).+");
    private static final Pattern TYPE = Pattern.compile(" is not an? (?:int|long)$");

    private final PrintStream err;
    private final boolean trace;

    Failures(PrintStream err) {
        this.err = err;
        this.trace = "1".equals(System.getenv("SAWFLY_TRACE"));
    }

    int wrongUse(ParameterException e) {
        if (e.getCause() instanceof CommandException || e.getCause() instanceof InputException) {
            return failed(e.getCause());
        }
        err.println("sawfly: " + decapitalized(words(e)));
        CommandLine line = e.getCommandLine();
        if (e instanceof UnmatchedArgumentException unmatched) {
            String meant = meant(unmatched);
            if (!meant.isEmpty()) {
                err.println("Maybe " + meant);
            }
        }
        err.println("More: " + line.getCommandSpec().qualifiedName() + " --help");
        traced(e);
        return Exit.WRONG_USE.code();
    }

    /** Any other end of a command. Every exception the program throws on purpose has its line here. */
    int failed(Throwable e) {
        if (e instanceof InputException refused) {
            err.println(refused.getMessage());
            traced(e);
            return Exit.NOT_ACCEPTED.code();
        }
        Exit exit = Exit.FAULT;
        String message = "a fault of the program: " + e + " (SAWFLY_TRACE=1 shows where)";
        if (e instanceof CommandException stop) {
            exit = stop.exit();
            message = stop.getMessage();
        } else if (e instanceof CannotWrite) {
            exit = Exit.NOT_WRITTEN;
            message = e.getMessage();
        } else if (e instanceof NoAnswerException) {
            exit = Exit.NO_ANSWER;
            message = "no answer: " + e.getMessage();
        } else if (e instanceof UncheckedIOException || e instanceof IOException) {
            exit = Exit.NOT_WRITTEN;
            message = "could not write: " + reason(e);
        } else if (e instanceof OutOfMemoryError) {
            message = "out of memory; ask for fewer points at once";
        }
        err.println("sawfly: " + message);
        traced(e);
        return exit.code();
    }

    int notWritten() {
        err.println("sawfly: could not write the whole output; is the disk full?");
        return Exit.NOT_WRITTEN.code();
    }

    private static String reason(Throwable e) {
        return e instanceof UncheckedIOException unchecked
                ? unchecked.getCause().getMessage()
                : e.getMessage();
    }

    /** What is wrong, in a builder's words: options without the values behind them, numbers by no type of a program. */
    private static String words(ParameterException e) {
        List<String> options = e instanceof UnmatchedArgumentException unmatched
                ? unmatched.getUnmatched().stream()
                        .filter(word -> OPTION.matcher(word).matches())
                        .toList()
                : List.of();
        if (!options.isEmpty()) {
            return (options.size() == 1 ? "unknown option: '" : "unknown options: '") + String.join("', '", options)
                    + "'";
        }
        return TYPE.matcher(e.getMessage()).replaceFirst(" is not a whole number");
    }

    private static String meant(UnmatchedArgumentException e) {
        String word = e.getUnmatched().isEmpty() ? "" : e.getUnmatched().get(0);
        int equals = word.indexOf('=');
        String option = equals < 0 ? word : word.substring(0, equals);
        String known = MEANT.get(option);
        if (known != null) {
            return known;
        }
        String like = ALIKE.get(option);
        if (like != null && e.getCommandLine().getCommandSpec().findOption(like) != null) {
            return like;
        }
        List<String> close = e.getSuggestions();
        return close.stream().distinct().limit(3).collect(Collectors.joining(" or "));
    }

    private static String decapitalized(String message) {
        if (message.length() < 2 || !Character.isLowerCase(message.charAt(1))) {
            return message;
        }
        return Character.toLowerCase(message.charAt(0)) + message.substring(1);
    }

    private void traced(Throwable e) {
        if (trace) {
            e.printStackTrace(err);
        }
    }
}
