package workuptally.book.lists;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import workuptally.book.headings.OwnListHeader;

/** The headings about one thing: by quantity. */
record OwnListColumns(String subject, int number, String called, Map<String, OwnListHeader.Heading> byQuantity) {
    /** What the headings understood say of some subjects: one entry for each thing, from left to right. */
    static Map<String, OwnListColumns> bySubject(OwnListReading reading, Set<String> subjects) {
        Map<String, OwnListColumns> all = new LinkedHashMap<>();
        String productName = subjects == OwnListReading.PRODUCTS ? reading.nameOfProduct() : "";
        reading.understood().forEach((heading, sense) -> {
            if (subjects.contains(sense.subject())) {
                String quantity = sense.quantity().isEmpty() ? "name" : sense.quantity();
                String called = sense.called().isEmpty() ? productName : sense.called();
                all.computeIfAbsent(
                                sense.subject() + sense.number() + called,
                                s -> new OwnListColumns(sense.subject(), sense.number(), called, new LinkedHashMap<>()))
                        .byQuantity()
                        .putIfAbsent(quantity, heading);
            }
        });
        return all;
    }

    /** A yield beside weighed crude or purified product is that of the last one weighed. */
    static void giveYieldToWeight(Map<String, OwnListColumns> stages) {
        OwnListColumns own = stages.get("product");
        if (own == null || own.of("mass").isPresent() || own.of("gross").isPresent()) {
            return;
        }
        Optional.ofNullable(stages.getOrDefault("purified", stages.get("crude")))
                .filter(last -> last.of("yield").isEmpty())
                .ifPresent(last -> Optional.ofNullable(own.byQuantity().remove("yield"))
                        .ifPresent(heading -> last.byQuantity().put("yield", heading)));
    }

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
