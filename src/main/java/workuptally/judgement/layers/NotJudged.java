package workuptally.judgement.layers;

import java.util.List;
import workuptally.model.Run;
import workuptally.model.Step;
import workuptally.model.SubstanceName;
import workuptally.tally.amounts.RunMaterial;

/**
 * Which materials of a layer no table knows. A charge can be in any layer of its run, what a step added in its own and in those of the
 * steps after it: nothing tells that it is not.
 */
final class NotJudged {
    private NotJudged() {}

    static List<String> in(String layer, Run run, List<RunMaterial> materials) {
        List<Step> steps = run.orderedSteps();
        int given = steps.size() - 1;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            if (step.given().organic().contains(layer)
                    || step.given().aqueous().contains(layer)
                    || step.given().other().contains(layer)) {
                given = i;
            }
        }
        int last = given;
        return materials.stream()
                .filter(RunMaterial::isUnjudged)
                .filter(m -> isCharged(run, m) || isAddedUpTo(last, steps, m))
                .map(RunMaterial::written)
                .toList();
    }

    private static boolean isCharged(Run run, RunMaterial material) {
        return run.charges().stream().anyMatch(c -> c.isOf(material.written()));
    }

    private static boolean isAddedUpTo(int last, List<Step> steps, RunMaterial material) {
        return steps.subList(0, last + 1).stream()
                .anyMatch(s -> SubstanceName.same(s.added().material(), material.written()));
    }
}
