package workuptally.judgement.rules;

import java.util.List;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.tally.RunTally;

/** A rule about the whole book: containers, transfers, registers, and what several runs show together. */
public interface BookRule {
    /** Codes of the findings it can raise; each has a section in {@code reference/findings.md}. */
    List<FindingCode> codes();

    /**
     * What the book shows.
     *
     * @param book the entries
     * @param tallies results of every run, in order of the book
     */
    List<Finding> judge(Book book, List<RunTally> tallies);
}
