package workuptally.report.view.firstpage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import workuptally.judgement.RunReview;
import workuptally.model.FindingCode;
import workuptally.report.view.wording.Words;
import workuptally.tally.layers.Meeting;

/** What must not meet in a run, in few words. */
final class MeetingWords {
    private MeetingWords() {}

    /**
     * What must not have met, with what comes of it, the gravest first: {@code sodium azide + dichloromethane (explodes)}. All pairs are
     * named before it is said what comes of one.
     */
    static List<String> met(RunReview run, int most) {
        List<Meeting> meetings = run.tally().evidence().meetings().list().stream()
                .filter(Meeting::holdsItsPortions)
                .sorted(Comparator.comparing(Meeting::isCritical).reversed())
                .toList();
        List<String> pairs = meetings.stream()
                .map(meeting -> String.join(" + ", meeting.with()))
                .distinct()
                .toList();
        List<String> met = inShort(meetings);
        boolean pairsOnly = String.join("; ", met).length() > most
                && String.join("; ", pairs).length() <= most;
        return met.isEmpty() ? met : List.of(Words.listed(pairsOnly ? pairs : met, "; ", most, more -> more + " more"));
    }

    /** The two materials with what comes of it in a word; what meets several is named once. */
    private static List<String> inShort(List<Meeting> meetings) {
        Map<String, List<String>> byFirst = new LinkedHashMap<>();
        for (Meeting meeting : meetings) {
            String other =
                    String.join(" + ", meeting.with().subList(1, meeting.with().size())) + " ("
                            + meeting.dangerInAWord() + ")";
            List<String> others = byFirst.computeIfAbsent(meeting.with().get(0), first -> new ArrayList<>());
            if (!others.contains(other)) {
                others.add(other);
            }
        }
        return byFirst.entrySet().stream()
                .map(e -> e.getKey() + " + " + String.join(", + ", e.getValue()))
                .toList();
    }

    /** Deadly gas, fire or an explosion is before everything else that can hurt. */
    static boolean isDeadly(FindingCode code, RunReview run) {
        return code == FindingCode.MATERIALS_MUST_NOT_MEET
                && run.tally().evidence().meetings().list().stream()
                        .anyMatch(m -> m.holdsItsPortions() && m.isCritical());
    }
}
