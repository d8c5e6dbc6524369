package org.shutoffbench.harness;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.GivenClassesConjunction;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * The walls of the house. Each rule that lets something through says what and why. {@code allowEmptyShould} stands where
 * a room may be empty.
 */
class ArchitectureTest {

    private static final String[] JOINT_MODEL = {
        "org.shutoffbench.joint..",
        "org.shutoffbench.tool..",
        "org.shutoffbench.plant..",
        "org.shutoffbench.sensor..",
        "org.shutoffbench.draw.."
    };
    private static final String CONTROLLERS = "org.shutoffbench.controller..";
    private static final String HARNESS = "org.shutoffbench.harness..";
    private static final String JDK = "java..";

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(location -> !location.contains("-tests.jar"))
            .importPackages("org.shutoffbench");

    /** A rule over classes that were not found would hold whatever they do. */
    @Test
    void theHouseHasAllItsRooms() {
        assertThat(HOUSE).anyMatch(resideInAnyPackage(JOINT_MODEL));
        assertThat(HOUSE).anyMatch(resideInAPackage(CONTROLLERS));
        assertThat(HOUSE).anyMatch(resideInAPackage(HARNESS));
    }

    @Test
    void everyClassLivesInARoomOfTheHouse() {
        check(classes()
                .should()
                .resideInAnyPackage(
                        "org.shutoffbench.joint..",
                        "org.shutoffbench.tool..",
                        "org.shutoffbench.plant..",
                        "org.shutoffbench.sensor..",
                        "org.shutoffbench.draw..",
                        CONTROLLERS,
                        HARNESS)
                .because("the rooms are few and known; a new one is a decision to record"));
    }

    @Nested
    class Rooms {

        @Test
        void controllersKnowsNothingOfJointModelOrHarness() {
            check(noClasses()
                    .that()
                    .resideInAPackage(CONTROLLERS)
                    .should()
                    .dependOnClassesThat(resideInAnyPackage(JOINT_MODEL).or(resideInAPackage(HARNESS)))
                    .because("a strategy sees samples, never the truth"));
        }

        @Test
        void jointModelKnowsNothingOfControllersOrHarness() {
            check(noClasses()
                    .that()
                    .resideInAnyPackage(JOINT_MODEL)
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(CONTROLLERS, HARNESS)
                    .because("the physics does not depend on who listens to it"));
        }

        @Test
        void controllersUsesTheJdkAndEjmlOnly() {
            check(classes()
                    .that()
                    .resideInAPackage(CONTROLLERS)
                    .should()
                    .onlyDependOnClassesThat(resideInAnyPackage(CONTROLLERS, JDK, "org.ejml..", "org.jspecify..")
                            .or(MEASURING_ALLOCATION))
                    .because("what runs in a tool's firmware brings nothing else along"));
        }

        @Test
        void jointModelUsesTheJdkCommonsAndEjmlOnly() {
            check(classes()
                    .that()
                    .resideInAnyPackage(JOINT_MODEL)
                    .should()
                    .onlyDependOnClassesThat(resideInAnyPackage(JOINT_MODEL)
                            .or(resideInAnyPackage(
                                    JDK,
                                    "org.apache.commons.math3..",
                                    "org.apache.commons.statistics..",
                                    "org.apache.commons.numbers..",
                                    "org.apache.commons.rng..",
                                    "org.ejml..",
                                    "org.jspecify..")))
                    .because("the physics stays readable without a framework"));
        }
    }

    /** Firmware has no wall clock, no dice, no threads and no heap to spare. */
    @Nested
    class Firmware {

        @Test
        void hasNoClock() {
            check(noFirmware()
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("java.time..")
                    .orShould()
                    .callMethodWhere(target(owner(assignableTo(System.class)))
                            .and(target(nameMatching("nanoTime|currentTimeMillis"))))
                    .because("time is the number of ticks since arming"));
        }

        @Test
        void hasNoRandomness() {
            check(noFirmware()
                    .should()
                    .dependOnClassesThat(resideInAPackage("java.util.random..")
                            .or(assignableTo(java.util.Random.class))
                            .or(assignableTo(java.util.SplittableRandom.class))
                            .or(assignableTo(java.util.UUID.class)))
                    .orShould()
                    .callMethodWhere(target(owner(assignableTo(Math.class).or(assignableTo(StrictMath.class))))
                            .and(target(name("random"))))
                    .because("randomness that belongs to an operator reaches a strategy as a setting"));
        }

        @Test
        void hasNoStreams() {
            check(noFirmware()
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("java.util.stream..")
                    .because("a stream allocates, and a tick must not"));
        }

        @Test
        void hasNoThreads() {
            check(noFirmware()
                    .should()
                    .dependOnClassesThat(resideInAPackage("java.util.concurrent..")
                            .or(assignableTo(Thread.class))
                            .or(assignableTo(ThreadLocal.class))
                            .or(assignableTo(java.util.Timer.class)))
                    .because("one caller ticks a strategy; nothing runs beside it"));
        }

        @Test
        void hasNoMutableStatics() {
            check(fields().that()
                    .areDeclaredInClassesThat(FIRMWARE)
                    .and()
                    .areStatic()
                    .should()
                    .beFinal()
                    .because("arming one instance must not touch another"));
        }
    }

    @Nested
    class Harness {

        @Test
        void picocliStaysInTheCommandLine() {
            checkStaysIn("org.shutoffbench.harness.cli..", resideInAPackage("picocli.."));
        }

        @Test
        void theWebServerStaysInTheLesson() {
            checkStaysIn("org.shutoffbench.harness.lesson..", resideInAPackage("com.sun.net.httpserver.."));
        }

        @Test
        void theParquetLibraryStaysInTheRecordsExport() {
            checkStaysIn(
                    "org.shutoffbench.harness.record.export..",
                    resideInAnyPackage("blue.strategic..", "org.apache.parquet..", "org.apache.hadoop.."));
        }

        @Test
        void yamlStaysInTheScenario() {
            checkStaysIn(
                    "org.shutoffbench.harness.scenario..",
                    resideInAnyPackage("org.snakeyaml..", "org.yaml..", "tools.jackson.dataformat.yaml.."));
        }
    }

    /**
     * The conformance suite is exempt from the firmware rules: it is the test bench that strategies are put on, not
     * firmware, and so may draw, stream and watch threads.
     */
    private static final DescribedPredicate<JavaClass> FIRMWARE = resideInAPackage(CONTROLLERS)
            .and(not(resideInAPackage("org.shutoffbench.controller.conformance..")))
            .as("firmware");

    /** The JDK's own extension that counts a thread's allocated bytes: the conformance suite needs it. */
    private static final DescribedPredicate<JavaClass> MEASURING_ALLOCATION = resideInAPackage("com.sun.management..");

    private static GivenClassesConjunction noFirmware() {
        return noClasses().that(FIRMWARE);
    }

    private static void checkStaysIn(String room, DescribedPredicate<JavaClass> library) {
        check(noClasses()
                .that()
                .resideOutsideOfPackage(room)
                .should()
                .dependOnClassesThat(library)
                .because("one room alone knows this library"));
    }

    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(HOUSE);
    }
}
