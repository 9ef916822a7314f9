package workuptally.tally.amounts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import workuptally.measure.MeasuredValue;
import workuptally.measure.Readings;
import workuptally.measure.StandardUncertainty;
import workuptally.model.Assay;
import workuptally.model.Assay.Unit;
import workuptally.model.Field.Entered;
import workuptally.model.Field.Qualifier;
import workuptally.model.Limits;
import workuptally.model.Run;
import workuptally.model.SubstanceName;

/**
 * What layers and lots hold by their assays.
 *
 * <p>A non-detect at the limit L counts in a balance as L/2 with u = L/(2√3) (a rectangular distribution between 0 and L) and as L
 * where a bound is asked for, with the one-sided reach of the volume or mass that it is in: common practice. The bound of a measured content is m
 * with its one-sided 95 % reach (JCGM 100:2008, G.3: the normal quantile, or that of Student where few repeats stand behind u). Assays that share a calibration share its uncertainty.
 */
public final class ContentsAccount {
    private final Run run;
    private final Readings readings;
    private final Calibrations calibrations;
    private final MolarMassAccount molarMasses;
    private final FormAccount forms;
    private final MethodSight sight;
    private final AssayResults results;
    private final PooledReadings pooled;
    private final Omissions omissions;

    public ContentsAccount(
            Run run,
            Readings readings,
            Limits limits,
            Calibrations calibrations,
            MolarMassAccount molarMasses,
            Omissions omissions) {
        this.run = run;
        this.readings = readings;
        this.calibrations = calibrations;
        this.molarMasses = molarMasses;
        this.forms = new FormAccount(run, molarMasses);
        this.sight = new MethodSight(run, molarMasses.substances());
        this.results = new AssayResults(limits, molarMasses.substances());
        this.pooled = new PooledReadings(molarMasses.substances());
        this.omissions = omissions;
    }

    /**
     * Contents of a sample by its assays, one for each substance; rows about one substance are pooled, and those about another form of a
     * product count as the form isolated. Mole ratios need
     * {@code productMillimoles}.
     *
     * @param label label of the layer or lot
     * @param massGrams its mass, if known
     * @param volumeMillilitres its volume, if known
     * @param productMillimoles product it holds, for mole ratios
     */
    public List<Content> of(
            String label,
            Optional<MeasuredValue> massGrams,
            Optional<MeasuredValue> volumeMillilitres,
            Optional<MeasuredValue> productMillimoles) {
        Map<String, List<Content>> rows = new LinkedHashMap<>();
        Map<String, List<Content>> residues = new LinkedHashMap<>();
        for (Assay assay : run.assays()) {
            if (assay.sample().equals(label)) {
                boolean dried = assay.method()
                        .filter(m -> m == Assay.Method.DRY_RESIDUE)
                        .isPresent();
                of(assay, massGrams, volumeMillilitres, productMillimoles)
                        .flatMap(this::counted)
                        .ifPresent(content -> (dried ? residues : rows)
                                .computeIfAbsent(SubstanceName.key(content.substance()), k -> new ArrayList<>())
                                .add(content));
            }
        }
        residues.forEach((substance, dried) -> rows.merge(substance, dried, ContentsAccount::beside));
        return rows.values().stream()
                .map(pooled::of)
                .map(content -> gainsaid(content, label, massGrams, volumeMillilitres, productMillimoles))
                .toList();
    }

    /** A method that does not count for a layer counts against it where it finds clearly more than the ones that do. */
    private Content gainsaid(
            Content counted,
            String label,
            Optional<MeasuredValue> massGrams,
            Optional<MeasuredValue> volumeMillilitres,
            Optional<MeasuredValue> productMillimoles) {
        Content content = counted;
        for (Assay assay : run.assays()) {
            boolean found = assay.result()
                    .entered()
                    .filter(r -> r.value() > 0 && r.qualifier() != Qualifier.BELOW && r.qualifier() != Qualifier.ABOVE)
                    .isPresent();
            if (assay.sample().equals(label)
                    && assay.isOf(counted.substance())
                    && found
                    && !results.counts(assay)
                    && assay.unit().filter(u -> u != Unit.AREA_PERCENT).isPresent()) {
                Optional<Content> shown =
                        figure(assay, assay.unit().orElseThrow(), massGrams, volumeMillilitres, productMillimoles);
                if (shown.isPresent()) {
                    content = pooled.gainsaid(content, shown.get());
                }
            }
        }
        return content;
    }

