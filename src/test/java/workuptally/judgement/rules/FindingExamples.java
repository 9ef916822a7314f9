package workuptally.judgement.rules;

import java.util.LinkedHashMap;
import java.util.Map;
import workuptally.model.Severity;

/** One invented book for each finding that a rule can raise, differing from the clean book in what the finding is about. */
final class FindingExamples {
    private final Map<String, Example> examples = new LinkedHashMap<>();

    record Example(String code, Severity severity, ExampleBook book) {
        @Override
        public String toString() {
            return code;
        }
    }

    private FindingExamples() {
        charges();
        steps();
        layers();
        weighings();
        assays();
        results();
        reactions();
        heldLayers();
        containers();
        proposals();
    }

    /** Every example by its code. */
    static Map<String, Example> all() {
        return new FindingExamples().examples;
    }

    private void add(String code, Severity severity, ExampleBook book) {
        examples.put(code, new Example(code, severity, book));
    }

    private static ExampleBook clean() {
        return ExampleBook.clean();
    }

    private void charges() {
        add("molar-mass-mismatch", Severity.STOP, clean().with("charges", "C6H7N,93.13", "C6H8ClN,93.13"));
        add("formula-doubtful", Severity.CHECK, clean().with("charges", "C6H7N,93.13", "C6H70,93.13"));
        add("molar-mass-rounded", Severity.NOTE, clean().with("charges", "C6H7N,93.13", "C6H7N,93.3"));
        add(
                "charge-form-mismatch",
                Severity.CHECK,
                clean().plus("charges", "X1,lysine hydrochloride,additive,C6H14N2O2,,,,,0.5,g,99,,,,"));
        add(
                "product-form-mismatch",
                Severity.STOP,
                clean().with("isolated", "melting point,,", "melting point,,isolated as the hydrochloride"));
        // a base by its character, acid added to its solution in ethyl acetate, and nothing after that sets it free
        add(
                "isolated-form-open",
                Severity.HOLD,
                clean().with("products", "neutral,,,304", "base,9.0,,304")
                        .with("workup", "X1,5,rinse,O4,ethyl acetate", "X1,5,acidify,O4,ethyl acetate"));
        add(
                "below-one-equivalent",
                Severity.CHECK,
                clean().with("charges", "C4H6O3,102.09,1,6.0,g,6.012", "C4H6O3,102.09,,4.0,g,4.012"));
        add(
                "stated-amount-differs",
                Severity.CHECK,
                clean().with("charges", "Supplier lot", "Supplier lot,Amount of substance (mmol)")
                        .with("charges", "4.661,g,99.5,,,,", "4.661,g,99.5,,,,,60"));
        add(
                "stated-yield-differs",
                Severity.CHECK,
                clean().with("isolated", "Second weighing (g),Notes", "Second weighing (g),Stated yield (%),Notes")
                        .with("isolated", "melting point,,", "melting point,,50,"));
        add("density-missing", Severity.CHECK, clean().plus("charges", "X1,an oil,additive,,,,,,2,mL,,,,,"));
        add("step-material-unknown", Severity.CHECK, clean().with("workup", "water,1,30,,,0.998", "an eluent,1,30,,,"));
        add(
                "material-unlisted",
                Severity.CHECK,
                clean().plus("charges", "X1,unobtainium dust,additive,,,,,,0.5,g,99,,,,"));
        add(
                "concentrated-with-care",
                Severity.CHECK,
                clean().plus("charges", "X1,diisopropyl ether,solvent,,,,,,10,mL,,,,,"));
        add("material-ambiguous", Severity.CHECK, clean().plus("charges", "X1,EDC,additive,,,,,,0.5,g,99,,,,"));
        add("assay-sample-unknown", Severity.CHECK, clean().plus("assays", "X1,A9,acetanilide,,HPLC,0.20,mg/mL,2.0,"));
        add(
                "assay-substance-unknown",
                Severity.CHECK,
                clean().plus("assays", "X1,A1,acetanilid,,HPLC,0.20,mg/mL,2.0,"));
        add("density-unlikely", Severity.CHECK, clean().with("charges", "60,mL,,,,0.902", "60,mL,,,,1.0"));
        add("mass-equals-volume", Severity.CHECK, clean().plus("charges", "X1,an oil,additive,,,,2.5,mL,2.5,g,,,,,"));
        add(
                "charge-assay-forgotten",
                Severity.CHECK,
                clean().plus("charges", "X1,\"potassium hydroxide, pellets\",base,KOH,56.11,,,,0.1,g,,,,,"));
        add(
                "titre-differs",
                Severity.NOTE,
                clean().plus("charges", "X1,1 M HCl,additive,HCl,36.46,,,,1,mL,,1.00,0.92,1.016,"));
        add(
                "titre-missing",
                Severity.NOTE,
                clean().plus("charges", "X1,n-BuLi in hexanes,base,C4H9Li,64.06,,,,1,mL,,2.5,,0.69,"));
        add("limiting-ambiguous", Severity.CHECK, clean().with("charges", "6.012", "ca. 5.22"));
        add("limiting-not-substrate", Severity.CHECK, clean().with("charges", "6.012", "5.000"));
        add(
                "skeleton-not-given",
                Severity.CHECK,
                clean().plus("charges", "X1,triphenylphosphine,reagent,C18H15P,262.29,,,,0.5,g,99,,,,")
                        .plus("products", "X1,triphenylphosphine oxide,no,C18H15OP,278.29,,,neutral,,,"));
        add(
                "coefficient-suspect",
                Severity.CHECK,
                clean().with("products", "135.17,1,aniline 1", "135.17,2,aniline 1"));
        add("resolution-above-half", Severity.STOP, clean().with("runs", "reaction,S-1", "resolution,S-1"));
        add(
                "resolution-halved-twice",
                Severity.CHECK,
                clean().with("runs", "reaction,S-1", "resolution,S-1").with("products", "135.17,1,", "135.17,0.5,"));
        add(
                "conversion-below-yield",
                Severity.CHECK,
                clean().table(
                                "runs",
                                "Run,Date,Chemist,Reaction,Kind,Series,Status,Conversion (%)\n"
                                        + "X1,2026-03-02,C1,acetylation of aniline,reaction,S-1,isolated,60\n"));
        add(
                "content-against-ph",
                Severity.CHECK,
                clean().with("products", "neutral,,,304", "acid,4.2,,304")
                        .with("workup", "0.998,250,1,,,", "0.998,250,1,9,,")
                        .plus("layers", "X1,O1,organic,upper,E-09,66,,,,,consumed")
                        .plus("assays", "X1,O1,acetanilide,,HPLC,50,mg/mL,2.0,"));
        add(
                "wash-takes-product",
                Severity.CHECK,
                planned()
                        .with("products", "neutral,,,304", "acid,4.2,,304")
                        .with("workup", "water,1,30,,,0.998", "1 M NaOH,1,30,,,1.04"));
        add(
                "portion-held-more",
                Severity.CHECK,
                clean().plus("layers", "X1,O1,organic,upper,E-09,66,,,,,consumed")
                        .plus("assays", "X1,O1,acetanilide,,HPLC,62.3,mg/mL,2.0,"));
        add("layer-lost", Severity.CHECK, clean().with("layers", "85.02,60.26,,,kept", "85.02,60.26,,,lost"));
        add(
                "charge-twice",
                Severity.CHECK,
                clean().plus("charges", "X1,acetone,additive,,,,,,0.5,g,99,,,,")
                        .plus("charges", "X1,acetone,additive,,,,,,0.5,g,99,,,,"));
        add("amount-far-from-plan", Severity.CHECK, clean().with("charges", "1,4.66,g", "1,2.33,g"));
        add(
                "reagent-in-large-excess",
                Severity.CHECK,
                clean().plus("charges", "X1,a reagent,reagent,,10,1,,,50,g,,,,,"));
        add("unit-slip", Severity.CHECK, clean().with("charges", "1,4.66,g", "1,4.66,mg"));
        add(
                "plan-copied",
                Severity.NOTE,
                clean().with("charges", "4.66,g,4.661,g", "4.661,g,4.661,g")
                        .with("charges", "6.0,g", "6.012,g")
                        .plus("charges", "X1,sodium acetate,additive,C2H3NaO2,82.03,,1.234,g,1.234,g,99,,,,"));
        add(
                "recovered-solvent-as-pure",
                Severity.CHECK,
                clean().with("charges", "60,mL,,,,0.902,", "60,mL,,,,0.902,recovered in February"));
        add("solvent-amount-missing", Severity.CHECK, clean().with("charges", "60,mL,,,,0.902,", ",,,,,0.902,"));
    }

