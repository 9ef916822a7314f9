package workuptally.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import workuptally.judgement.RunReview;
import workuptally.judgement.SafetyWording;
import workuptally.judgement.layers.LayerDecision;
import workuptally.judgement.layers.LayerDecision.State;
import workuptally.model.Finding;
import workuptally.model.Run;
import workuptally.report.view.wording.ReadableNumbers;
import workuptally.report.view.wording.Wording;
import workuptally.tally.amounts.NotComputed;

/** One run on the terminal: its figures, its findings with the most urgent first, its layers and what is missing to judge them. */
final class RunScreen {
    private static final int LABEL_WIDTH = 10;

    private final RunReview run;
    private final Wording wording;
    private final PrintWriter out;

    RunScreen(RunReview run, Wording wording, PrintWriter out) {
        this.run = run;
        this.wording = wording;
        this.out = out;
    }

    /** True where the run has nothing to show: no finding, no layer that waits, nothing left uncomputed. */
    static boolean isQuiet(RunReview run) {
        return run.findings().isEmpty()
                && run.tally().notComputed().isEmpty()
                && run.decisions().stream().allMatch(d -> d.outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE);
    }

    void print(double coverageFactor) {
        Run own = run.tally().run();
        String title = (run.id() + "  " + own.head().reaction()).strip() + ", "
                + own.status().word();
        List<String> lines = Wrapped.lines(title, "", "  ");
        lines.forEach(out::println);
        out.println("-".repeat(lines.stream().mapToInt(String::length).max().orElse(1)));
        new RunTable(List.of(run), coverageFactor, new ReadableNumbers(wording.mark())).print(out);
        if (!run.findings().isEmpty()) {
            out.println();
            for (Finding finding : run.findings()) {
                TerminalFindings.print(finding, wording, out);
            }
        }
        layers();
        notComputed();
        out.println();
    }

    private void layers() {
        if (run.decisions().isEmpty()) {
            return;
        }
        out.println();
        Wrapped.lines("Layers. " + SafetyWording.A_PERSON_DECIDES, "  ", "  ").forEach(out::println);
        Map<String, List<String>> silences = new LinkedHashMap<>();
        for (LayerDecision decision : run.decisions()) {
            told(decision);
            if (!decision.silence().isEmpty()) {
                silences.computeIfAbsent(wording.of(decision.silence()), k -> new ArrayList<>())
                        .add(decision.layer());
            }
        }
        silences.forEach(
                (silence, layers) -> Wrapped.lines(String.join(", ", layers) + ": " + silence, "    ", "      ")
                        .forEach(out::println));
    }

    /** What the outcome rests on: the conditions that are not met or have no evidence; the reason alone where all are met. */
    private void told(LayerDecision decision) {
        List<String> labels = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        conditions(decision, State.NOT_MET).ifPresent(text -> {
            labels.add("not met: ");
            texts.add(text);
        });
        conditions(decision, State.MISSING).ifPresent(text -> {
            labels.add("missing: ");
            texts.add(text);
        });
        String indent = " ".repeat(4 + LABEL_WIDTH);
        String start = "    " + TerminalFindings.pad(decision.layer(), LABEL_WIDTH)
                + decision.outcome().word()
                + (decision.isGone() ? ", gone" : "");
        boolean complete = decision.outcome() == LayerDecision.Outcome.EVIDENCE_COMPLETE;
        if (texts.isEmpty() || complete) {
            Wrapped.lines(wording.of(decision.reason()), start + ": ", indent).forEach(out::println);
        }
        for (int i = 0; i < texts.size(); i++) {
            String before = i == 0 && !complete ? start + ", " + labels.get(i) : indent + labels.get(i);
            Wrapped.lines(texts.get(i), before, indent + "  ").forEach(out::println);
        }
    }

    private Optional<String> conditions(LayerDecision decision, State state) {
        List<LayerDecision.Condition> found =
                decision.conditions().stream().filter(c -> c.state() == state).toList();
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(found.stream()
                        .map(c -> c.id() + " " + wording.of(c.evidence()))
                        .collect(Collectors.joining("; ")));
    }

    private void notComputed() {
        if (run.tally().notComputed().isEmpty()) {
            return;
        }
        out.println();
        out.println("  Not computed");
        for (NotComputed missing : run.tally().notComputed()) {
            String unlocked = missing.unlockedBy().isEmpty() ? "" : "; needs " + missing.unlockedBy();
            Wrapped.lines(missing.what() + ": " + missing.because() + unlocked, "    ", "      ")
                    .forEach(out::println);
        }
    }
}
