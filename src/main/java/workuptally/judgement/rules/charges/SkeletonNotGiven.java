package workuptally.judgement.rules.charges;

import java.util.List;
import workuptally.judgement.rules.FindingList;
import workuptally.judgement.rules.RunRule;
import workuptally.model.Book;
import workuptally.model.Finding;
import workuptally.model.FindingCode;
import workuptally.model.Phrase;
import workuptally.model.Product;
import workuptally.model.Severity;
import workuptally.tally.RunTally;
import workuptally.tally.amounts.Skeletons;

/** A by-product without a skeleton that by its formula comes from a reagent: no balance counts it until the book says what it carries. */
public final class SkeletonNotGiven implements RunRule {

    @Override
    public List<FindingCode> codes() {
        return List.of(FindingCode.SKELETON_NOT_GIVEN);
    }

    @Override
    public List<Finding> judge(RunTally tally, Book book) {
        FindingList findings = new FindingList(tally.run().id());
        Skeletons skeletons = new Skeletons(tally.run(), tally.amounts());
        for (Product product : tally.run().products()) {
            if (skeletons.isOriginUnclear(product)) {
                findings.add(
                        FindingCode.SKELETON_NOT_GIVEN,
                        Severity.CHECK,
                        product.row().at("Skeleton"),
                        Phrase.of(
                                "{} has no skeleton, and by its formula ({}) it may come from a reagent; no balance counts it",
                                product.name(),
                                product.formula()),
                        Phrase.of("the charge that it carries, and how many units"),
                        FindingList.PRACTICE,
                        Phrase.of("Enter its Skeleton, such as the name of the charge and 1."));
            }
        }
        return findings.list();
    }
}