    private void steps() {
        add("layer-unknown-source", Severity.CHECK, clean().with("workup", "X1,3,dry,O2", "X1,3,dry,O7"));
        add("layer-taken-before-given", Severity.CHECK, clean().with("workup", "X1,2,wash,O1", "X1,2,wash,O3"));
        add("layer-taken-after-consumed", Severity.CHECK, clean().with("workup", "X1,3,dry,O2", "X1,3,dry,O1"));
        add("layer-given-twice", Severity.CHECK, clean().with("workup", "O2,A2,", "O2,A1,"));
        add("layer-never-given", Severity.CHECK, clean().plus("layers", "X1,A9,aqueous,,E-09,5,45.11,40.01,,,kept"));
        add("layer-said-consumed", Severity.CHECK, clean().with("layers", "60.26,,,kept", "60.26,,,consumed"));
        add(
                "layer-said-kept",
                Severity.STOP,
                clean().plus("layers", "X1,O1,organic,upper,E-03,66,100.10,40.07,,,kept"));
        add(
                "layer-cycle",
                Severity.STOP,
                clean().plus("workup", "X1,7,combine,A1,,,,,,,,,,,,,,,B1,")
                        .plus("workup", "X1,8,combine,B1,,,,,,,,,,,,,,,A1,"));
        add("step-amount-missing", Severity.HOLD, planned().with("workup", "wash,O1,brine,1,20,", "wash,O1,brine,1,,"));
        add("funnel-overfull", Severity.STOP, planned().with("workup", "0.998,250", "0.998,50"));
        add(
                "loads-not-recorded",
                Severity.CHECK,
                clean().with(
                                "workup",
                                "250,1,,,aqueous,density,none,O1,A1,",
                                "250,3,,,aqueous,density,none,O1,A1+A1b,"));
        add(
                "quench-not-shown",
                Severity.HOLD,
                clean().plus("charges", "X1,sodium borohydride,reagent,NaBH4,37.83,,,,0.1,g,98,,,,"));
        add(
                "quench-not-entered",
                Severity.HOLD,
                clean().plus("charges", "X1,sodium borohydride,reagent,NaBH4,37.83,,,,0.1,g,98,,,,")
                        .table("workup", "Run,Step,Operation\n")
                        .table("layers", "Run,Layer,Phase\n")
                        .table("assays", "Run,Sample,Substance,Result,Unit\n"));
        add(
                "quench-test-positive",
                Severity.STOP,
                clean().plus("charges", "X1,sodium borohydride,reagent,NaBH4,37.83,,,,0.1,g,98,,,,")
                        .with("workup", "250,1,,,aqueous,density,none,O1", "250,1,,positive,aqueous,density,none,O1"));
        add(
                "water-miscible-solvent",
                Severity.CHECK,
                clean().plus("charges", "X1,ethanol,solvent,C2H6O,,,,,40,mL,,,,0.789,")
                        .with("assays", "X1,A1,acetanilide,,HPLC,1.51,mg/mL,2.0,\n", ""));
        add(
                "pka-shifted",
                Severity.NOTE,
                clean().plus("charges", "X1,ethanol,solvent,C2H6O,,,,,40,mL,,,,0.789,")
                        .with("products", "neutral,,,304", "acid,4.2,60,304")
                        .with("workup", "0.998,250,1,,", "0.998,250,1,4.5,"));
        add("drying-agent-short", Severity.CHECK, clean().with("workup", ",,6.0,,", ",,2.0,,"));
        add(
                "mass-volume-density",
                Severity.CHECK,
                clean().with("workup", "water,1,30,,,0.998", "water,1,30,29.94,,1.10"));
        add("product-volatile", Severity.CHECK, clean().with("products", "304", "110"));
    }

