package workuptally.book.lists;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import workuptally.book.headings.OwnListFeed;
import workuptally.book.headings.OwnListHeader;
import workuptally.book.schema.Schema;
import workuptally.book.schema.SchemaColumn;
import workuptally.book.words.Unit;

/** Turns what the headings of a list mean into a layout: which tables it feeds, what it takes as constant, and what remains to be answered. */
final class OwnListProposal {
    private static final Set<String> LABELS =
            Set.of("id", "date", "chemist", "title", "series", "status", "conversion", "notes");

    private final OwnListReading reading;
    private final List<OwnListFeed> feeds = new ArrayList<>();
    private final Map<OwnListHeader.Heading, String> used = new LinkedHashMap<>();
    private final List<String> assumed = new ArrayList<>();
    private final List<OwnListLayout.OpenHeading> open = new ArrayList<>();
    private final Set<OwnListHeader.Heading> notUsed = new LinkedHashSet<>();

    OwnListProposal(OwnListReading reading) {
        this.reading = reading;
        reading.open().forEach((heading, senses) -> open.add(HeadingQuestion.of(reading, heading, senses)));
        notUsed.addAll(reading.unknown());
        reading.partnerForProduct()
                .ifPresent(kind -> assumed.add("the " + kind + " as the product, since nothing of it is charged"));
        runs();
        charges();
        products();
        reading.understood().keySet().stream()
                .filter(heading -> !used.containsKey(heading))
                .filter(heading -> open.stream().noneMatch(o -> o.heading().equals(heading.key())))
                .forEach(notUsed::add);
    }

    private void runs() {
        Map<String, OwnListHeader.Heading> own = new HashMap<>();
        reading.understood().forEach((heading, sense) -> {
            if (sense.subject().equals("run") && LABELS.contains(sense.quantity())) {
                own.put(sense.quantity(), heading);
            }
        });
        OwnListDraft draft = new OwnListDraft(Schema.RUNS, used);
        draft.take("Run", Optional.ofNullable(own.get("id")));
        if (!draft.has("Run")) {
            draft.constant("Run", "row " + OwnListFeed.ROW_NUMBER);
            assumed.add("no heading for the run's id was found: runs are named by their rows");
        }
        draft.take("Date", Optional.ofNullable(own.get("date")));
        draft.take("Chemist", Optional.ofNullable(own.get("chemist")));
        draft.take("Reaction", Optional.ofNullable(own.get("title")));
        draft.take("Series", Optional.ofNullable(own.get("series")));
        draft.take("Status", Optional.ofNullable(own.get("status")));
        draft.take("Conversion", Optional.ofNullable(own.get("conversion")));
        draft.take("Notes", Optional.ofNullable(own.get("notes")));
        feeds.add(draft.feed());
    }

    /** A heading of a mass, volume or amount whose unit neither it nor its cells tell is asked about, and not used. */
    private Optional<OwnListHeader.Heading> withUnit(OwnListColumns columns, String quantity) {
        Optional<OwnListHeader.Heading> heading = columns.of(quantity);
        if (heading.isPresent()
                && reading.lacksUnit(heading.get(), reading.understood().get(heading.get()))) {
            open.add(new OwnListLayout.OpenHeading(
                    heading.get().key(), quantity + " of the " + columns.name() + " in which unit?"));
            return Optional.empty();
        }
        return heading;
    }

    private void charges() {
        Collection<OwnListColumns> materials =
                OwnListColumns.bySubject(reading, OwnListReading.MATERIALS).values();
        boolean named = materials.stream().anyMatch(columns -> columns.subject().equals("substrate"));
        // of the partners of one reaction the one that is not counted in equivalents of the other is the starting
        // material
        Optional<OwnListColumns> first = materials.stream()
                .filter(columns -> !named && OwnListReading.PARTNERS.contains(columns.subject()))
                .filter(OwnListColumns::isWeighed)
                .filter(columns -> columns.of("equivalents").isEmpty())
                .findFirst();
        first.ifPresent(columns -> assumed.add("the " + columns.name()
                + " as the starting material, from whose amount theory follows; exchange the roles if another limits"));
        materials.forEach(columns -> charge(columns, role(columns, first)));
        if (!named && first.isEmpty() && !materials.isEmpty()) {
            assumed.add("no starting material, since no heading says which it is: theory waits until one of Charges has"
                    + " \"Role\": \"= substrate\" and a Coefficient");
        }
    }

