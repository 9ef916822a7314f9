package workuptally.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import workuptally.book.files.UnreadableBookException;

/** Turns what stopped a command into one sentence for the reader and an exit code. */
final class Failure {
    private static final int LONGEST_SENTENCE = 2000;
    private static final String MEMORY =
            "There is not enough memory: give the program more with WORKUP_TALLY_JAVA_OPTS=-Xmx4g before the launcher,"
                    + " or java -Xmx4g -jar …; or split the book.";

    private Failure() {}

    /** Prints the sentence, with the book where the failure does not say which. */
    static ExitCode report(Path book, Throwable failure, PrintWriter err) {
        boolean named = failure instanceof UnreadableBookException || failure instanceof IOException;
        if (!named) {
            err.print(printable(book.toString()) + ": ");
        }
        return report(failure, err);
    }

    /** Prints the sentence. */
    static ExitCode report(Throwable failure, PrintWriter err) {
        if (failure instanceof UncheckedIOException wrapped) {
            return report(wrapped.getCause(), err);
        }
        if (failure instanceof UnreadableBookException || failure instanceof IOException) {
            err.println(sentence(failure));
            return ExitCode.UNUSABLE;
        }
        if (failure instanceof OutOfMemoryError) {
            err.println(MEMORY);
            return ExitCode.UNUSABLE;
        }
        err.println("This is a fault of the program, not of the book; nothing was written. Please report: "
                + printable(failure.toString()) + where(failure));
        return ExitCode.FAULT;
    }

    /** What is wrong with a file, in one sentence. */
    static String sentence(Throwable failure) {
        if (failure instanceof FileSystemException file) {
            return printable(file.getFile() + ": " + reason(file) + ".");
        }
        return printable(failure.getMessage() == null ? failure.toString() : failure.getMessage());
    }

    /** One line without control characters: a name in the message may hold what a terminal would act on. */
    static String printable(String message) {
        String line = TerminalText.plain(message.strip().replaceAll("\\s*\\R\\s*", " "));
        return line.length() <= LONGEST_SENTENCE ? line : line.substring(0, LONGEST_SENTENCE) + "…";
    }

    private static String reason(FileSystemException failure) {
        if (failure instanceof NoSuchFileException) {
            return "there is no such file or folder; look at the spelling of the path";
        }
        if (failure instanceof AccessDeniedException) {
            return "access is denied";
        }
        if (failure instanceof FileAlreadyExistsException) {
            return "it exists already";
        }
        if (failure instanceof NotDirectoryException) {
            return "it is no folder";
        }
        return failure.getReason() == null ? "it cannot be used" : failure.getReason();
    }

    /** The first line of our own code, which is what a report of the fault needs. */
    private static String where(Throwable failure) {
        for (StackTraceElement line : failure.getStackTrace()) {
            if (line.getClassName().startsWith("workuptally.")) {
                return " (" + line.getClassName() + ":" + line.getLineNumber() + ")";
            }
        }
        return "";
    }
}
