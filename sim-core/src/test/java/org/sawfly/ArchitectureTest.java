package org.sawfly;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.PrintStream;
import java.text.Format;
import java.util.Formatter;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;

/** The rules of the library's make-up, each with its name. A new package needs a level here. */
@AnalyzeClasses(packages = "org.sawfly", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String ROOT = "org.sawfly.";
    private static final int MOST_COMPONENTS = 9;

    /** A package knows packages of lower levels only. */
    private static final Map<String, Integer> LEVELS = Map.ofEntries(
            Map.entry("quantity", 1),
            Map.entry("math", 1),
            Map.entry("air", 2),
            Map.entry("section", 2),
            Map.entry("glider", 3),
            Map.entry("aero", 4),
            Map.entry("motion", 5),
            Map.entry("stability", 6),
            Map.entry("flight", 6),
            Map.entry("strength", 7),
            Map.entry("study", 8),
            Map.entry("file", 9));

    @ArchTest
    static final ArchRule packages_know_only_lower_levels = classes().should(knowOnlyLowerLevels());

    @ArchTest
    static final ArchRule packages_are_free_of_cycles =
            slices().matching(ROOT + "(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule jackson_only_in_file =
            only("tools.jackson..", "com.fasterxml.jackson..").in("file");

    @ArchTest
    static final ArchRule hipparchus_only_where_mathematics_is_done =
            only("org.hipparchus..").in("math", "motion", "stability", "study");

    @ArchTest
    static final ArchRule files_only_in_file = only(
                    "java.io..", "java.nio.file..", "java.nio.channels..", "java.util.zip..")
            .in("file");

    @ArchTest
    static final ArchRule no_windows_or_drawing =
            only("java.awt..", "javax.swing..", "javax.imageio..").in();

    @ArchTest
    static final ArchRule nothing_is_printed = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule chance_only_in_study = noClasses()
            .that()
            .resideOutsideOfPackage(ROOT + "study..")
            .should()
            .dependOnClassesThat(assignableTo(Random.class)
                    .or(assignableTo(SplittableRandom.class))
                    .or(resideInAPackage("java.util.random.."))
                    .or(resideInAPackage("org.hipparchus.random..")))
            .orShould()
            .callMethod(Math.class, "random");

    @ArchTest
    static final ArchRule no_streams_in_the_flight_loop = noClasses()
            .that()
            .resideInAnyPackage(ROOT + "aero..", ROOT + "motion..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.util.stream..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule no_fast_math =
            noClasses().should().dependOnClassesThat().haveFullyQualifiedName("org.hipparchus.util.FastMath");

    @ArchTest
    static final ArchRule numbers_are_formatted_in_quantity = noClasses()
            .that()
            .resideOutsideOfPackage(ROOT + "quantity..")
            .should()
            .callMethodWhere(aFormattingCall())
            .orShould()
            .dependOnClassesThat(assignableTo(Formatter.class).or(assignableTo(Format.class)));

    @ArchTest
    static final ArchRule records_stay_small = classes()
            .that(DescribedPredicate.describe("are records", JavaClass::isRecord))
            .should(haveFewComponents())
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule state_belongs_to_one_flight =
            noClasses().should().dependOnClassesThat().areAssignableTo(ThreadLocal.class);

    /** A rule about who may know some packages outside; {@code java.io.Serializable} is known by every enum. */
    private record Reserved(String... outside) {
        ArchRule in(String... allowed) {
            String[] places = new String[allowed.length];
            for (int i = 0; i < allowed.length; i++) {
                places[i] = ROOT + allowed[i] + "..";
            }
            return noClasses()
                    .that()
                    .resideOutsideOfPackages(places)
                    .should()
                    .dependOnClassesThat(JavaClass.Predicates.resideInAnyPackage(outside)
                            .and(DescribedPredicate.not(JavaClass.Predicates.type(java.io.Serializable.class))));
        }
    }

    private static Reserved only(String... outside) {
        return new Reserved(outside);
    }

    private static DescribedPredicate<JavaCall<?>> aFormattingCall() {
        Set<String> names = Set.of("format", "formatted", "printf");
        return DescribedPredicate.describe("that formats", call -> {
            JavaClass owner = call.getTargetOwner();
            return names.contains(call.getName())
                    && (owner.isEquivalentTo(String.class) || owner.isAssignableTo(PrintStream.class));
        });
    }

    private static ArchCondition<JavaClass> knowOnlyLowerLevels() {
        return new ArchCondition<>("know only lower levels") {
            @Override
            public void check(JavaClass origin, ConditionEvents events) {
                String here = topPackage(origin);
                if (!LEVELS.containsKey(here)) {
                    events.add(SimpleConditionEvent.violated(origin, origin.getName() + " has no level"));
                    return;
                }
                origin.getDirectDependenciesFromSelf().stream()
                        .filter(each -> each.getTargetClass().getName().startsWith(ROOT))
                        .filter(each -> !topPackage(each.getTargetClass()).equals(here))
                        .filter(each -> LEVELS.getOrDefault(topPackage(each.getTargetClass()), Integer.MAX_VALUE)
                                >= LEVELS.get(here))
                        .forEach(each -> events.add(SimpleConditionEvent.violated(each, each.getDescription())));
            }
        };
    }

    private static String topPackage(JavaClass type) {
        String below =
                type.getPackageName().substring(Math.min(type.getPackageName().length(), ROOT.length()));
        int dot = below.indexOf('.');
        return dot < 0 ? below : below.substring(0, dot);
    }

    private static ArchCondition<JavaClass> haveFewComponents() {
        return new ArchCondition<>("have at most " + MOST_COMPONENTS + " components") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                long components = type.getFields().stream()
                        .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
                        .count();
                if (components > MOST_COMPONENTS) {
                    events.add(SimpleConditionEvent.violated(type, type.getName() + " has " + components));
                }
            }
        };
    }
}
