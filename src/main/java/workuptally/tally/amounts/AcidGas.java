package workuptally.tally.amounts;

/**
 * A material of a run from which acid sets free a dangerous gas.
 *
 * @param material name as entered
 * @param consequence what happens, with the gas
 */
public record AcidGas(String material, String consequence) {}
