package workuptally.book.lists;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import workuptally.book.headings.OwnListHeader;

/** What is asked about a heading that could mean several things. */
final class HeadingQuestion {
    private HeadingQuestion() {}

    /**
     * The question.
     *
     * @param senses what the heading could mean
     */
    static OwnListLayout.OpenHeading of(
            OwnListReading reading, OwnListHeader.Heading heading, Collection<HeadingSense> senses) {
        List<String> could =
                senses.stream().map(HeadingSense::inWords).distinct().toList();
        Optional<OwnListHeader.Heading> between = reading.between(heading);
        if (between.isPresent()) {
            String known = reading.understood().containsKey(between.get()) ? "" : " and was not understood";
            return new OwnListLayout.OpenHeading(
                    heading.key(),
                    String.join(" or ", could) + ", or of '" + between.get().key() + "', which stands between" + known
                            + "?");
        }
        boolean lost = senses.stream().anyMatch(sense -> sense.subject().isEmpty());
        return new OwnListLayout.OpenHeading(
                heading.key(),
                String.join(" or ", could)
                        + (lost ? ", and whose?" : could.size() == 1 ? ", as another heading?" : "?"));
    }
}