    private void layers() {
        add(
                "layers-swapped",
                Severity.STOP,
                clean().with("charges", "ethyl acetate,solvent,C4H8O2", "dichloromethane,solvent,CH2Cl2")
                        .with("charges", "0.902", "1.326")
                        .with("layers", "34,97.63", "34,108.01"));
        add(
                "layer-identity-unclear",
                Severity.NOTE,
                clean().with("layers", "A1,aqueous,lower,E-01,34,97.63", "A1,aqueous,lower,E-01,34,85.00")
                        .with("workup", "aqueous,density,none,O1", "aqueous,not checked,none,O1"));
        add(
                "layer-position-contradiction",
                Severity.CHECK,
                clean().with("layers", "A2,aqueous,lower", "A2,aqueous,upper"));
        add(
                "layer-ph-differs",
                Severity.STOP,
                clean().with("workup", "0.998,250,1,,,", "0.998,250,1,1.0,,")
                        .table(
                                "layers",
                                "Run,Layer,Phase,Volume (mL),Net (g),pH,Status\nX1,A1,aqueous,34,34.52,12.5,kept\n"));
        add("layer-phase-contradiction", Severity.CHECK, clean().with("layers", "A1,aqueous", "A1,organic"));
        add(
                "layer-missing",
                Severity.HOLD,
                clean().with("layers", "X1,A2,aqueous,lower,E-02,21,85.02,60.26,,,kept\n", ""));
        add(
                "composition-not-charged",
                Severity.CHECK,
                clean().with("layers", "48.15,ethyl acetate 98 %", "48.15,toluene 98 %"));
        add("composition-contradicted", Severity.CHECK, clean().with("charges", "60,mL,,,,0.902", "6,mL,,,,0.902"));
        add(
                "composition-incomplete",
                Severity.CHECK,
                clean().with("layers", "48.15,ethyl acetate 98 %", "48.15,ethyl acetate 1 %"));
        add("layer-part-only", Severity.HOLD, clean().with("layers", "E-01,34,97.63,63.11", "E-01,11,74.3,63.11"));
        add(
                "layer-volume-impossible",
                Severity.CHECK,
                clean().plus("layers", "X1,O1,organic,upper,E-03,66,100.10,40.07,,,used up")
                        .with("layers", "E-01,34,", "E-01,64,"));
        add("layer-density-impossible", Severity.STOP, clean().with("layers", "E-01,34,97.63", "E-01,3.4,97.63"));
        add("layer-density-unexpected", Severity.HOLD, clean().with("layers", "E-01,34,97.63", "E-01,34,139.63"));
        add("rag-not-assayed", Severity.HOLD, rag());
        add("emulsion-not-recorded", Severity.HOLD, clean().with("workup", "density,none,O1", "density,persistent,O1"));
        add("cake-lighter-than-agent", Severity.CHECK, clean().with("layers", "6.92", "4.31"));
        add(
                "product-on-cake",
                Severity.NOTE,
                clean().with("layers", "6.92", "9.40").with("isolated", "96.9022", "96.3022"));
        add(
                "liquor-not-recorded",
                Severity.CHECK,
                clean().plus("isolated", "X1,C1,acetanilide,crop,CR1,F-02,30.1234,24.9911,,99.5,1.0,melting point,,"));
        add("liquor-not-assayed", Severity.CHECK, crystallised());
        add(
                "aliquots-taken",
                Severity.NOTE,
                clean().plus("workup", "X1,1.5,sample,O1,,,,,,,,,,,,,,,,S1")
                        .plus("layers", "X1,S1,organic,,E-05,1.00,36.9951,36.0822,,,used up")
                        .plus("assays", "X1,S1,acetanilide,,HPLC,95,mg/mL,2.0,"));
    }

