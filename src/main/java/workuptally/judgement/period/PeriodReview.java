package workuptally.judgement.period;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.judgement.BasisRow;
import workuptally.judgement.period.BookShare.ClassShare;
import workuptally.judgement.period.BookShare.ContainerShare;
import workuptally.judgement.period.BookShare.CorrectionShare;
import workuptally.judgement.period.BookShare.LimitShare;
import workuptally.judgement.totals.PeriodTotals;
import workuptally.judgement.totals.RunShare;
import workuptally.model.InputFile;

/**
 * The accounts of a period over many books. It names no chemist.
 *
 * @param span first and last day
 * @param places groups and sites that the books name, each once
 * @param totals totals over the runs of the period
 * @param lines the runs of the period with the book each stands in, by date, then in order of the books
 * @param notCounted records of runs that do not count, with the reason
 * @param containers each container as the last book of the period that lists it leaves it, by id
 * @param classes preparations of which a book of the period holds many runs
 * @param before what it is compared with
 * @param books what was read and what was not, in order of their names
 * @param corrections corrections in the books of the period
 * @param limits limits in force in them
 * @param basis reference values and equations that their figures rest on
 * @param toolVersion version of the tool
 */
public record PeriodReview(
        Span span,
        List<String> places,
        PeriodTotals totals,
        List<Line> lines,
        List<NotCounted> notCounted,
        List<ContainerShare> containers,
        List<ClassShare> classes,
        Before before,
        List<BookLine> books,
        List<CorrectionShare> corrections,
        List<LimitInForce> limits,
        List<BasisRow> basis,
        String toolVersion) {
    /** Copies the lists. */
    public PeriodReview {
        places = List.copyOf(places);
        lines = List.copyOf(lines);
        notCounted = List.copyOf(notCounted);
        containers = List.copyOf(containers);
        classes = List.copyOf(classes);
        books = List.copyOf(books);
        corrections = List.copyOf(corrections);
        limits = List.copyOf(limits);
        basis = List.copyOf(basis);
    }

    /** Number of books that were read. */
    public long booksRead() {
        return books.stream().filter(b -> b.standing() == Standing.READ).count();
    }

    /** Number of books with a run that counts. */
    public long booksCounted() {
        return books.stream().filter(b -> b.runsCounted() > 0).count();
    }

    /**
     * A run of the period.
     *
     * @param book name of its book
     * @param run what it adds
     */
    public record Line(String book, RunShare run) {}

    /**
     * A record of a run that does not count.
     *
     * @param book the book
     * @param run run id
     * @param because why
     */
    public record NotCounted(String book, String run, String because) {}

    /**
     * What the period is compared with.
     *
     * @param weeks the weeks from Monday to Sunday before the period, the earliest first, only those with runs
     * @param earlier the spans that the period is compared with, the earliest first, also those without runs
     * @param lastFour all of them together, as far as they hold runs; empty where none does
     */
    public record Before(List<Week> weeks, List<Earlier> earlier, Optional<Comparison> lastFour) {
        /** Copies the lists. */
        public Before {
            weeks = List.copyOf(weeks);
            earlier = List.copyOf(earlier);
        }
    }

    /**
     * A week before the period.
     *
     * @param monday its first day
     * @param runs number of runs
     * @param totals totals over them
     */
    public record Week(LocalDate monday, int runs, PeriodTotals totals) {}

    /**
     * A span that the period is compared with.
     *
     * @param span its days
     * @param runs number of runs; 0 where no book that was read holds one
     * @param totals totals over them
     */
    public record Earlier(Span span, int runs, PeriodTotals totals) {}

    /**
     * Earlier spans together.
     *
     * @param periods number of spans that hold runs
     * @param meanSolventInGrams solvents put in, a span, g
     * @param pmi sum over sum, g/g; empty where no yield can be stated
     */
    public record Comparison(int periods, double meanSolventInGrams, OptionalDouble pmi) {}

    /** Whether a book was read. */
    public enum Standing {
        /** Read. */
        READ("read"),
        /** Cannot be read. */
        NOT_READ("not read"),
        /** Written by this program: no record of a laboratory. */
        PASSED_OVER("passed over");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        /** As a reader wants it. */
        public String word() {
            return word;
        }
    }

    /**
     * A book.
     *
     * @param book its path inside the folder of the period
     * @param standing whether it was read
     * @param files its files with hashes; empty where it was not read
     * @param runs runs that it holds
     * @param runsCounted runs of the period that count
     * @param remark why it, or a run of it, was left out; empty where there is nothing to say
     */
    public record BookLine(
            String book, Standing standing, List<InputFile> files, int runs, int runsCounted, String remark) {
        /** Copies the list. */
        public BookLine {
            files = List.copyOf(files);
        }
    }

    /**
     * A limit and the books of the period in which it has this value.
     *
     * @param limit limit, value and origin
     * @param books names of the books
     */
    public record LimitInForce(LimitShare limit, List<String> books) {
        /** Copies the list. */
        public LimitInForce {
            books = List.copyOf(books);
        }
    }
}
