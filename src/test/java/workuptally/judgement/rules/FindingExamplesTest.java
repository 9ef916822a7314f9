package workuptally.judgement.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import workuptally.judgement.Rules;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.reference.Reference;
import workuptally.report.view.wording.Wording;
import workuptally.tally.amounts.Substances;
import workuptally.tally.suspects.TareRegister;

/** Every finding that a rule can raise is raised by an invented book; the thresholds tested are those the rules state. */
@Tag("slow")
class FindingExamplesTest {
    @TempDir
    Path folder;

    static Collection<FindingExamples.Example> examples() {
        return FindingExamples.all().values();
    }

    static Set<String> codesOfRules() {
        Set<String> codes = new TreeSet<>();
        Substances substances = new Substances(Reference.load());
        Rules.ofRun(substances, new TareRegister(List.of())).forEach(rule -> words(codes, rule.codes()));
        Rules.ofBook(substances).forEach(rule -> words(codes, rule.codes()));
        Rules.ofProposals(new Substances(Reference.load())).forEach(rule -> words(codes, rule.codes()));
        words(codes, HeldLayers.codes());
        words(codes, SuspectEntries.codes());
        return codes;
    }

    private static void words(Set<String> words, List<FindingCode> codes) {
        codes.forEach(code -> words.add(code.word()));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void exampleRaisesItsFindingWithItsSeverity(FindingExamples.Example example) throws Exception {
        List<Finding> findings = example.book().findings(folder, example.code());
        assertTrue(!findings.isEmpty(), () -> "not raised: " + example.code());
        assertEquals(example.severity(), findings.get(0).severity());
    }

    @Test
    void everyCodeOfARuleHasAnExampleAndEveryExampleARule() {
        assertEquals(codesOfRules(), new TreeSet<>(FindingExamples.all().keySet()));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void findingNamesItsPlaceAndWhatToDo(FindingExamples.Example example) throws Exception {
        for (Finding finding : example.book().findings(folder, example.code())) {
            assertTrue(
                    Stream.of(
                                    Wording.POINT.of(finding.seen()),
                                    Wording.POINT.of(finding.expected()),
                                    Wording.POINT.of(finding.action()),
                                    finding.place().sheet())
                            .noneMatch(String::isBlank),
                    finding::toString);
        }
    }
}