    private static ExampleBook rag() {
        return clean().with("workup", "O1,A1,", "O1,A1,R1")
                .plus("layers", "X1,R1,rag,middle,E-07,8,48.01,40.02,,,kept");
    }

    private static ExampleBook crystallised() {
        return clean().plus("workup", "X1,7,crystallise,CR1,ethanol,1,40,,,0.789,,,,,,,,,,C1+ML1")
                .plus("isolated", "X1,C1,acetanilide,crop,CR1,F-02,30.1234,24.9911,,99.5,1.0,melting point,,")
                .plus("layers", "X1,ML1,mother liquor,,E-08,38,71.27,40.55,,,kept");
    }

    private static ExampleBook planned() {
        return clean().with("runs", "isolated", "planned")
                .table("layers", "Run,Layer,Phase\n")
                .table("assays", "Run,Sample,Substance,Method,Result,Unit\n")
                .table("isolated", "Run,Lot,Product,Stage,From,Gross (g),Tare (g)\n");
    }

    private void weighings() {
        add("net-against-weighing", Severity.STOP, clean().with("isolated", "90.3358,,99.1", "90.3358,5.5664,99.1"));
        add("tare-missing", Severity.STOP, clean().with("isolated", "96.9022,90.3358", "96.9022,"));
        add(
                "tare-register-differs",
                Severity.CHECK,
                clean().table("vessels", "Vessel,Date,Clean dry tare (g)\nF-01,2026-02-02,90.3158\n"));
        add("gross-equals-tare", Severity.CHECK, clean().with("layers", "21,85.02,60.26", "21,63.11,60.26"));
        add(
                "crude-above-theory",
                Severity.CHECK,
                clean().with("isolated", "96.9022,90.3358,,99.1", "97.7022,90.3358,,89.1"));
        add(
                "lot-above-theory",
                Severity.CHECK,
                clean().with(
                                "isolated",
                                "acetanilide,crude,O4,F-01,96.9022,90.3358,,99.1,1.5",
                                "acetanilide,crop,O4,F-01,97.9022,90.3358,,,"));
        add("crude-without-assay", Severity.CHECK, clean().with("isolated", "90.3358,,99.1,1.5", "90.3358,,,"));
        add("crude-not-a-yield", Severity.CHECK, clean().with("isolated", "99.1,1.5", "94.0,1.0"));
        add(
                "assay-below-mole-ratio",
                Severity.CHECK,
                clean().with("isolated", "99.1,1.5", "88.0,1.0")
                        .plus("assays", "X1,CR1,ethyl acetate,C4H8O2,NMR,0.02,mol ratio to product,,"));
        add(
                "not-at-constant-mass",
                Severity.CHECK,
                clean().with("isolated", "melting point,,", "melting point,96.8011,"));
        add("purified-exceeds-source", Severity.CHECK, purified("33.9000", "99.5"));
        add("purification-open", Severity.NOTE, purified("26.1234", "99.5"));
        add("purified-below-source", Severity.CHECK, purified("30.1234", "81.3"));
        add("weighed-warm", Severity.NOTE, clean().with("isolated", "melting point,,", "melting point,96.9060,"));
        add("copied-weighing", Severity.CHECK, clean().with("layers", "21,85.02,60.26", "21,97.63,63.11"));
        add(
                "copied-assay",
                Severity.CHECK,
                clean().with("assays", "A2,acetanilide,,HPLC,<0.10", "A2,acetanilide,,HPLC,1.51")
                        .with("layers", "34,97.63,63.11", "34,97.63,72.87"));
        add(
                "record-corrected",
                Severity.NOTE,
                clean().table(
                                "corrections",
                                "When,Who,Record,Old,New,Reason\n2026-03-03,C1,X1 layer A1 volume,43,34,digits swapped\n"));
        add(
                "correction-not-made",
                Severity.CHECK,
                clean().table(
                                "corrections",
                                "When,Who,Record,Old,New,Reason\n2026-03-03,C1,X1 layer A1 volume,34,43,digits swapped\n"));
    }

