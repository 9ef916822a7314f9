package workuptally.judgement.rules.quench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.judgement.rules.BookRule;
import workuptally.judgement.rules.FindingList;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.model.Step;
import workuptally.model.SubstanceName;
import workuptally.reference.hazards.ReactivityPair.InWorkup;
import workuptally.reference.substances.MaterialClass;
import workuptally.tally.RunTally;
import workuptally.tally.layers.Meeting;

/**
 * What the table says not to concentrate, short of what explodes at once, which {@link MaterialsMeet} stops: said once a book for each
 * material, since ethers are evaporated every day. A negative peroxide test of the run settles what only peroxides make dangerous.
 */
public final class ConcentratedWithCare implements BookRule {
    private static final int MOST_NAMED = 4;

    /** Ethers of which no table says that they form peroxides, such as MTBE. */
    private static final String OTHER_ETHERS = MaterialClass.ETHER;

    /** The class that makes explosive peroxides in the closed bottle, before anything is concentrated. */
    private static final String SEVERE = MaterialClass.SEVERE_PEROXIDE_FORMER;

    /** Classes that only peroxides make dangerous. */
    private static final Set<String> BY_PEROXIDES = Set.of(MaterialClass.PEROXIDE_FORMER, SEVERE);

    /** The meetings of one material, whose gravest tells what it does. */
    private record Met(List<Meeting> meetings, Set<String> where) {
        Meeting gravest() {
            return meetings.stream()
                    .filter(meeting -> meeting.pair().classA().equals(SEVERE))
                    .findFirst()
                    .orElse(meetings.get(0));
        }
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.CONCENTRATED_WITH_CARE);
    }

    @Override
    public List<Finding> judge(Book book, List<RunTally> tallies) {
        Map<String, Met> met = new LinkedHashMap<>();
        for (RunTally tally : tallies) {
            for (Meeting meeting : tally.evidence().meetings().list()) {
                if (isMeant(meeting) && !isTested(tally, meeting)) {
                    Met same = met.computeIfAbsent(
                            SubstanceName.key(meeting.with().get(0)),
                            name -> new Met(new ArrayList<>(), new LinkedHashSet<>()));
                    same.meetings().add(meeting);
                    same.where()
                            .add(tally.run().id() + " step "
                                    + meeting.step().orElseThrow().number());
                }
            }
        }
        FindingList findings = new FindingList("");
        met.values().forEach(each -> add(findings, each));
        return findings.list();
    }

    private static boolean isMeant(Meeting meeting) {
        return meeting.occasion() == Meeting.Occasion.CONCENTRATION
                && meeting.pair().inWorkup() == InWorkup.NEVER
                && !meeting.pair().classA().equals(OTHER_ETHERS)
                && !meeting.isForbidden();
    }

    private static boolean isTested(RunTally tally, Meeting meeting) {
        if (!BY_PEROXIDES.contains(meeting.pair().classA())) {
            return false;
        }
        Step concentrated = meeting.step().orElseThrow();
        for (Step step : tally.run().orderedSteps()) {
            if (step.quenchTest()
                    .filter(test -> test == Step.QuenchTest.NEGATIVE)
                    .isPresent()) {
                return true;
            }
            if (step == concentrated) {
                return false;
            }
        }
        return false;
    }

    private static void add(FindingList findings, Met met) {
        Meeting meeting = met.gravest();
        boolean peroxides = BY_PEROXIDES.contains(meeting.pair().classA());
        List<String> where = List.copyOf(met.where());
        String named = String.join(", ", where.subList(0, Math.min(MOST_NAMED, where.size())))
                + (where.size() > MOST_NAMED ? " and " + (where.size() - MOST_NAMED) + " more" : "");
        findings.add(
                FindingCode.CONCENTRATED_WITH_CARE,
                meeting.pair().classA().equals(SEVERE) ? Severity.CHECK : Severity.NOTE,
                meeting.step().orElseThrow().row().at("Operation"),
                Phrase.of(
                        "{} is concentrated ({}): {}",
                        meeting.with().get(0),
                        named,
                        meeting.pair().consequence()),
                peroxides
                        ? Phrase.of("a peroxide test of the bottle before, and never to dryness")
                        : Phrase.of("none of it left before anything is concentrated"),
                MaterialsMeet.source(List.of(meeting)),
                peroxides
                        ? Phrase.of("Test for peroxides first and enter the result under Quench test; leave a residue.")
                        : Phrase.of("Take it away first; the safety data sheet and the local rules win."));
    }
}
