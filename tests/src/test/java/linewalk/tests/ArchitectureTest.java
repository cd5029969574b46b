package linewalk.tests;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Dependencies point one way; what may use what is listed here and nowhere else. */
@AnalyzeClasses(packages = "linewalk", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule modulesUseOnlyWhatLiesBelow = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("app")
            .definedBy("linewalk.app..")
            .layer("renderer")
            .definedBy("linewalk.renderer..")
            .layer("linker")
            .definedBy("linewalk.linker..")
            .layer("importer")
            .definedBy("linewalk.importer..")
            .layer("store")
            .definedBy("linewalk.drawing.store..")
            .layer("drawing")
            .definedBy("linewalk.drawing")
            .layer("samples")
            .definedBy("linewalk.samples..")
            .whereLayer("app")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("renderer")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("linker")
            .mayOnlyBeAccessedByLayers("renderer", "app")
            .whereLayer("importer")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("store")
            .mayOnlyBeAccessedByLayers("importer", "app")
            .whereLayer("samples")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("drawing")
            .mayOnlyBeAccessedByLayers("store", "importer", "linker", "renderer", "app");

    @ArchTest
    static final ArchRule everyClassIsInAModule = classes()
            .should()
            .resideInAnyPackage(
                    "linewalk.app..",
                    "linewalk.renderer..",
                    "linewalk.linker..",
                    "linewalk.importer..",
                    "linewalk.drawing..",
                    "linewalk.samples..");

    @ArchTest
    static final ArchRule theDrawingKnowsNothingButJackson = classes()
            .that()
            .resideInAPackage("linewalk.drawing..")
            .should()
            .onlyDependOnClassesThat(
                    resideInAnyPackage("java..", "com.fasterxml.jackson..", "org.apache.poi..", "linewalk.drawing.."));

    /** A PDF is on the paper before a library for SVG would be loaded. */
    @ArchTest
    static final ArchRule onlySvgLoadsTheLibraryForSvg = noClasses()
            .that()
            .haveSimpleNameNotStartingWith("Svg")
            .and()
            .doNotHaveSimpleName("VectorGraphics")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.batik..");

    @ArchTest
    static final ArchRule theLinkerSeesNoPages = classes()
            .that()
            .resideInAPackage("linewalk.linker..")
            .should()
            .onlyDependOnClassesThat(
                    resideInAnyPackage("java..", "org.jgrapht..", "linewalk.drawing", "linewalk.linker.."));

    @ArchTest
    static final ArchRule theImporterSeesNoGraph = classes()
            .that()
            .resideInAPackage("linewalk.importer..")
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                    "java..",
                    "org.apache.pdfbox..",
                    "boofcv..",
                    "javax.imageio..",
                    "org.w3c.dom..",
                    "org.locationtech.jts..",
                    "net.sourceforge.tess4j..",
                    "org.bytedeco..",
                    "linewalk.drawing..",
                    "linewalk.importer.."));

    @ArchTest
    static final ArchRule oneStepAloneKnowsTheLetterReader = noClasses()
            .that()
            .resideOutsideOfPackage("linewalk.importer.ocr..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("net.sourceforge.tess4j..", "org.bytedeco..", "com.sun.jna..");

    @ArchTest
    static final ArchRule theImporterNeverMakesTheSet = noClasses()
            .that()
            .resideInAPackage("linewalk.importer..")
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("linewalk.drawing.DrawingSet");

    @ArchTest
    static final ArchRule sampleSheetsShareNoCode = classes()
            .that()
            .resideInAPackage("linewalk.samples..")
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                    "java..",
                    "org.apache.pdfbox..",
                    "org.apache.fontbox..",
                    "com.fasterxml.jackson..",
                    "linewalk.samples.."));

    @ArchTest
    static final ArchRule noPackagesGoRoundInACycle = slices().matching("linewalk.(**)")
            .namingSlices("package $1")
            .should()
            .beFreeOfCycles();

    @ArchTest
    static final ArchRule theImportersStepsAreFreeOfCycles = slices().matching("linewalk.importer.(*)..")
            .namingSlices("step $1")
            .should()
            .beFreeOfCycles();

    @ArchTest
    static final ArchRule theStepsDoNotReachBackToWhatRunsThem = noClasses()
            .that()
            .resideInAPackage("linewalk.importer.*..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("linewalk.importer");
}