    /** The crude recrystallised to one lot, by gross (g) over a tare of 24.9911 g and assay (%). */
    private static ExampleBook purified(String gross, String assay) {
        return clean().plus(
                        "isolated",
                        "X1,P1,acetanilide,purified,CR1,F-02," + gross + ",24.9911,," + assay + ",1.0,melting point,,");
    }

    private void assays() {
        add("area-percent", Severity.CHECK, clean().plus("assays", "X1,CR1,acetanilide,,HPLC,99.8,area %,,"));
        add(
                "assay-sum-impossible",
                Severity.CHECK,
                clean().plus("assays", "X1,CR1,ethyl acetate,C4H8O2,NMR,6.5,% w/w,,"));
        add(
                "component-counted-twice",
                Severity.NOTE,
                clean().plus("assays", "X1,A1,acetanilide,,HPLC,1.49,mg/mL,2.0,"));
        add("composite-refused", Severity.CHECK, clean().plus("assays", "X1,A1+K1,acetanilide,,HPLC,0.60,mg/mL,2.0,"));
        add("composite-disagrees", Severity.HOLD, clean().plus("assays", "X1,A1+A2,acetanilide,,HPLC,0.30,mg/mL,2.0,"));
        add("assays-disagree", Severity.HOLD, clean().plus("assays", "X1,A1,acetanilide,,HPLC,0.49,mg/mL,2.0,"));
        add("lot-assay-differs", Severity.CHECK, clean().plus("assays", "X1,CR1,acetanilide,,HPLC,98.0,% w/w,1.0,"));
    }

