package drumline.store.fault;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.store.api.StoreSettings;
import drumline.store.api.StoreSettings.AtServer;
import drumline.store.api.StoreSettings.InFolder;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Source: [XDG] 0.7, section Environment variables. */
class SettingsTest {
  private static final Path HOME = Path.of("/home/ana");

  private static StoreSettings usual(Map<String, String> environment) {
    return StoreSettings.usual(environment, HOME);
  }

  @Test
  void withoutAnySettingItIsTheUsersShareFolder() {
    InFolder usual = new InFolder(Path.of("/home/ana/.local/share/drumline"));
    assertThat(usual(Map.of())).isEqualTo(usual);
    assertThat(usual(Map.of("XDG_DATA_HOME", ""))).isEqualTo(usual);
    assertThat(usual(Map.of("XDG_DATA_HOME", "relative"))).isEqualTo(usual);
    assertThat(usual.file()).isEqualTo(Path.of("/home/ana/.local/share/drumline/drumline.db"));
  }

  @Test
  void settingsGoBeforeOneAnother() {
    assertThat(usual(Map.of("XDG_DATA_HOME", "/data")))
        .isEqualTo(new InFolder(Path.of("/data/drumline")));
    assertThat(usual(Map.of("XDG_DATA_HOME", "/data", "DRUMLINE_DATA", "/shop")))
        .isEqualTo(new InFolder(Path.of("/shop")));
    assertThat(usual(Map.of("DRUMLINE_DATA", "/shop", "DRUMLINE_DATABASE", "postgresql://h/d")))
        .isEqualTo(new AtServer("postgresql://h/d"));
  }
}
