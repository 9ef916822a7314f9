package workuptally.architecture;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.constructors;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Holds the direction in which the packages know each other, and a few habits that keep it readable. */
@AnalyzeClasses(packages = "workuptally", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String MODEL = "workuptally.model..";
    private static final String BOOK = "workuptally.book..";
    private static final String TALLY = "workuptally.tally..";
    private static final String JUDGEMENT = "workuptally.judgement..";
    private static final String REPORT = "workuptally.report..";
    private static final String VIEW = "workuptally.report.view..";
    private static final String CLI = "workuptally.cli..";
    private static final String MEASURE = "workuptally.measure..";
    private static final String CHEMISTRY = "workuptally.chemistry..";
    private static final String REFERENCE = "workuptally.reference..";
    private static final String THREADS = "workuptally.threads..";
    private static final String MATERIAL = "workuptally.material..";

    /** They look at the same classes, which take longer to import than to check. */
    @ArchTest
    static final ArchTests figures = ArchTests.in(EveryFigureIsRead.class);

    @ArchTest
    static final ArchTests names = ArchTests.in(LookUpsOfNames.class);

    @ArchTest
    static final ArchRule modelKnowsNoOtherPackage = knowsOnly(MODEL);

    @ArchTest
    static final ArchRule measureIsALeaf = knowsOnly(MEASURE);

    @ArchTest
    static final ArchRule chemistryIsALeaf = knowsOnly(CHEMISTRY);

    @ArchTest
    static final ArchRule threadsIsALeaf = knowsOnly(THREADS);

    @ArchTest
    static final ArchRule referenceIsALeaf = knowsOnly(REFERENCE);

    @ArchTest
    static final ArchRule materialRestsOnReferenceAndChemistry = knowsOnly(MATERIAL, CHEMISTRY, REFERENCE);

    @ArchTest
    static final ArchRule bookKnowsModelAndLeaves =
            knowsOnly(BOOK, MODEL, MEASURE, CHEMISTRY, REFERENCE, MATERIAL, THREADS);

    @ArchTest
    static final ArchRule tallyKnowsModelAndLeaves = knowsOnly(TALLY, MODEL, MEASURE, CHEMISTRY, REFERENCE, MATERIAL);

    @ArchTest
    static final ArchRule judgementKnowsTallyModelAndLeaves =
            knowsOnly(JUDGEMENT, TALLY, MODEL, MEASURE, CHEMISTRY, REFERENCE, MATERIAL);

    @ArchTest
    static final ArchRule reportKnowsFinishedResultsAndMeasuredValues =
            knowsOnly(REPORT, JUDGEMENT, TALLY, MODEL, MEASURE, THREADS);

    @ArchTest
    static final ArchRule viewKnowsNoRenderer = noClasses()
            .that()
            .resideInAPackage(VIEW)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(renderer("workbook"), renderer("pdf"), renderer("json"), renderer("csv"));

    @ArchTest
    static final ArchRule workbookKnowsNoOtherRenderer = knowsNoRenderer("workbook", "pdf", "json", "csv");

    @ArchTest
    static final ArchRule pdfKnowsNoOtherRenderer = knowsNoRenderer("pdf", "workbook", "json", "csv");

    @ArchTest
    static final ArchRule jsonKnowsNoOtherRenderer = knowsNoRenderer("json", "workbook", "pdf", "csv");

    @ArchTest
    static final ArchRule csvKnowsNoOtherRenderer = knowsNoRenderer("csv", "workbook", "pdf", "json");

    @ArchTest
    static final ArchRule packagesHaveNoCycle =
            slices().matching("workuptally.(*)..").should().beFreeOfCycles();

    /** Rooms of the tally in the order in which a run goes through them; the root above puts the accounts of a run together. */
    @ArchTest
    static final ArchRule tallyRoomsRunOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage(TALLY)
            .layer("amounts")
            .definedBy(room("amounts"))
            .layer("layers")
            .definedBy(room("layers"))
            .layer("balance")
            .definedBy(room("balance"))
            .layer("waste")
            .definedBy(room("waste"))
            .layer("bench")
            .definedBy(room("bench"))
            .layer("run")
            .definedBy("workuptally.tally")
            .layer("containers")
            .definedBy(room("containers"))
            .layer("series")
            .definedBy(room("series"))
            .layer("suspects")
            .definedBy(room("suspects"))
            .whereLayer("suspects")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("series")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("containers")
            .mayOnlyBeAccessedByLayers("suspects")
            .whereLayer("run")
            .mayOnlyBeAccessedByLayers("containers", "series", "suspects")
            .whereLayer("bench")
            .mayOnlyBeAccessedByLayers("run", "containers", "series", "suspects")
            .whereLayer("waste")
            .mayOnlyBeAccessedByLayers("bench", "run", "containers", "series", "suspects")
            .whereLayer("balance")
            .mayOnlyBeAccessedByLayers("waste", "bench", "run", "containers", "series", "suspects")
            .whereLayer("layers")
            .mayOnlyBeAccessedByLayers("balance", "waste", "bench", "run", "containers", "series", "suspects");

    /** Rooms of the reader, from words and files to runs. */
    @ArchTest
    static final ArchRule bookRoomsRunOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage(BOOK)
            .layer("words")
            .definedBy("workuptally.book.words")
            .layer("files")
            .definedBy("workuptally.book.files")
            .layer("schema")
            .definedBy("workuptally.book.schema")
            .layer("cells")
            .definedBy("workuptally.book.cells")
            .layer("sources")
            .definedBy("workuptally.book.sources")
            .layer("headings")
            .definedBy("workuptally.book.headings")
            .layer("tables")
            .definedBy("workuptally.book.tables")
            .layer("lists")
            .definedBy("workuptally.book.lists")
            .layer("book")
            .definedBy("workuptally.book", "workuptally.book.template")
            .whereLayer("book")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("lists")
            .mayOnlyBeAccessedByLayers("book")
            .whereLayer("tables")
            .mayOnlyBeAccessedByLayers("lists", "book")
            .whereLayer("headings")
            .mayOnlyBeAccessedByLayers("tables", "lists", "book")
            .whereLayer("sources")
            .mayOnlyBeAccessedByLayers("headings", "tables", "lists", "book")
            .whereLayer("cells")
            .mayOnlyBeAccessedByLayers("sources", "headings", "tables", "lists", "book")
            .whereLayer("schema")
            .mayOnlyBeAccessedByLayers("cells", "sources", "headings", "tables", "lists", "book")
            .whereLayer("files")
            .mayOnlyBeAccessedByLayers("schema", "cells", "sources", "headings", "tables", "lists", "book");

    /** Rooms of the reference tables, from cells to all of them together. */
    @ArchTest
    static final ArchRule referenceRoomsRunOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage(REFERENCE)
            .layer("tables")
            .definedBy("workuptally.reference.tables")
            .layer("substances")
            .definedBy("workuptally.reference.substances")
            .layer("hazards")
            .definedBy("workuptally.reference.hazards")
            .layer("solutions")
            .definedBy("workuptally.reference.solutions")
            .layer("waste")
            .definedBy("workuptally.reference.waste")
            .layer("bench")
            .definedBy("workuptally.reference.bench")
            .layer("words")
            .definedBy("workuptally.reference.words")
            .layer("all")
            .definedBy("workuptally.reference")
            .ensureAllClassesAreContainedInArchitectureIgnoring(resideOutsideOfPackage(REFERENCE))
            .whereLayer("all")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("hazards")
            .mayOnlyBeAccessedByLayers("all")
            .whereLayer("solutions")
            .mayOnlyBeAccessedByLayers("all")
            .whereLayer("waste")
            .mayOnlyBeAccessedByLayers("all")
            .whereLayer("bench")
            .mayOnlyBeAccessedByLayers("all")
            .whereLayer("substances")
            .mayOnlyBeAccessedByLayers("hazards", "all")
            .whereLayer("words")
            .mayOnlyBeAccessedByLayers("waste", "all");

    /** Rooms of what the reports say, from words to whole tables. */
    @ArchTest
    static final ArchRule viewRoomsRunOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage(VIEW)
            .layer("wording")
            .definedBy("workuptally.report.view.wording")
            .layer("tables")
            .definedBy("workuptally.report.view.tables")
            .layer("lines")
            .definedBy("workuptally.report.view.lines")
            .layer("labels")
            .definedBy("workuptally.report.view.labels")
            .layer("firstpage")
            .definedBy("workuptally.report.view.firstpage")
            .layer("sheets")
            .definedBy("workuptally.report.view.sheets")
            .layer("ledgers")
            .definedBy("workuptally.report.view.ledgers")
            // The compiler makes a class of the words about the package itself, where the build asks for it.
            .ensureAllClassesAreContainedInArchitectureIgnoring(
                    resideOutsideOfPackage(VIEW).or(nameMatching(".*\\.package-info")))
            .whereLayer("ledgers")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("labels")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("sheets")
            .mayOnlyBeAccessedByLayers("ledgers")
            .whereLayer("firstpage")
            .mayOnlyBeAccessedByLayers("sheets")
            .whereLayer("lines")
            .mayOnlyBeAccessedByLayers("firstpage", "sheets", "ledgers")
            .whereLayer("tables")
            .mayOnlyBeAccessedByLayers("sheets", "ledgers");

    /** What sets type and tables on a page knows nothing of what it prints, but for the words and marks of a locale. */
    @ArchTest
    static final ArchRule pageLayoutKnowsNoChemistry = knowsOnly("workuptally.report.pdf.layout..", VIEW, MODEL);

    @ArchTest
    static final ArchRule picturesKnowNoDocument = knowsOnly(
            "workuptally.report.pdf.pictures..",
            "workuptally.report.pdf.layout..",
            VIEW,
            JUDGEMENT,
            TALLY,
            MODEL,
            MEASURE);

    @ArchTest
    static final ArchRule judgementRoomsHaveNoCycle =
            slices().matching("workuptally.judgement.(*)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule noRuleReadsARuleOfAnotherRoom =
            slices().matching("workuptally.judgement.rules.(*)").should().notDependOnEachOther();

    @ArchTest
    static final ArchRule reportPackagesHaveNoCycle =
            slices().matching("workuptally.report.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule onlyReaderAndWorkbookWriterKnowTheSpreadsheetLibrary =
            libraryStaysIn("org.apache.poi..", BOOK, renderer("workbook"));

    @ArchTest
    static final ArchRule onlyThePdfWriterKnowsThePdfLibrary = libraryStaysIn("com.lowagie..", renderer("pdf"));

    @ArchTest
    static final ArchRule onlyJsonAndTheHeadingsFileKnowTheJsonLibrary =
            libraryStaysIn("tools.jackson..", renderer("json"), BOOK);

    @ArchTest
    static final ArchRule onlyTheCommandLineKnowsItsLibrary = libraryStaysIn("picocli..", CLI);

    @ArchTest
    static final ArchRule onlyTheCommandLineEndsTheProgram =
            noClasses().that().resideOutsideOfPackage(CLI).should().callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule onlyTheCommandLinePrints = noClasses()
            .that()
            .resideOutsideOfPackage(CLI)
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");

    /** Books are untrusted: nothing in them can make the program speak to a network, start a program or load a class. */
    @ArchTest
    static final ArchRule nothingReachesTheNetwork = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net..", "java.rmi..", "javax.net..", "com.sun.net..", "sun.net..")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.nio.channels.SocketChannel");

    @ArchTest
    static final ArchRule nothingStartsAProgram = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(ProcessBuilder.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Process.class)
            .orShould()
            .callMethodWhere(
                    target(owner(assignableTo(Runtime.class))).and(target(nameMatching("exec|load|loadLibrary"))));

    @ArchTest
    static final ArchRule nothingLoadsAClassOrAnObjectFromInput = noClasses()
            .should()
            .callMethodWhere(target(owner(assignableTo(Class.class))).and(target(nameMatching("forName|newInstance"))))
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(ClassLoader.class)
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("java.lang.reflect..", "java.lang.invoke..", "javax.script..", "javax.naming..")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.io.ObjectInputStream");

    @ArchTest
    static final ArchRule belowTheCommandLineNothingCatchesEveryException = codeUnits()
            .that()
            .areDeclaredInClassesThat()
            .resideOutsideOfPackage(CLI)
            .should(catchNoneOf(Exception.class));

    @ArchTest
    static final ArchRule staticFieldsAreFinal =
            fields().that().areStatic().should().beFinal();

    /** The copies of {@code Set} and {@code Map} walk in another order in each run of the program, and with it the last digit of a sum. */
    @ArchTest
    static final ArchRule sumsWalkInAFixedOrder = noClasses()
            .that()
            .resideInAnyPackage(TALLY, JUDGEMENT, MEASURE, VIEW, renderer("json"), renderer("pdf"), renderer("csv"))
            .should()
            .callMethod(Set.class, "copyOf", Collection.class)
            .orShould()
            .callMethod(Map.class, "copyOf", Map.class);

    @ArchTest
    static final ArchRule namesSayWhatAClassDoes = noClasses()
            .should()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Utils")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Manager")
            .orShould()
            .haveSimpleNameEndingWith("Impl");

    /** Rule of this project. */
    private static final int MOST_PARAMETERS = 7;

    /** What has more parts than this holds groups that a chemist has a name for. */
    private static final int MOST_PARTS_OF_A_RECORD = 13;

    @ArchTest
    static final ArchRule constructorsTakeFewThings = constructors()
            .that()
            .areDeclaredInClassesThat()
            .areNotRecords()
            .and()
            .areDeclaredInClassesThat()
            .areNotEnums()
            .should(new ArchCondition<>("take at most " + MOST_PARAMETERS + " things") {
                @Override
                public void check(JavaConstructor constructor, ConditionEvents events) {
                    boolean inner = constructor.getOwner().isInnerClass();
                    int taken = constructor.getRawParameterTypes().size() - (inner ? 1 : 0);
                    if (taken > MOST_PARAMETERS) {
                        events.add(SimpleConditionEvent.violated(
                                constructor, constructor.getDescription() + " takes " + taken));
                    }
                }
            });

    private static String room(String name) {
        return "workuptally.tally." + name + "..";
    }

    private static ArchRule knowsOnly(String own, String... others) {
        String[] known = new String[others.length + 1];
        known[0] = own;
        System.arraycopy(others, 0, known, 1, others.length);
        return noClasses()
                .that()
                .resideInAPackage(own)
                .should()
                .dependOnClassesThat(JavaClass.Predicates.resideInAPackage("workuptally..")
                        .and(JavaClass.Predicates.resideOutsideOfPackages(known)));
    }

    private static ArchRule knowsNoRenderer(String own, String... others) {
        String[] packages = new String[others.length];
        for (int i = 0; i < others.length; i++) {
            packages[i] = renderer(others[i]);
        }
        return noClasses()
                .that()
                .resideInAPackage(renderer(own))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages)
                .allowEmptyShould(true);
    }

    private static String renderer(String name) {
        return "workuptally.report." + name + "..";
    }

    private static ArchRule libraryStaysIn(String library, String... packages) {
        return classes()
                .that()
                .resideOutsideOfPackages(packages)
                .should()
                .onlyDependOnClassesThat()
                .resideOutsideOfPackage(library);
    }

    private static ArchCondition<JavaCodeUnit> catchNoneOf(Class<?>... tooWide) {
        return new ArchCondition<>("catch nothing as wide as " + List.of(tooWide)) {
            @Override
            public void check(JavaCodeUnit unit, ConditionEvents events) {
                Set<Class<?>> wide = Set.of(tooWide);
                boolean caught = unit.getTryCatchBlocks().stream()
                        .flatMap(block -> block.getCaughtThrowables().stream())
                        .anyMatch(type -> wide.stream().anyMatch(type::isEquivalentTo));
                if (caught) {
                    events.add(SimpleConditionEvent.violated(unit, unit.getDescription() + " catches too much"));
                }
            }
        };
    }

    @ArchTest
    static void noRecordIsWide(JavaClasses program) {
        Set<String> wide = program.stream()
                .filter(JavaClass::isRecord)
                .map(JavaClass::reflect)
                .filter(each -> each.getRecordComponents().length > MOST_PARTS_OF_A_RECORD)
                .map(Class::getSimpleName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), wide);
    }
}
