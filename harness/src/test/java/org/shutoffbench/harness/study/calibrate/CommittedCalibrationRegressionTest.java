package org.shutoffbench.harness.study.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.strategy.adaptive.AdaptiveEstimation;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.ReferenceTools;

/** The committed calibrations are the command's output. If the plant moved, look at the errors in the new file first. */
class CommittedCalibrationRegressionTest {

    private static final int JOINTS = 240;
    private static final StrategyDescriptor STRATEGY = new AdaptiveEstimation().descriptor();

    @ParameterizedTest
    @ValueSource(strings = {"light", "heavy"})
    void theCommittedFileIsWhatTheCommandWrites(String name) throws IOException {
        ImpactTool tool = name.equals("light") ? ReferenceTools.LIGHT : ReferenceTools.HEAVY;
        Calibration calibration = Calibration.of(tool, JOINTS);
        CalibrationCheck check = CalibrationCheck.of(tool, calibration, JOINTS, JOINTS);
        String written = CalibrationFile.text(name, JOINTS, calibration, check);
        assertThat(Files.readString(Path.of("../docs/examples/calibration", name + ".json")))
                .isEqualTo(written);
    }

    @Test
    void theDefaultsAreTheLightToolsCalibration() {
        Calibration light = Calibration.of(ReferenceTools.LIGHT, JOINTS);
        for (Setting setting : STRATEGY.settings()) {
            if (setting.role() == Setting.Role.LEARNED) {
                assertThat(setting.byDefault()).as(setting.name()).isEqualTo(light.value(setting.name()));
            }
        }
    }
}
