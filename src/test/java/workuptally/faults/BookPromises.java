package workuptally.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import workuptally.book.BookReader;
import workuptally.book.files.UnreadableBookException;
import workuptally.judgement.ReviewBuilder;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.Run;
import workuptally.model.Severity;
import workuptally.reference.Reference;
import workuptally.report.view.wording.Wording;

/** What the program promises of any book, however damaged; the first promise that is broken is told in words. */
final class BookPromises {
    /** How far a book is taken; each depth includes those before. */
    enum Depth {
        READ,
        REVIEWED,
        /** By the command {@code check}. */
        CHECKED,
        /** By the command {@code review} with all its files. */
        WRITTEN
    }

    private static final int FILES = 12;

    /** What no column of numbers takes, and what therefore must be reported where a number stood. */
    private static final Set<String> NO_NUMBERS = Set.of(
            "NaN", "Infinity", "1.2.3,4", "12,5o", "<<1", "#REF!", "#DIV/0!", "null", "(((((((", "@x", "R26-041");

    private final ReviewBuilder builder = new ReviewBuilder(Reference.load(), "test");

    /** Of a book of which nothing is known. */
    Optional<String> broken(Path path, Depth depth, Path scratch) throws IOException {
        return broken(path, depth, scratch, book -> Optional.empty());
    }

    /**
     * Of a book in which one cell was changed.
     *
     * @param whole the book before
     */
    Optional<String> broken(Path path, Depth depth, Path scratch, BookDamage.HitCell hit, Book whole)
            throws IOException {
        return broken(
                path, depth, scratch, book -> othersChanged(hit, whole, book).or(() -> reportedWrongly(hit, book)));
    }

    private interface Promise {
        Optional<String> brokenBy(Book book);
    }

    private Optional<String> broken(Path path, Depth depth, Path scratch, Promise ofContent) throws IOException {
        int code;
        try {
            Book book = new BookReader().read(path);
            List<Finding> findings =
                    depth == Depth.READ ? book.findings() : builder.review(book).findings();
            code = findings.stream().anyMatch(f -> f.severity().compareTo(Severity.HOLD) <= 0) ? 1 : 0;
            Optional<String> fault = twice(findings).or(() -> ofContent.brokenBy(book));
            if (fault.isPresent()) {
                return fault;
            }
        } catch (UnreadableBookException refused) {
            code = 2;
            String sentence = refused.getMessage();
            if (!sentence.endsWith(".")
                    || sentence.contains("xception")
                    || sentence.lines().count() != 1) {
                return Optional.of("refused with '" + sentence + "'");
            }
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            return Optional.of(fault + " at "
                    + Stream.of(fault.getStackTrace())
                            .filter(line -> line.getClassName().startsWith("workuptally."))
                            .limit(3)
                            .toList());
        }
        return switch (depth) {
            case READ, REVIEWED -> Optional.empty();
            case CHECKED -> checked(path, code);
            case WRITTEN -> written(path, code, scratch.resolve("out"));
        };
    }

    private static Optional<String> checked(Path path, int code) {
        Ended ended = Ended.run("check", path);
        return ended.code() == code
                ? terminal(ended)
                : Optional.of("check ended with " + ended.code() + ", not " + code + ": " + ended.err());
    }

    private static Optional<String> written(Path path, int code, Path target) throws IOException {
        Ended ended = Ended.run("review", path, "--out", target, "--strict");
        long files = Files.exists(target) ? emptied(target) : 0;
        boolean refused = ended.code() == 2 && files == 0;
        // What is read may be sound in a workbook that cannot be annotated.
        boolean notAnnotated = refused && ended.err().contains("cannot be annotated") && !Files.isDirectory(path);
        boolean right = code == 2 ? refused : notAnnotated || ended.code() == code && files == FILES;
        return right
                ? terminal(ended)
                : Optional.of("review ended with " + ended.code() + " and " + files + " files, not " + code + ": "
                        + ended.err());
    }

    private static Optional<String> terminal(Ended ended) {
        String all = ended.out() + ended.err();
        if (ended.err().lines().count() != (ended.code() == 2 ? 1 : 0)) {
            return Optional.of("the terminal shows '" + ended.err() + "'");
        }
        if (all.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\r')) {
            return Optional.of("the terminal gets a control character");
        }
        return all.contains("Exception") ? Optional.of("the terminal shows an exception") : Optional.empty();
    }

    private static long emptied(Path folder) throws IOException {
        long count = 0;
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                count += Files.isRegularFile(file) ? 1 : 0;
                Files.delete(file);
            }
        }
        return count;
    }

    private static Optional<String> twice(List<Finding> findings) {
        Set<List<Object>> seen = new HashSet<>();
        for (Finding finding : findings) {
            if (!seen.add(
                    List.of(finding.code().word(), finding.run(), finding.place(), Wording.POINT.of(finding.seen())))) {
                return Optional.of("reported twice: " + finding);
            }
        }
        return Optional.empty();
    }

    /** Runs other than the one that was hit are read as before. */
    private static Optional<String> othersChanged(BookDamage.HitCell hit, Book whole, Book book) {
        Set<Run> now = new HashSet<>(book.runs());
        for (Run run : whole.runs()) {
            if (!run.id().equals(hit.run()) && !now.contains(run)) {
                return Optional.of(run.id() + " changed by " + hit);
            }
        }
        return Optional.empty();
    }

    /** A number that nobody can read is one finding at its cell; any other entry at most one. */
    private static Optional<String> reportedWrongly(BookDamage.HitCell hit, Book book) {
        long atCell = book.findings().stream()
                .filter(f -> f.place().file().equals(hit.file()))
                .filter(f -> f.place().row() == hit.row() + 1 && f.place().column() == hit.column())
                .count();
        boolean wasNumber =
                hit.before().matches("[0-9]+(\\.[0-9]+)?") && hit.heading().matches(".*\\((g|mg|mL|%|°C|min)\\)");
        boolean mustBe = wasNumber && NO_NUMBERS.contains(hit.after());
        return atCell > 1 || mustBe && atCell == 0 ? Optional.of(atCell + " findings at " + hit) : Optional.empty();
    }
}
