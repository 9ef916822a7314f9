package workuptally.reference.substances;

import java.util.List;
import java.util.Map;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.NamedTable;
import workuptally.reference.tables.TableFile;

/**
 * The tables of what is charged, made or met, and of the words for it.
 *
 * @param atomicWeights atomic weights, in order of atomic number
 * @param solvents solvents
 * @param liquids liquid reagents and products
 * @param nameWords words that stand around names of materials
 * @param nameClasses words in a name that tell a class
 * @param dryingAgents drying agents
 * @param oxidants oxidants
 * @param materials materials
 * @param metals metals that are collected apart
 * @param classBehaviours what becomes of materials in a workup, by their class
 * @param saltForms words for the forms of a product
 * @param addedForms what forms of a substance hold beyond one another
 */
public record SubstanceTables(
        List<AtomicWeightRow> atomicWeights,
        List<Solvent> solvents,
        List<Liquid> liquids,
        List<NameWord> nameWords,
        List<NameClass> nameClasses,
        List<DryingAgent> dryingAgents,
        List<Oxidant> oxidants,
        List<MaterialRow> materials,
        List<Metal> metals,
        NamedTable<ClassBehaviour> classBehaviours,
        List<SaltForm> saltForms,
        List<AddedForm> addedForms) {

    /**
     * Reads them.
     *
     * @throws IllegalReferenceException if a value is malformed or out of range
     */
    public static SubstanceTables of(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        return new SubstanceTables(
                files.get(KnownTable.ATOMIC_WEIGHTS).each(AtomicWeightRow::of),
                files.get(KnownTable.SOLVENTS).each(Solvent::of),
                files.get(KnownTable.LIQUIDS).each(Liquid::of),
                files.get(KnownTable.NAME_WORDS).each(NameWord::of),
                files.get(KnownTable.NAME_CLASSES).each(NameClass::of),
                files.get(KnownTable.DRYING_AGENTS).each(DryingAgent::of),
                files.get(KnownTable.OXIDANTS).each(Oxidant::of),
                files.get(KnownTable.MATERIALS).each(MaterialRow::of),
                files.get(KnownTable.METALS).each(Metal::of),
                NamedTable.keyed(
                        files.get(KnownTable.CLASS_BEHAVIOURS).each(ClassBehaviour::of), ClassBehaviour::materialClass),
                files.get(KnownTable.SALT_FORMS).each(SaltForm::of),
                files.get(KnownTable.FORM_DIFFERENCES).each(AddedForm::of));
    }
}
