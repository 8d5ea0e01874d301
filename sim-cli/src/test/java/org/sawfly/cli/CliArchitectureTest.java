package org.sawfly.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.PrintStream;
import java.text.Format;
import java.util.Formatter;
import java.util.Random;
import java.util.Set;

/** The rules of the commands' make-up, each with its name. */
@AnalyzeClasses(packages = "org.sawfly.cli", importOptions = ImportOption.DoNotIncludeTests.class)
class CliArchitectureTest {
    private static final String CLI = "org.sawfly.cli.";

    @ArchTest
    static final ArchRule packages_are_free_of_cycles =
            slices().matching(CLI + "(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule nothing_below_knows_the_entry = noClasses()
            .that()
            .resideInAPackage(CLI + "*..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.sawfly.cli");

    @ArchTest
    static final ArchRule answers_and_charts_know_no_command = noClasses()
            .that()
            .resideInAnyPackage(CLI + "answer..", CLI + "chart..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(CLI + "command..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule drawing_only_in_chart = noClasses()
            .that()
            .resideOutsideOfPackage(CLI + "chart..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio..", "org.knowm.xchart..");

    @ArchTest
    static final ArchRule command_lines_are_parsed_in_command_only = noClasses()
            .that()
            .resideOutsideOfPackages("org.sawfly.cli", CLI + "command..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("picocli..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule no_parser_and_no_mathematics = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tools.jackson..", "com.fasterxml.jackson..", "org.hipparchus..");

    @ArchTest
    static final ArchRule no_chance = noClasses().should().dependOnClassesThat().areAssignableTo(Random.class);

    @ArchTest
    static final ArchRule numbers_are_formatted_in_answer = noClasses()
            .that()
            .resideOutsideOfPackage(CLI + "answer..")
            .should()
            .callMethodWhere(aFormattingCall())
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Formatter.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Format.class);

    @ArchTest
    static final ArchRule only_main_knows_the_process_streams = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("org.sawfly.cli.Main")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in");

    private static DescribedPredicate<JavaCall<?>> aFormattingCall() {
        Set<String> names = Set.of("format", "formatted", "printf");
        return DescribedPredicate.describe(
                "that formats",
                call -> names.contains(call.getName())
                        && (call.getTargetOwner().isEquivalentTo(String.class)
                                || call.getTargetOwner().isAssignableTo(PrintStream.class)));
    }
}
