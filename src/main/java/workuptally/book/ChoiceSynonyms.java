package workuptally.book;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import workuptally.model.Assay;
import workuptally.model.Charge;
import workuptally.model.Layer;
import workuptally.model.Lot;
import workuptally.model.Run;
import workuptally.model.Step;

/** Other words of the bench for the choices of the form, such as rotavap for concentrate or starting material for substrate. */
final class ChoiceSynonyms {
    private final Map<Class<?>, Map<String, Enum<?>>> byWord = new HashMap<>();
    private final UnaryOperator<String> spelling;

    /**
     * All of them.
     *
     * @param spelling brings words to the form in which they are compared
     */
    ChoiceSynonyms(UnaryOperator<String> spelling) {
        this.spelling = spelling;
        operations();
        portions();
        add(Charge.Role.SUBSTRATE, "starting material", "SM", "educt", "limiting", "limiting reagent");
        add(Charge.Role.REAGENT, "reactant", "coupling agent", "oxidant", "reductant", "reducing agent");
        add(Charge.Role.REAGENT, "oxidising agent", "oxidizing agent", "nucleophile", "electrophile", "acid");
        add(Charge.Role.CATALYST, "cat.", "catalyst precursor");
        add(Charge.Role.ADDITIVE, "ligand", "other", "internal standard", "drying agent");
        add(Charge.Role.SOLVENT, "co solvent", "reaction solvent");
        add(Run.Status.ISOLATED, "done", "finished", "complete", "completed");
        add(Run.Status.FAILED, "given up", "abandoned");
        add(Run.Status.IN_WORKUP, "ongoing", "in progress", "running");
        add(Run.Status.PLANNED, "plan", "to do");
        add(Assay.Method.HPLC, "UPLC", "UHPLC", "LC", "LCMS", "HPLC-UV");
        add(Assay.Method.GC, "GC-FID", "GCMS");
        add(Assay.Method.NMR, "1H NMR", "H NMR", "1H-NMR");
        add(Assay.Method.KF, "Karl Fischer", "Karl Fischer titration");
        add(Assay.Method.LOD, "loss on drying");
    }

    /** The value that another word means. */
    <E extends Enum<E>> Optional<E> find(Class<E> choice, String text) {
        return Optional.ofNullable(byWord.getOrDefault(choice, Map.of()).get(spelling.apply(text)))
                .map(choice::cast);
    }

    private void operations() {
        add(Step.Operation.QUENCH, "quenching", "quenched");
        add(Step.Operation.DILUTE, "dilution", "diluted", "dissolve", "redissolve", "take up");
        add(Step.Operation.EXTRACT, "extraction", "extracted");
        add(Step.Operation.WASH, "washing", "washed");
        add(Step.Operation.BACK_EXTRACT, "back extraction", "re extract", "re extraction");
        add(Step.Operation.ACIDIFY, "acidified", "acidification");
        add(Step.Operation.BASIFY, "basified", "make basic");
        add(Step.Operation.COMBINE, "combined", "pool", "pooled");
        add(Step.Operation.DRY, "drying", "dried");
        add(Step.Operation.FILTER, "filtration", "filtered", "decant", "vacuum filter", "suction filter");
        add(Step.Operation.RINSE, "rinsed", "rinsing");
        add(Step.Operation.CONCENTRATE, "evaporate", "evaporation", "evaporated", "rotavap", "rotovap");
        add(Step.Operation.CONCENTRATE, "rotary evaporation", "concentrated", "concentrate in vacuo");
        add(Step.Operation.DISTIL, "distillation", "distilled", "vacuum distillation", "Kugelrohr");
        add(Step.Operation.CRYSTALLISE, "crystallisation", "crystallization", "recrystallise", "recryst.");
        add(Step.Operation.CRYSTALLISE, "recrystallisation", "recrystallization", "triturate", "trituration");
        add(Step.Operation.SAMPLE, "aliquot", "sampling");
        add(Step.Operation.CHROMATOGRAPH, "chromatography", "column", "column chromatography", "flash");
        add(Step.Operation.CHROMATOGRAPH, "flash column", "flash chromatography", "prep HPLC", "prep TLC");
        add(Step.Operation.DRY_SOLID, "dry in vacuo", "vacuum dry", "vacuum drying", "oven dry", "dry product");
        add(Step.QuenchTest.NEGATIVE, "neg.");
        add(Step.QuenchTest.POSITIVE, "pos.");
        add(Step.Lower.ORGANIC, "org.");
        add(Step.Lower.AQUEOUS, "aq.", "water");
        add(Step.Emulsion.NONE, "no");
        add(Step.Emulsion.SLIGHT, "some", "little");
        add(Step.Emulsion.PERSISTENT, "bad", "severe", "stable");
    }

    private void portions() {
        add(Layer.Phase.ORGANIC, "org.", "organic layer", "organic phase", "fraction", "eluate");
        add(Layer.Phase.AQUEOUS, "aq.", "aqueous layer", "aqueous phase", "water");
        add(Layer.Phase.SOLID, "cake", "filter cake", "drying cake");
        add(Layer.Phase.RAG, "rag layer", "emulsion", "interphase");
        add(Layer.Phase.DISTILLATE, "condensate");
        add(Layer.Phase.MOTHER_LIQUOR, "liquor", "ML", "mother liquors");
        add(Layer.Position.UPPER, "top");
        add(Layer.Position.LOWER, "bottom");
        add(Layer.Status.KEPT, "keep", "stored", "retained");
        add(Layer.Status.LOST, "spilled", "spilt");
        add(Lot.Stage.CRUDE, "crude product", "raw", "wet", "wet cake");
        add(Lot.Stage.CROP, "first crop", "second crop", "third crop", "1st crop", "2nd crop", "3rd crop");
        add(Lot.Stage.CROP, "crop 1", "crop 2", "crop 3");
        add(Lot.Stage.PURIFIED, "pure", "recrystallised", "distilled", "chromatographed", "sublimed", "final");
        add(Lot.Stage.PURIFIED, "recrystallized", "triturated", "column");
    }

    private void add(Enum<?> value, String... words) {
        Map<String, Enum<?>> ofChoice = byWord.computeIfAbsent(value.getDeclaringClass(), c -> new HashMap<>());
        for (String word : List.of(words)) {
            ofChoice.put(spelling.apply(word), value);
        }
    }
}