    private void results() {
        add("closure-over", Severity.STOP, clean().with("assays", "HPLC,1.51", "HPLC,15.1"));
        add("closure-open", Severity.CHECK, clean().with("isolated", "96.9022", "96.2022"));
        add("closure-cannot-decide", Severity.CHECK, clean().with("isolated", "99.1,1.5", "99.1,7.0"));
        add("yield-above-100", Severity.STOP, clean().with("isolated", "96.9022", "98.9022"));
        add("yield-upper-bound", Severity.NOTE, clean().with("isolated", "99.1,1.5", "<99.1,1.5"));
        add(
                "theory-not-computed",
                Severity.CHECK,
                clean().with("charges", "93.13,1,", "93.13,,").with("charges", "102.09,1,", "102.09,,"));
        add("mass-gap-negative", Severity.CHECK, clean().with("layers", "48.15", "68.15"));
        add("mass-gap-large", Severity.NOTE, clean().with("layers", "48.15", "28.15"));
        add("entry-suspect", Severity.CHECK, clean().with("layers", "34,97.63", "340,97.63"));
        add(
                "entries-disagree",
                Severity.NOTE,
                clean().with("layers", "34,97.63", "34,131.19").with("layers", "48.15", "97.30"));
        add("series-out-of-control", Severity.CHECK, clean().table("history", """
                        Series,Date,Yield (%)
                        S-1,2025-10-02,86.9
                        S-1,2025-10-16,88.4
                        S-1,2025-10-30,87.6
                        S-1,2025-11-13,89.0
                        S-1,2025-11-27,86.2
                        S-1,2025-12-11,88.1
                        S-1,2026-01-15,87.3
                        S-1,2026-01-29,89.3
                        """));
    }

    private void reactions() {
        add("gas-expected", Severity.NOTE, bicarbonate(clean(), 30));
        add(
                "materials-must-not-meet",
                Severity.HOLD,
                clean().plus("charges", "X1,sodium azide,reagent,NaN3,65.01,,,,0.1,g,99,,,,")
                        .with("workup", "X1,2,wash,O1,brine,1,20,,,1.198", "X1,2,wash,O1,1 M HCl,1,20,,,1.017"));
        add(
                "charged-together",
                Severity.CHECK,
                clean().plus("charges", "X1,oxalyl chloride,reagent,C2Cl2O2,126.92,,,,0.5,g,98,,,,")
                        .plus("charges", "X1,DMSO,reagent,C2H6OS,78.13,,,,0.5,g,99,,,,"));
        add(
                "controlled-meeting",
                Severity.NOTE,
                clean().plus("charges", "X1,sodium borohydride,reagent,NaBH4,37.83,,,,1.0,g,98,,,,"));
        add(
                "extraction-split",
                Severity.NOTE,
                planned()
                        .with("products", "neutral,,,304", "neutral,,3,304")
                        .plus("workup", "X1,7,extract,A1,ethyl acetate,1,30,,,0.902,250,1,,,,,,O5,A3,"));
        add("neutralisation-short", Severity.HOLD, NeutralisationShortTest.saponified("12", "2"));
        add("wash-too-small", Severity.STOP, bicarbonate(planned(), 30));
        add("oxidant-quench", Severity.NOTE, thiosulfate(30));
        add("reductant-short", Severity.STOP, thiosulfate(1));
        add(
                "quench-by-product",
                Severity.CHECK,
                clean().plus(
                                "charges",
                                "X1,phenylmagnesium bromide in THF,reagent,C6H5BrMg,181.31,,,,30,mL,,3.0,2.9,1.0,"));
        add("routes-agree", Severity.NOTE, acidAtPh("36"));
        add("routes-disagree", Severity.CHECK, acidAtPh("3000"));
    }

    private static ExampleBook bicarbonate(ExampleBook book, int millilitres) {
        return book.plus("charges", "X1,sulfuric acid 96 wt%,catalyst,H2SO4,98.08,,,,2.50,g,96,,,,")
                .with("workup", "water,1,30,,,0.998", "sat. NaHCO3,1," + millilitres + ",,1.1,1.061");
    }

