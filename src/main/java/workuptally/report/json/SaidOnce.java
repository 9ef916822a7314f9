package workuptally.report.json;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import workuptally.judgement.Review;
import workuptally.judgement.RunReview;
import workuptally.judgement.containers.RegulatoryFact;
import workuptally.judgement.hazards.HazardNote;
import workuptally.judgement.layers.Criterion;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.report.view.Wording;
import workuptally.tally.amounts.RunMaterial;
import workuptally.tally.layers.Meeting;

/**
 * Texts that are the same in many runs, such as the cautions of a solvent: they stand once, in front of the runs, under the number or key
 * that a run gives for them. Half of what a large book would fill is said again otherwise.
 */
final class SaidOnce {
    private final Map<HazardNote, Integer> hazards = new LinkedHashMap<>();
    private final Map<Meaning, Integer> materials = new LinkedHashMap<>();
    private final RepeatedTexts texts;
    private final Map<String, String> wasteStreams = new LinkedHashMap<>();
    private final Set<FindingCode> codes = EnumSet.noneOf(FindingCode.class);
    private final Map<Meets, Integer> meetings = new LinkedHashMap<>();
    private final Map<Advice, Integer> advice = new LinkedHashMap<>();
    private final Map<String, RegulatoryFact> facts = new LinkedHashMap<>();

    /** What is said of a material wherever its name is written. */
    private record Meaning(String written, String state, List<String> means, List<String> classes, boolean own) {
        static Meaning of(RunMaterial material) {
            return new Meaning(
                    material.written(), material.state(), material.meaning(), material.classes(), material.own());
        }
    }

    /** Two materials that meet and what the tables say of them, wherever it happens. */
    private record Meets(
            List<String> with, String consequence, String gas, String severity, String inWorkup, List<String> where) {
        static Meets of(Meeting meeting) {
            return new Meets(
                    meeting.with(),
                    meeting.consequence(),
                    meeting.gas(),
                    meeting.severity(),
                    meeting.inWorkup(),
                    meeting.where());
        }
    }

    /** What findings of one kind say in other runs too. */
    private record Advice(String expected, String source, String action) {
        static Advice of(Finding finding) {
            return new Advice(
                    Wording.POINT.of(finding.expected()), finding.source(), Wording.POINT.of(finding.action()));
        }
    }

    SaidOnce(Review review) {
        texts = new RepeatedTexts(review);
        for (RunReview run : review.runs()) {
            run.tally().waste().forEach(line -> wasteStreams.putIfAbsent(line.stream(), line.streamName()));
            run.hazards().forEach(note -> hazards.putIfAbsent(note, hazards.size() + 1));
            run.tally()
                    .evidence()
                    .meetings()
                    .list()
                    .forEach(m -> meetings.putIfAbsent(Meets.of(m), meetings.size() + 1));
            run.materials().forEach(m -> materials.putIfAbsent(Meaning.of(m), materials.size() + 1));
        }
        for (Finding finding : review.findings()) {
            codes.add(finding.code());
            advice.putIfAbsent(Advice.of(finding), advice.size() + 1);
        }
        review.containers()
                .forEach(container -> container.facts().forEach(fact -> facts.putIfAbsent(fact.key(), fact)));
    }

    /** Number of a note in the list of this document. */
    int number(HazardNote note) {
        return hazards.get(note);
    }

    /** Words that are said more than once. */
    RepeatedTexts texts() {
        return texts;
    }

    /** Number of two materials that meet in the list of this document. */
    int number(Meeting meeting) {
        return meetings.get(Meets.of(meeting));
    }

    /** Number of what was expected, by which source, and what to do, in the list of this document. */
    int number(Finding finding) {
        return advice.get(Advice.of(finding));
    }

    /** Number of what a name means in the list of this document. */
    int number(RunMaterial material) {
        return materials.get(Meaning.of(material));
    }

    void write(JsonFields json) {
        json.object(
                "columns",
                () -> Arrays.stream(Rows.values()).forEach(shape -> json.texts(shape.array(), shape.columns())));
        json.array("conditions", Arrays.asList(Criterion.values()), criterion -> {
            json.text("id", criterion.id());
            json.text("title", criterion.title());
        });
        texts.write(json);
        json.array("hazardNotes", hazards.entrySet(), entry -> {
            json.count("note", entry.getValue());
            hazard(json, entry.getKey());
        });
        json.array("materials", materials.entrySet(), entry -> {
            json.count("material", entry.getValue());
            meaning(json, entry.getKey());
        });
        json.array("meetings", meetings.entrySet(), entry -> {
            json.count("meeting", entry.getValue());
            meeting(json, entry.getKey());
        });
        json.array("advice", advice.entrySet(), entry -> {
            json.count("advice", entry.getValue());
            json.text("expected", entry.getKey().expected());
            json.text("source", entry.getKey().source());
            json.text("action", entry.getKey().action());
        });
        json.array("codes", codes, code -> {
            json.text("code", code.word());
            json.texts("catalogue", code.catalogue());
        });
        json.array("wasteStreams", wasteStreams.entrySet(), stream -> {
            json.text("stream", stream.getKey());
            json.text("streamName", stream.getValue());
        });
        json.array("regulatoryFacts", facts.values(), fact -> {
            json.text("key", fact.key());
            json.text("text", fact.text());
            json.text("source", fact.source());
            json.text("citation", fact.citation());
        });
    }

    private static void meeting(JsonFields json, Meets meets) {
        json.texts("with", meets.with());
        json.text("consequence", meets.consequence());
        json.text("gas", meets.gas());
        json.text("severity", meets.severity());
        json.text("inWorkup", meets.inWorkup());
        json.texts("where", meets.where());
    }

    private static void hazard(JsonFields json, HazardNote note) {
        json.text("subject", note.subject());
        json.texts("statements", note.statements());
        json.text("caution", note.caution());
        json.text("source", note.source());
    }

    private static void meaning(JsonFields json, Meaning meaning) {
        json.text("written", meaning.written());
        json.text("state", meaning.state());
        json.texts("means", meaning.means());
        json.texts("classes", meaning.classes());
        json.flag("ownCompound", meaning.own());
    }
}