    private String role(OwnListColumns columns, Optional<OwnListColumns> first) {
        if (OwnListReading.PARTNERS.contains(columns.subject())) {
            return first.filter(columns::equals).isPresent() ? "substrate" : "reagent";
        }
        if (columns.subject().equals("substrate")
                && columns.number() > 1
                && columns.of("equivalents").isPresent()) {
            assumed.add("the " + columns.name() + " as a reagent, since it is given in equivalents of the first");
            return "reagent";
        }
        if (columns.subject().equals("solvent") && !columns.called().isEmpty()) {
            assumed.add(columns.called() + " as a solvent of the reaction, by its name");
        }
        return columns.subject();
    }

    private void charge(OwnListColumns columns, String role) {
        OwnListDraft draft = new OwnListDraft(Schema.CHARGES, used);
        name(draft, "Material", columns, columns.subject().equals("substrate") ? "starting material" : columns.name());
        draft.constant("Role", role);
        draft.take("Formula", columns.of("formula"));
        draft.take("Molar mass", columns.of("molar mass"));
        draft.take("Coefficient", columns.of("coefficient"));
        boolean substrate = role.equals("substrate");
        if (substrate && !draft.has("Coefficient")) {
            draft.constant("Coefficient", "1");
            assumed.add("coefficient 1 for the " + columns.name() + ", from which theory follows");
        }
        List<OwnListHeader.Heading> amounts = new ArrayList<>();
        withUnit(columns, "mass").ifPresent(amounts::add);
        withUnit(columns, "volume").ifPresent(amounts::add);
        Optional<OwnListHeader.Heading> millimoles = withUnit(columns, "amount");
        if (amounts.isEmpty()) {
            millimoles.ifPresent(amounts::add);
        } else {
            draft.take("Amount of substance", millimoles);
        }
        if (!substrate) {
            columns.of("equivalents").ifPresent(heading -> {
                if (reading.lacksUnit(heading, reading.understood().get(heading))) {
                    draft.constant("Actual unit", Unit.EQUIVALENT.symbol());
                }
                amounts.add(heading);
            });
        }
        if (draft.constants().containsKey(draft.column("Actual unit")) && amounts.size() > 1) {
            // a unit for all would contradict the mass: equivalents then stand beside it
            draft.constants().remove(draft.column("Actual unit"));
            draft.take("Equivalents", Optional.of(amounts.remove(amounts.size() - 1)));
        }
        draft.take("Actual amount", amounts);
        draft.take("Assay", columns.of("assay"));
        draft.take("Molarity", columns.of("molarity"));
        draft.take("Titre", columns.of("titre"));
        draft.take("Density", columns.of("density"));
        if (!draft.columns().isEmpty()) {
            feeds.add(draft.feed());
        }
    }

    /** The name of a material or product: its own heading, else its formula, else a word for all rows. */
    private void name(OwnListDraft draft, String form, OwnListColumns columns, String otherwise) {
        Optional<OwnListHeader.Heading> name = columns.of("name").or(() -> columns.of("formula"));
        if (name.isPresent()) {
            draft.take(form, name);
        } else {
            draft.constant(form, otherwise);
            if (!columns.called().isEmpty()) {
                return;
            }
            assumed.add("'" + otherwise + "' as its name, since the list has no heading for it");
        }
    }

    private void products() {
        Map<String, Map<String, OwnListColumns>> byNumber = new TreeMap<>();
        OwnListColumns.bySubject(reading, OwnListReading.PRODUCTS)
                .values()
                .forEach(columns -> byNumber.computeIfAbsent(
                                columns.number() + columns.called(), n -> new LinkedHashMap<>())
                        .put(columns.subject(), columns));
        byNumber.values().forEach(this::product);
    }

    private void product(Map<String, OwnListColumns> stages) {
        OwnListColumns first = stages.values().iterator().next();
        Map<String, OwnListHeader.Heading> all = new LinkedHashMap<>();
        stages.values().forEach(stage -> stage.byQuantity().forEach(all::putIfAbsent));
        OwnListColumns own =
                stages.getOrDefault("product", new OwnListColumns("product", first.number(), first.called(), all));
        OwnListColumns described = new OwnListColumns("product", first.number(), first.called(), all);
        OwnListDraft draft = new OwnListDraft(Schema.PRODUCTS, used);
        name(draft, "Product", described, own.name());
        draft.constant("Wanted", "yes");
        draft.take("Formula", described.of("formula"));
        draft.take("Molar mass", described.of("molar mass"));
        draft.take("Coefficient", described.of("coefficient"));
        feeds.add(draft.feed());
        OwnListColumns.giveYieldToWeight(stages);
        boolean crude = false;
        for (String stage : List.of("crude", "product", "purified")) {
            if (stages.containsKey(stage)) {
                crude |= lot(stages.get(stage), draft, stage, crude);
            }
        }
    }