    /** A dry residue holds all that stays behind: beside an assay of one substance it says more only where it is the smaller of the two. */
    private static List<Content> beside(List<Content> assays, List<Content> residues) {
        double most = assays.stream()
                .flatMap(c -> c.massGrams().stream())
                .mapToDouble(MeasuredValue::value)
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        List<Content> all = new ArrayList<>(assays);
        residues.stream()
                .filter(r -> r.massGrams().filter(m -> m.value() < most).isPresent())
                .forEach(all::add);
        return all;
    }

    private Optional<Content> counted(Content content) {
        Optional<Content> counted = forms.counted(content);
        if (counted.isEmpty()) {
            omissions.add(
                    content.substance() + " as " + run.countsAs(content.substance()),
                    "a molar mass is not known",
                    "Formula of both forms in Products");
        }
        return counted;
    }

    private Optional<Content> of(
            Assay assay,
            Optional<MeasuredValue> massGrams,
            Optional<MeasuredValue> volumeMillilitres,
            Optional<MeasuredValue> productMillimoles) {
        String what = assay.substance() + " in " + assay.sample();
        boolean byResidue = AssayResults.residueStrength(assay).isPresent();
        if (assay.unit().isEmpty() && !byResidue) {
            omissions.add(what, "the unit of the assay is missing or cannot be read", "Unit in Assays");
            return Optional.empty();
        }
        Unit unit = byResidue ? Unit.MILLIGRAMS_PER_MILLILITRE : assay.unit().orElseThrow();
        if (unit == Unit.AREA_PERCENT) {
            omissions.add(what, "area % is not an assay", "a calibrated result in Assays");
            return Optional.empty();
        }
        if (assay.method().isEmpty() && !byResidue) {
            // a method that counts only where the laboratory says so must not count by not being named
            omissions.add(
                    what,
                    "the method of the assay is not recorded, or not understood",
                    "Method in Assays, 'other' for one without a word");
            return Optional.empty();
        }
        Optional<String> blind = sight.whyNot(assay);
        if (blind.isPresent()) {
            omissions.add(what, blind.get(), MethodSight.remedy());
            return Optional.empty();
        }
        if (!results.counts(assay)) {
            omissions.add(
                    what,
                    assay.method().orElseThrow().word() + " is shown and does not count here",
                    "another assay, or '"
                            + AssayResults.mustCount(assay.method().get())
                                    .orElseThrow()
                                    .title()
                            + "' in Limits where the laboratory takes it for evidence");
            return Optional.empty();
        }
        return figure(assay, unit, massGrams, volumeMillilitres, productMillimoles);
    }