    private static ExampleBook thiosulfate(int millilitres) {
        return clean().plus("charges", "X1,Dess-Martin periodinane,reagent,C13H13IO8,424.14,,,,1.0,g,97,,,,")
                .with(
                        "workup",
                        "water,1,30,,,0.998,250,1,,",
                        "10 wt% Na2S2O3,1," + millilitres + ",,0.685,1.083,250,1,,negative");
    }

    private static ExampleBook acidAtPh(String partitionRatio) {
        return clean().plus("charges", "X1,water,solvent,H2O,,,,,30,mL,,,,0.998,")
                .with("products", "neutral,,,304", "acid,4.2," + partitionRatio + ",304")
                .with("workup", "wash,RM,water,1,30,,,0.998", "extract,RM,ethyl acetate,1,30,,,0.902")
                .with("layers", "Composition,Status", "Composition,Status,pH")
                .with("layers", "63.11,,,kept", "63.11,,,kept,2.0")
                .with("assays", "HPLC,1.51", "HPLC,3.02");
    }

    private void heldLayers() {
        add("layer-holds-product", Severity.HOLD, clean().with("assays", "HPLC,1.51", "HPLC,8.0"));
        add(
                "layers-not-assayed",
                Severity.HOLD,
                clean().with("assays", "HPLC,1.51", "TLC,1.51").with("assays", "HPLC,<0.10", "TLC,<0.10"));
        add(
                "layer-left-early",
                Severity.HOLD,
                clean().with("isolated", "96.9022,90.3358", "96.9022,")
                        .with("layers", "63.11,,,kept", "63.11,,,released"));
        add(
                "note-against-figure",
                Severity.HOLD,
                clean().with("assays", "HPLC,1.51,mg/mL,2.0,", "HPLC,1.51,mg/mL,2.0,as injected"));
        add("layer-waits", Severity.HOLD, clean().with("isolated", "96.9022,90.3358", "96.9022,"));
        add(
                "content-carried",
                Severity.NOTE,
                clean().plus("workup", "X1,7,acidify,A1,6 M HCl,1,2,,6,1.098,,,1.0,,,,,,A3,")
                        .with("layers", "63.11,,,kept", "63.11,,,consumed")
                        .plus("layers", "X1,A3,aqueous,,E-04,36,76.85,40.11,,,kept"));
    }

    private static final String CONTAINERS =
            "Container,Waste stream,Capacity (L),Tare (g),Gross then (g),Contents then,Opened\n";
    private static final String TRANSFERS = "Transfer,Run,Layer,Material,Container,Amount (g),Status\n";
    private static final String LAYERS = """
            Run,Layer,Phase,Position,Vessel,Volume (mL),Gross (g),Tare (g),Net (g),pH,Composition,Review by,Status
            X1,A1,aqueous,lower,E-01,34,97.63,63.11,,6.5,,2026-03-05,kept
            X1,A2,aqueous,lower,E-02,21,85.02,60.26,,7.0,,,kept
            X1,K1,solid,,,,,,6.92,,,,kept
            X1,D1,distillate,,,,,,48.15,,ethyl acetate 98 %,,to reuse
            """;
    private static final String TODAY = "Name,Value,Unit\nAs of,2026-03-06,\nContainer days,90,d\n";
    private static final String SOLVENTS = "W1,non-halogenated solvents,";
    private static final String AQUEOUS = "W1,\"aqueous, neutral\",10,400,5400,water 5000 g,2026-02-02";

    private static ExampleBook container(String row) {
        return clean().table("layers", LAYERS).table("limits", TODAY).table("containers", CONTAINERS + row + "\n");
    }

    private static ExampleBook proposal(String container, String transfer) {
        return container(container).table("transfers", TRANSFERS + transfer + "\n");
    }

