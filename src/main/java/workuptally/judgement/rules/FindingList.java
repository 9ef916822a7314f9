package workuptally.judgement.rules;

import java.util.ArrayList;
import java.util.List;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Place;
import workuptally.model.Severity;
import workuptally.model.Subject;

/** Findings about one run, in the order in which they are met. */
public final class FindingList {
    /** Source of a threshold that the trade uses without a single origin. */
    public static final String PRACTICE = "common practice";

    private final String run;
    private final List<Finding> findings = new ArrayList<>();

    /** @param run run id; empty for findings about no run */
    public FindingList(String run) {
        this.run = run;
    }

    /** Adds a finding about what stands in the row of its place. */
    public void add(
            FindingCode code,
            Severity severity,
            Place place,
            Phrase seen,
            Phrase expected,
            String source,
            Phrase action) {
        add(code, severity, Subject.ofRun(run), place, seen, expected, source, action);
    }

    /** Adds a finding about more than the row that its place names. */
    public void add(
            FindingCode code,
            Severity severity,
            Subject subject,
            Place place,
            Phrase seen,
            Phrase expected,
            String source,
            Phrase action) {
        findings.add(new Finding(code, severity, subject, place, seen, expected, source, action));
    }

    public List<Finding> list() {
        return List.copyOf(findings);
    }
}
