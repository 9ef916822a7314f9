package workuptally.report.json;

import java.util.List;
import workuptally.tally.waste.SolventUse;

/** The account of solvents, of a run or of the book. */
final class SolventJson {
    private SolventJson() {}

    static void array(JsonFields json, List<SolventUse> solvents) {
        json.array("solvents", solvents, use -> use(json, use));
    }

    private static void use(JsonFields json, SolventUse use) {
        json.text("solvent", use.solvent());
        use.registryNumber().ifPresent(number -> json.text("cas", number));
        json.number("inGrams", use.inGrams());
        json.number("inLitres", use.inLitres());
        json.number("chargedGrams", use.chargedGrams());
        json.number("workupGrams", use.workupGrams());
        json.number("purificationGrams", use.purificationGrams());
        json.number("purificationRecoveredGrams", use.purification().recoveredGrams());
        json.number("purificationInDistillatesGrams", use.purification().inDistillatesGrams());
        json.number("purificationInLayersGrams", use.purification().inLayersGrams());
        json.number("purificationNotFoundGrams", use.purification().notFoundGrams());
        json.number("recoveredGrams", use.recoveredGrams());
        json.number("inDistillatesGrams", use.inDistillatesGrams());
        json.number("inLayersGrams", use.inLayersGrams());
        json.number("onCakesGrams", use.onCakesGrams());
        json.number("inLotsGrams", use.inLotsGrams());
        json.number("notFoundGrams", use.notFoundGrams());
        json.number("densityGramsPerMillilitre", use.densityGramsPerMillilitre());
        json.count("missingAmounts", use.missingAmounts());
    }
}
