package hankbook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "hankbook", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule ARROWS_POINT_DOWN =
      layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("hankbook..")
          .layer("measure").definedBy("hankbook.measure..")
          .layer("yarn").definedBy("hankbook.yarn..")
          .layer("plan").definedBy("hankbook.plan..")
          .layer("ledger").definedBy("hankbook.ledger..")
          .layer("allot").definedBy("hankbook.allot..")
          .layer("exchange").definedBy("hankbook.exchange..")
          .layer("studio").definedBy("hankbook.studio..")
          .layer("cli").definedBy("hankbook.cli..")
          .layer("desktop").definedBy("hankbook.desktop..")
          .layer("main").definedBy("hankbook")
          .whereLayer("main").mayNotBeAccessedByAnyLayer()
          .whereLayer("cli").mayOnlyBeAccessedByLayers("main")
          .whereLayer("desktop").mayOnlyBeAccessedByLayers("main")
          .whereLayer("studio").mayOnlyBeAccessedByLayers("cli", "desktop", "main")
          .whereLayer("exchange").mayOnlyBeAccessedByLayers("studio", "cli", "desktop")
          .whereLayer("allot").mayOnlyBeAccessedByLayers("exchange", "studio", "cli", "desktop")
          .whereLayer("ledger").mayOnlyBeAccessedByLayers("exchange", "studio", "cli", "desktop")
          .whereLayer("plan").mayOnlyBeAccessedByLayers("allot", "exchange", "studio", "cli", "desktop")
          .whereLayer("yarn").mayOnlyBeAccessedByLayers("plan", "allot", "ledger", "exchange", "studio", "cli", "desktop")
          .because("a change of a screen or a file form must never reach the maths");

  @ArchTest
  static final ArchRule THE_DOMAIN_IS_PURE =
      noClasses()
          .that()
          .resideInAnyPackage("hankbook.measure..", "hankbook.yarn..", "hankbook.plan..", "hankbook.ledger..", "hankbook.allot..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.io..", "java.nio.file..", "java.sql..", "javafx..", "org.jooq..", "org.h2..", "com.fasterxml..", "com.opencsv..", "picocli..")
          .because("a test of it needs no fixture, and a screen can recalculate at every keystroke");
}
