package workuptally.judgement.rules.charges;

import java.util.List;
import java.util.Optional;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Charge;
import workuptally.model.Field.Entered;
import workuptally.model.Figure;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Limit;
import workuptally.model.Phrase;
import workuptally.model.Severity;
import workuptally.reference.bench.Threshold;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.ChargeAmount;
import workuptally.tally.amounts.Substances;

/** A titre away from the label (note, above 15 % check), and an air-sensitive reagent used by its label alone (note). */
public final class TitreDiffers implements RunRule {

    /** A titre at the limit to the last digit is within it, whatever binary fractions make of it. */
    private static final double ROUNDING_PERCENT = 1e-9;

    private final Substances substances;

    /** With the reference data in force. */
    public TitreDiffers(Substances substances) {
        this.substances = substances;
    }

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.TITRE_DIFFERS, FindingCode.TITRE_MISSING);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        double notePercent = book.limits().value(Limit.TITRE_BELOW_LABEL);
        for (ChargeAmount amount : tally.amounts()) {
            Charge charge = amount.charge();
            Optional<Entered> label =
                    charge.goods().molarityMolesPerLitre().entered().filter(e -> e.value() > 0);
            Optional<Entered> titre = charge.goods().titreMolesPerLitre().entered();
            if (label.isPresent() && titre.isPresent()) {
                differs(findings, amount, label.get(), titre.get(), notePercent);
            } else if (label.isPresent() && AirSensitive.is(substances.material(charge.material(), charge.formula()))) {
                findings.add(
                        FindingCode.TITRE_MISSING,
                        Severity.NOTE,
                        charge.row().at("Titre"),
                        Phrase.of(
                                "the amount of {} rests on the label, {} mol/L",
                                charge.material(),
                                label.get().asTyped()),
                        Phrase.of("a titre; solutions of air-sensitive reagents lose strength"),
                        FindingList.PRACTICE,
                        Phrase.of("Titrate before the next use and enter titre and date."));
            }
        }
        return findings.list();
    }

    private void differs(FindingList findings, ChargeAmount amount, Entered label, Entered titre, double notePercent) {
        double percent = 100 * (titre.value() / label.value() - 1);
        if (Math.abs(percent) <= notePercent + ROUNDING_PERCENT) {
            return;
        }
        Phrase amounts = amount.amountMillimoles().isPresent()
                        && amount.labelAmountMillimoles().isPresent()
                ? Phrase.of(
                        "; {} by the titre, {} by the label",
                        Figure.decimals(amount.amountMillimoles().get().value(), 2, "mmol"),
                        Figure.decimals(amount.labelAmountMillimoles().getAsDouble(), 2, "mmol"))
                : Phrase.NONE;
        findings.add(
                FindingCode.TITRE_DIFFERS,
                Math.abs(percent) > substances.value(Threshold.TITRE_CHECK) ? Severity.CHECK : Severity.NOTE,
                titre.place(),
                Phrase.of(
                        "titre of {} {} mol/L, label {} mol/L: {}{}",
                        amount.charge().material(),
                        titre.asTyped(),
                        label.asTyped(),
                        Figure.signed(percent, 1, "%"),
                        amounts),
                Phrase.of("within {} of the label", Figure.brief(notePercent, "%")),
                "limit 'Titre below label'; check above 15 %, common practice",
                Phrase.of(
                        "The titre is used. Repeat the titration if the difference surprises, and see that the reagent still"
                                + " suffices."));
    }
}