    /** The yield as typed; where neither it nor its cells say % and nothing else is weighed, it may as well be a mass. */
    private Optional<OwnListHeader.Heading> statedYield(OwnListColumns columns) {
        Optional<OwnListHeader.Heading> heading = columns.of("yield");
        boolean weighed = columns.of("mass").isPresent() || columns.of("gross").isPresent();
        if (heading.isPresent()
                && !weighed
                && reading.lacksUnit(heading.get(), reading.understood().get(heading.get()))) {
            open.add(new OwnListLayout.OpenHeading(heading.get().key(), "a yield in %, or a mass in which unit?"));
            return Optional.empty();
        }
        return heading;
    }

    /** A weighed product; true if it is the crude one. */
    private boolean lot(OwnListColumns columns, OwnListDraft product, String stage, boolean afterCrude) {
        OwnListDraft draft = new OwnListDraft(Schema.ISOLATED, used);
        SchemaColumn name = product.column("Product");
        Optional.ofNullable(product.columns().get(name))
                .ifPresent(own -> draft.columns().put(draft.column("Product"), own));
        Optional.ofNullable(product.constants().get(name))
                .ifPresent(text -> draft.constants().put(draft.column("Product"), text));
        draft.take("Net", withUnit(columns, "mass"));
        draft.take("Gross", withUnit(columns, "gross"));
        draft.take("Tare", withUnit(columns, "tare"));
        draft.take("Stated yield", statedYield(columns));
        columns.of("assay").ifPresent(heading -> {
            if (reading.understood()
                    .get(heading)
                    .unit()
                    .filter(u -> u == Unit.MASS_PERCENT)
                    .isPresent()) {
                draft.take("Assay", List.of(heading));
            } else {
                open.add(
                        new OwnListLayout.OpenHeading(
                                heading.key(),
                                "content by mass (Isolated, Assay), or area % or a purity by eye, which is no content (not used)?"));
            }
        });
        if (draft.columns().keySet().stream().noneMatch(c -> Schema.WEIGHT_OR_YIELD.contains(c.heading()))) {
            return false;
        }
        String which = columns.called().equals(reading.nameOfProduct()) ? "" : " " + columns.called();
        String suffix = columns.number() > 1 ? which + " " + columns.number() : which;
        boolean crude = stage.equals("crude");
        draft.constant("Lot", (crude ? "crude" : "product") + suffix);
        draft.constant("Stage", crude ? "crude" : "purified");
        if (!crude && afterCrude) {
            draft.constant("From", "crude" + suffix);
        }
        if (stage.equals("product")) {
            boolean weighed = draft.has("Net") || draft.has("Gross");
            assumed.add("the " + (weighed ? "weight" : "yield") + " of the " + columns.name()
                    + " as that of the purified product; write \"= crude\" under" + " Stage if it is the crude one");
        }
        feeds.add(draft.feed());
        return crude;
    }

    /** The layout for sheets with these headings. */
    OwnListLayout layout(List<String> sheets) {
        return new OwnListLayout(
                sheets,
                reading.header().rowNumbers(),
                List.of(),
                feeds,
                notUsed.stream().map(OwnListHeader.Heading::key).toList(),
                open);
    }

    /** What each heading that is used feeds, in words, from left to right. */
    List<HeadingsProposal.Understood> understood() {
        List<HeadingsProposal.Understood> all = new ArrayList<>();
        reading.understood()
                .forEach((heading, sense) -> Optional.ofNullable(used.get(heading))
                        .ifPresent(target -> all.add(new HeadingsProposal.Understood(
                                heading.key(),
                                sense.inWords() + (reading.byPlace().contains(heading) ? ", by its place" : ""),
                                target))));
        return all;
    }

    /** What was taken for granted. */
    List<String> assumed() {
        return assumed;
    }

    /** Headings with a word that is not known. */
    List<String> notUnderstood() {
        return reading.unknown().stream().map(OwnListHeader.Heading::key).toList();
    }

    /** Headings that were understood and that no table takes. */
    List<String> withoutTable() {
        return notUsed.stream()
                .filter(heading -> !reading.unknown().contains(heading))
                .map(OwnListHeader.Heading::key)
                .toList();
    }
}