    private void containers() {
        add(
                "layer-review-overdue",
                Severity.CHECK,
                clean().table("layers", LAYERS).table("limits", TODAY));
        add("layer-released-by-nobody", Severity.CHECK, clean().with("layers", "63.11,,,kept", "63.11,,,released"));
        add("container-overdue", Severity.CHECK, container(SOLVENTS + "10,400,900,acetone 500 g,2025-11-03"));
        add("container-due-soon", Severity.NOTE, container(SOLVENTS + "10,400,900,acetone 500 g,2025-12-09"));
        add("container-content-unknown", Severity.CHECK, container(SOLVENTS + "10,400,900,,2026-02-02"));
        add("container-weighing-differs", Severity.CHECK, container(SOLVENTS + "10,400,980,acetone 500 g,2026-02-02"));
        add("container-name-short", Severity.CHECK, container(SOLVENTS + "10,400,900,EtOAc 500 g,2026-02-02"));
        add(
                "container-incompatible",
                Severity.STOP,
                container("W1,halogenated solvents,10,400,1400,dichloromethane 900 g; sodium azide 100 g,2026-02-02"));
        add(
                "container-content-differs",
                Severity.HOLD,
                container("W1,\"aqueous, acidic\",10,400,3400,water 2600 g; sodium hydroxide 400 g,2026-02-02"));
        add(
                "transfer-in-wrong-stream",
                Severity.HOLD,
                proposal(SOLVENTS + "10,400,900,acetone 500 g,2026-02-02", "T1,X1,A1,,W1,34.5,done"));
        add(
                "day-cannot-be",
                Severity.CHECK,
                proposal(SOLVENTS + "10,400,900,acetone 500 g,2036-02-02", "T1,,,acetone,W1,50,proposed"));
        add(
                "strength-differs",
                Severity.CHECK,
                clean().with("workup", "X1,1,wash,RM,water,1,30,,,0.998", "X1,1,wash,RM,sat. NaHCO3,1,30,,11,1.06"));
        add("transfer-of-gone", Severity.HOLD, proposal(AQUEOUS, "T1,X1,O1,,W1,34.5,proposed"));
        add(
                "transfer-of-reused",
                Severity.CHECK,
                proposal(AQUEOUS, "T1,X1,A1,,W1,34.5,proposed").with("layers", ",kept", ",to reuse"));
        add(
                "container-overfull",
                Severity.STOP,
                proposal(SOLVENTS + "1,400,1080,acetone 680 g,2026-02-02", "T1,,,acetone,W1,60,proposed"));
        add(
                "container-nearly-full",
                Severity.NOTE,
                proposal(SOLVENTS + "1,400,950,acetone 550 g,2026-02-02", "T1,,,acetone,W1,60,proposed"));
    }

    private void proposals() {
        add(
                "proposal-wrong-stream",
                Severity.STOP,
                proposal(SOLVENTS + "10,400,900,acetone 500 g,2026-02-02", "T1,X1,A1,,W1,34.5,proposed"));
        add(
                "proposal-stream-unknown",
                Severity.CHECK,
                proposal("W1,bottle seven,10,400,900,acetone 500 g,2026-02-02", "T1,,,acetone,W1,50,proposed"));
        add(
                "proposal-incompatible",
                Severity.STOP,
                proposal(
                        "W1,\"aqueous, acidic\",10,400,900,water 450 g; hydrogen chloride 50 g,2026-02-02",
                        "T1,,,bleach,W1,50,proposed"));
        add(
                "proposal-holds-product",
                Severity.HOLD,
                proposal(AQUEOUS, "T1,X1,A1,,W1,34.5,proposed").with("assays", "1.51,mg/mL", "15.1,mg/mL"));
        add(
                "proposal-is-evidence",
                Severity.HOLD,
                proposal(AQUEOUS, "T1,X1,A1,,W1,34.5,proposed").with("charges", "C6H7N,93.13", "C6H8ClN,93.13"));
        add(
                "proposal-evidence-open",
                Severity.HOLD,
                proposal(AQUEOUS, "T1,X1,A1,,W1,34.5,proposed").table("limits", TODAY + "Waiting days,30,d\n"));
        add("proposal-label", Severity.NOTE, proposal(AQUEOUS, "T1,X1,A1,,W1,34.5,proposed"));
        add("transfer-exceeds-layer", Severity.CHECK, proposal(AQUEOUS, "T1,X1,A2,,W1,40,done"));
        add(
                "transfer-estimated",
                Severity.CHECK,
                proposal(AQUEOUS, "T1,X1,A2,,W1,,done").with("layers", "21,85.02,60.26", "21,,"));
        add(
                "transfer-amount-unknown",
                Severity.HOLD,
                proposal(AQUEOUS, "T1,X1,K1,,W1,,done").with("layers", ",,6.92", ",,"));
    }
}
