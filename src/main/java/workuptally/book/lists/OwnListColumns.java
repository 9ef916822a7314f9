package workuptally.book.lists;

import java.util.Map;
import java.util.Optional;
import workuptally.book.headings.OwnListHeader;

/** The headings about one thing: by quantity. */
record OwnListColumns(String subject, int number, String called, Map<String, OwnListHeader.Heading> byQuantity) {
    Optional<OwnListHeader.Heading> of(String quantity) {
        return Optional.ofNullable(byQuantity.get(quantity));
    }

    boolean isWeighed() {
        return byQuantity.containsKey("mass") || byQuantity.containsKey("volume") || byQuantity.containsKey("amount");
    }

    String name() {
        if (!called.isEmpty()) {
            return called;
        }
        return number > 1 ? subject + " " + number : subject;
    }
}
