package org.sawfly;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.sawfly", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule jackson_only_in_file = noClasses()
            .that()
            .resideOutsideOfPackage("org.sawfly.file..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tools.jackson..", "com.fasterxml.jackson..")
            .allowEmptyShould(true);
}
