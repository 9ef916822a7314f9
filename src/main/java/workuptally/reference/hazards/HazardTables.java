package workuptally.reference.hazards;

import java.util.List;
import java.util.Map;
import workuptally.reference.tables.IllegalReferenceException;
import workuptally.reference.tables.KnownTable;
import workuptally.reference.tables.NamedTable;
import workuptally.reference.tables.TableFile;

/**
 * The tables of hazards, of statements and strengths, and of what happens where materials meet.
 *
 * @param hazards materials with hazards listed
 * @param concentrationLimits strengths at which solutions of a material carry its statements, by the key of its hazards
 * @param flashPoints flash points of mixtures of a solvent with water, by the key of its hazards
 * @param hStatements hazard statements, by their code
 * @param reactivity classes of materials and what happens where they meet
 */
public record HazardTables(
        List<Hazard> hazards,
        NamedTable<ConcentrationLimit> concentrationLimits,
        NamedTable<FlashPoint> flashPoints,
        NamedTable<HStatement> hStatements,
        Reactivity reactivity) {

    /**
     * Reads them.
     *
     * @throws IllegalReferenceException if a value is malformed or out of range, or a pair names a class that is not listed
     */
    public static HazardTables of(Map<KnownTable, TableFile> files) throws IllegalReferenceException {
        return new HazardTables(
                files.get(KnownTable.HAZARDS).each(Hazard::of),
                NamedTable.keyed(
                        files.get(KnownTable.CONCENTRATION_LIMITS).each(ConcentrationLimit::of),
                        ConcentrationLimit::hazard),
                NamedTable.keyed(FlashPoint.byStrength(files.get(KnownTable.FLASH_POINTS)), FlashPoint::hazard),
                NamedTable.keyed(files.get(KnownTable.H_STATEMENTS).each(HStatement::of), HStatement::code),
                new Reactivity(
                        files.get(KnownTable.REACTIVITY_GROUPS).each(ReactivityGroup::of),
                        files.get(KnownTable.REACTIVITY_PAIRS).each(ReactivityPair::of),
                        files.get(KnownTable.REACTIVITY_STRENGTHS).each(ReactivityStrength::of)));
    }
}
