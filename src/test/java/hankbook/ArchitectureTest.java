package hankbook;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerSilent;
import hankbook.store.LedgerUnavailable;

@AnalyzeClasses(packages = "hankbook", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule ARROWS_POINT_DOWN =
      layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("hankbook..")
          .layer("measure").definedBy("hankbook.measure..")
          .layer("yarn").definedBy("hankbook.yarn..")
          .layer("gear").definedBy("hankbook.gear..")
          .layer("plan").definedBy("hankbook.plan..")
          .layer("ledger").definedBy("hankbook.ledger..")
          .layer("allot").definedBy("hankbook.allot..")
          .layer("cost").definedBy("hankbook.cost..")
          .layer("reckon").definedBy("hankbook.reckon..")
          .layer("store").definedBy("hankbook.store..")
          .layer("exchange").definedBy("hankbook.exchange..")
          .optionalLayer("print").definedBy("hankbook.print..")
          .layer("studio").definedBy("hankbook.studio..")
          .layer("cli").definedBy("hankbook.cli..")
          .optionalLayer("desktop").definedBy("hankbook.desktop..")
          .layer("main").definedBy("hankbook")
          .whereLayer("main").mayNotBeAccessedByAnyLayer()
          .whereLayer("cli").mayOnlyBeAccessedByLayers("main")
          .whereLayer("desktop").mayOnlyBeAccessedByLayers("main")
          .whereLayer("studio").mayOnlyBeAccessedByLayers("cli", "desktop", "main")
          .whereLayer("exchange").mayOnlyBeAccessedByLayers("studio", "cli", "desktop")
          .whereLayer("print").mayOnlyBeAccessedByLayers("studio", "cli", "desktop")
          .whereLayer("store").mayOnlyBeAccessedByLayers("studio", "cli", "desktop", "main")
          .whereLayer("cost").mayOnlyBeAccessedByLayers("store", "exchange", "print", "studio", "cli", "desktop")
          .whereLayer("reckon").mayOnlyBeAccessedByLayers("exchange", "print", "studio", "cli", "desktop")
          .whereLayer("allot").mayOnlyBeAccessedByLayers("cost", "exchange", "print", "studio", "cli", "desktop")
          .whereLayer("ledger").mayOnlyBeAccessedByLayers("cost", "reckon", "store", "exchange", "print", "studio", "cli", "desktop")
          .whereLayer("plan").mayOnlyBeAccessedByLayers("allot", "cost", "reckon", "print", "exchange", "studio", "cli", "desktop")
          .whereLayer("gear").mayOnlyBeAccessedByLayers("plan", "allot", "cost", "reckon", "print", "store", "exchange", "studio", "cli", "desktop")
          .whereLayer("yarn").mayOnlyBeAccessedByLayers("gear", "plan", "allot", "cost", "reckon", "ledger", "print", "store", "exchange", "studio", "cli", "desktop")
          .because("a change of a screen or a file form must never reach the maths");

  @ArchTest
  static final ArchRule THE_DOMAIN_IS_PURE =
      noClasses()
          .that()
          .resideInAnyPackage("hankbook.measure..", "hankbook.yarn..", "hankbook.gear..", "hankbook.plan..", "hankbook.ledger..", "hankbook.allot..", "hankbook.cost..", "hankbook.reckon..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.io..", "java.nio.file..", "java.sql..", "javafx..", "org.jooq..", "org.h2..", "com.fasterxml..", "com.opencsv..", "picocli..")
          .because("a test of it needs no fixture, and a screen can recalculate at every keystroke");

  @ArchTest
  static final ArchRule ONLY_THE_STORE_SPEAKS_TO_THE_DATABASE =
      noClasses()
          .that()
          .resideOutsideOfPackage("hankbook.store..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.sql..", "org.jooq..", "org.h2..", "org.flywaydb..", "com.zaxxer..", "org.postgresql..")
          .because("a transaction begins and ends in one place");

  @ArchTest
  static final ArchRule SCREENS_AND_COMMANDS_GO_THROUGH_THE_STUDIO =
      noClasses()
          .that()
          .resideInAnyPackage("hankbook.cli..", "hankbook.desktop..", "hankbook")
          .should()
          .dependOnClassesThat(
              resideInAPackage("hankbook.store..").and(not(assignableTo(LedgerAddress.class))).and(not(assignableTo(LedgerUnavailable.class))).and(not(assignableTo(LedgerSilent.class))))
          .because("what may be done to a ledger is said once, in the use cases; beside them only its address and why it will not open");
}
