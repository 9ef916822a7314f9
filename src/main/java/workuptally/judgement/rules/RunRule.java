package workuptally.judgement.rules;

import java.util.List;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.tally.RunTally;

/** A rule about one run. It reads results and returns findings; it reads no other rule. */
public interface RunRule {
    /** Codes of the findings it can raise; each has a section in {@code reference/findings.md}. */
    List<FindingCode> codes();

    /**
     * What the run shows.
     *
     * @param tally results of the run
     * @param book the book, for limits and registers
     */
    List<Finding> judge(RunTally tally, Book book);
}