    private Optional<Content> figure(
            Assay assay,
            Unit unit,
            Optional<MeasuredValue> massGrams,
            Optional<MeasuredValue> volumeMillilitres,
            Optional<MeasuredValue> productMillimoles) {
        String what = assay.substance() + " in " + assay.sample();
        Optional<Entered> result = AssayResults.of(assay);
        if (result.isEmpty()) {
            omissions.add(what, "the result is missing or cannot be read", "Result in Assays");
            return Optional.empty();
        }
        if (result.get().qualifier() == Qualifier.ABOVE) {
            omissions.add(what, "a lower limit bounds nothing from above", "a result, or '<limit', in Assays");
            return Optional.empty();
        }
        OptionalDouble limit = results.nonDetectLimit(assay, result.get());
        if (result.get().value() <= 0 && result.get().qualifier() != Qualifier.NOT_DETECTED) {
            omissions.add(
                    what,
                    "0 is no result: what the method would have seen is not known",
                    "the limit as '<0.10' in Result, or 'n.d.' with the detection limit of the method in Limits");
            return Optional.empty();
        }
        if (result.get().qualifier() == Qualifier.NOT_DETECTED && limit.isEmpty()) {
            omissions.add(
                    what,
                    "not detected, but no detection limit is set for the method",
                    "Detection limit " + assay.method().map(Assay.Method::word).orElse("")
                            + " in Limits, or '<limit' as Result");
            return Optional.empty();
        }
        Optional<MeasuredValue> carrier = carrier(unit, massGrams, volumeMillilitres, productMillimoles, assay);
        if (carrier.isEmpty()) {
            omissions.add(what, carrierMissing(unit), "the layer's weighing or volume, or the molar mass");
            return Optional.empty();
        }
        MeasuredValue number = limit.isPresent()
                ? halfLimit(assay, limit.getAsDouble())
                : calibrations.result("assay of " + assay.substance() + " in " + assay.sample(), assay, result.get());
        MeasuredValue mass = carrier.get().times(number);
        double bound = limit.isPresent()
                ? carrier.get().times(limit.getAsDouble()).oneSidedUpperBound()
                : mass.oneSidedUpperBound();
        OptionalDouble molarMass = molarMasses.of(assay.substance());
        return Optional.of(new Content(
                assay.substance(),
                limit.isPresent() ? Content.Kind.BOUND : Content.Kind.MEASURED,
                Optional.of(mass),
                molarMass.isPresent() ? Optional.of(mass.over(molarMass.getAsDouble() / 1000)) : Optional.empty(),
                OptionalDouble.of(Math.max(bound, 0)),
                OptionalDouble.empty(),
                AssayResults.evidence(assay, result.get(), limit)));
    }

    /** What the result is multiplied with to give grams, per unit of the result. */
    private Optional<MeasuredValue> carrier(
            Unit unit,
            Optional<MeasuredValue> massGrams,
            Optional<MeasuredValue> volumeMillilitres,
            Optional<MeasuredValue> productMillimoles,
            Assay assay) {
        OptionalDouble molarMass = molarMasses.of(assay.substance());
        return switch (unit) {
            case MILLIGRAMS_PER_MILLILITRE -> volumeMillilitres.map(v -> v.times(0.001));
            // nothing weighs 0 g: a share of it bounds nothing
            case MASS_PERCENT -> massGrams.filter(m -> m.value() > 0).map(m -> m.times(0.01));
            case MOLES_PER_LITRE ->
                molarMass.isPresent()
                        ? volumeMillilitres.map(v -> v.times(molarMass.getAsDouble() / 1000))
                        : Optional.empty();
            case GRAMS -> Optional.of(readings.exact(1));
            case MILLIMOLES ->
                molarMass.isPresent() ? Optional.of(readings.exact(molarMass.getAsDouble() / 1000)) : Optional.empty();
            case MOLE_RATIO_TO_PRODUCT ->
                molarMass.isPresent()
                        ? productMillimoles.map(n -> n.times(molarMass.getAsDouble() / 1000))
                        : Optional.empty();
            case AREA_PERCENT -> Optional.empty();
        };
    }

    private static String carrierMissing(Unit unit) {
        return switch (unit) {
            case MILLIGRAMS_PER_MILLILITRE -> "the volume of the layer is not known";
            case MASS_PERCENT -> "the mass of the sample is not known";
            case MOLES_PER_LITRE -> "volume or molar mass is not known";
            case MOLE_RATIO_TO_PRODUCT -> "the product in the sample or the molar mass is not known";
            default -> "the molar mass is not known";
        };
    }

    private MeasuredValue halfLimit(Assay assay, double limit) {
        return readings.enter(
                "half the limit of " + assay.substance() + " in " + assay.sample(),
                assay.unit().map(Unit::word).orElse(""),
                limit / 2,
                StandardUncertainty.ofStep(limit),
                () -> assay.row().at("Result").inWords());
    }
}
