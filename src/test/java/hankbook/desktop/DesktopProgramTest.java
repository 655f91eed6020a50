package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class DesktopProgramTest {
  @Test
  void withoutADisplayOnLinuxOneSentenceSaysSo() {
    assertThat(DesktopProgram.noDisplay(properties("Linux", ""), Map.of())).contains("There is no display to open a window on.");
  }

  @Test
  void aDisplayOfEitherKindOrAHeadlessWindowWillDo() {
    assertThat(DesktopProgram.noDisplay(properties("Linux", ""), Map.of("DISPLAY", ":0"))).isEmpty();
    assertThat(DesktopProgram.noDisplay(properties("Linux", ""), Map.of("WAYLAND_DISPLAY", "wayland-0"))).isEmpty();
    assertThat(DesktopProgram.noDisplay(properties("Linux", "Headless"), Map.of())).isEmpty();
    assertThat(DesktopProgram.noDisplay(properties("Mac OS X", ""), Map.of())).isEmpty();
  }

  private static Properties properties(String system, String platform) {
    Properties properties = new Properties();
    properties.setProperty("os.name", system);
    properties.setProperty("glass.platform", platform);
    return properties;
  }
}
