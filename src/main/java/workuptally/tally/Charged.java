package workuptally.tally;

import java.util.List;
import java.util.Optional;
import workuptally.measure.Readings;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.ChargeAmountAccount;
import workuptally.tally.amounts.MolarMassAccount;
import workuptally.tally.amounts.Omissions;
import workuptally.tally.amounts.Skeletons;
import workuptally.tally.amounts.Substances;
import workuptally.tally.amounts.Theory;
import workuptally.tally.amounts.TheoryAccount;

/**
 * What was put into a run.
 *
 * @param amounts charges as amounts, in order of the table
 * @param theory what the limiting reagent allows, beside what the planned amounts would have allowed
 * @param skeletons the units of each partner
 */
record Charged(List<ChargeAmount> amounts, Optional<Theory> theory, Skeletons skeletons) {
    /** Reads the charges of a run; what could not be computed goes to the omissions. */
    static Charged of(
            Run run,
            Readings readings,
            Limits limits,
            MolarMassAccount molarMasses,
            Substances substances,
            Omissions omissions) {
        List<ChargeAmount> amounts =
                new ChargeAmountAccount(readings, limits, molarMasses, substances, omissions).of(run);
        Optional<Theory> theory = new TheoryAccount(readings, molarMasses, substances, omissions).of(run, amounts);
        Optional<Theory> both = theory.map(t -> planned(run, limits, molarMasses, substances)
                .map(t::withPlanned)
                .orElse(t));
        return new Charged(amounts, both, new Skeletons(run, amounts));
    }

    /** By the planned amounts; what is missing there is nothing the results lack, so that its omissions are not told. */
    private static Optional<Theory> planned(
            Run run, Limits limits, MolarMassAccount molarMasses, Substances substances) {
        if (run.charges().stream().allMatch(c -> c.quantity().planned().isEmpty())) {
            return Optional.empty();
        }
        Readings apart = new Readings();
        Omissions unsaid = new Omissions();
        return new TheoryAccount(apart, molarMasses, substances, unsaid)
                .of(run, new ChargeAmountAccount(apart, limits, molarMasses, substances, unsaid).planned(run));
    }
}
