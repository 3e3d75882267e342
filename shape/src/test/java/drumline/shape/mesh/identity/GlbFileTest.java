package drumline.shape.mesh.identity;

import static drumline.shape.Prints.step;
import static drumline.shape.Prints.tolerance;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shape.Prints;
import drumline.shape.gltf.GlbFile;
import drumline.shape.mesh.PieceMesh;
import drumline.shape.mesh.TriangleMesh;
import drumline.shop.feature.Flats;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The binary file keeps the form that [GLTF] 2.0 asks for. */
class GlbFileTest {
  private static final Pattern ACCESSOR =
      Pattern.compile(
          "\\{\"bufferView\":(\\d+),\"componentType\":(\\d+),\"count\":(\\d+),\"type\":\"(\\w+)\""
              + "(?:,\"min\":\\[([^]]*)],\"max\":\\[([^]]*)])?}");
  private static final Pattern VIEW =
      Pattern.compile("\"byteOffset\":(\\d+),\"byteLength\":(\\d+),\"target\":(\\d+)");

  private static Part part() {
    Flats flats = new Flats("f", 5, 12, 17, 2, Flats.Method.AUTO, tolerance("±0.1"));
    return Prints.part(20, List.of(step("a", 0, 20, 20)), List.of(), List.of(), List.of(flats));
  }

  @Test
  void chunksAccessorsAndNumbersAreAsTheStandardAsks() {
    TriangleMesh mesh = PieceMesh.of(part(), new Bar(Bar.Shape.ROUND, 22, 0, "h9", 3000));
    ByteBuffer file =
        ByteBuffer.wrap(GlbFile.of(mesh, "a \"b\"\n\\")).order(ByteOrder.LITTLE_ENDIAN);
    assertThat(file.getInt()).isEqualTo(0x46546C67);
    assertThat(file.getInt()).isEqualTo(2);
    assertThat(file.getInt()).isEqualTo(file.capacity());
    int jsonLength = file.getInt();
    assertThat(jsonLength % 4).isZero();
    assertThat(file.getInt()).isEqualTo(0x4E4F534A);
    byte[] text = new byte[jsonLength];
    file.get(text);
    String json = new String(text, StandardCharsets.UTF_8);
    assertThat(json).startsWith("{\"asset\":{\"version\":\"2.0\"");
    assertThat(json.stripTrailing()).endsWith("}");
    int binLength = file.getInt();
    assertThat(binLength % 4).isZero();
    assertThat(file.getInt()).isEqualTo(0x004E4942);
    assertThat(file.remaining()).isEqualTo(binLength);
    assertThat(json).contains("\"buffers\":[{\"byteLength\":" + binLength + "}]");
    assertThat(json).contains("\"name\":\"a \\\"b\\\"\\u000a\\\\\"");
    int triangles = content(json, file.slice().order(ByteOrder.LITTLE_ENDIAN));
    assertThat(triangles).isEqualTo(mesh.triangleCount());
  }

  /** Checks views and accessors; gives the number of triangles. */
  private static int content(String json, ByteBuffer bin) {
    List<int[]> views = new ArrayList<>();
    Matcher view = VIEW.matcher(json);
    int reached = 0;
    while (view.find()) {
      int offset = Integer.parseInt(view.group(1));
      assertThat(offset).isEqualTo(reached);
      assertThat(offset % 4).isZero();
      reached = offset + Integer.parseInt(view.group(2));
      views.add(new int[] {offset, Integer.parseInt(view.group(2))});
    }
    assertThat(reached).isEqualTo(bin.capacity());
    Matcher accessor = ACCESSOR.matcher(json);
    int triangles = 0;
    int vertices = 0;
    while (accessor.find()) {
      int[] own = views.get(Integer.parseInt(accessor.group(1)));
      int count = Integer.parseInt(accessor.group(3));
      if (accessor.group(4).equals("SCALAR")) {
        assertThat(accessor.group(2)).isEqualTo("5125");
        assertThat(own[1]).isEqualTo(4 * count);
        for (int i = 0; i < count; i++) {
          assertThat(bin.getInt(own[0] + 4 * i)).isBetween(0, vertices - 1);
        }
        triangles += count / 3;
      } else {
        assertThat(accessor.group(2)).isEqualTo("5126");
        assertThat(own[1]).isEqualTo(12 * count);
        vertices = count;
        vectors(accessor, bin, own[0], count);
      }
    }
    return triangles;
  }

  private static void vectors(Matcher accessor, ByteBuffer bin, int offset, int count) {
    boolean isPosition = accessor.group(5) != null;
    float[] low = {1e9f, 1e9f, 1e9f};
    float[] high = {-1e9f, -1e9f, -1e9f};
    for (int i = 0; i < count; i++) {
      double length = 0;
      for (int k = 0; k < 3; k++) {
        float value = bin.getFloat(offset + 12 * i + 4 * k);
        low[k] = Math.min(low[k], value);
        high[k] = Math.max(high[k], value);
        length += value * value;
      }
      if (!isPosition) {
        assertThat(Math.sqrt(length)).isCloseTo(1, within(1e-5));
      }
    }
    if (isPosition) {
      assertThat(accessor.group(5)).isEqualTo(low[0] + "," + low[1] + "," + low[2]);
      assertThat(accessor.group(6)).isEqualTo(high[0] + "," + high[1] + "," + high[2]);
    }
  }
}
