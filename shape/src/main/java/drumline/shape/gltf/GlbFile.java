package drumline.shape.gltf;

import drumline.shape.mesh.Mark;
import drumline.shape.mesh.TriangleMesh;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A mesh as a binary glTF file: one primitive and one material for each mark, positions and
 * normals, no textures. The node turns the piece's axis into x and millimetres into metres.
 *
 * <p>Source: [GLTF] 2.0, sections 3 and 4, from memory.
 */
public final class GlbFile {
  private static final int MAGIC = 0x46546C67;
  private static final int JSON = 0x4E4F534A;
  private static final int BIN = 0x004E4942;
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_INT = 5125;
  private static final int ARRAY = 34962;
  private static final int ELEMENT_ARRAY = 34963;
  private static final int FLOATS = 6;

  private final List<String> accessors = new ArrayList<>();
  private final List<String> views = new ArrayList<>();
  private final List<String> primitives = new ArrayList<>();
  private final List<String> materials = new ArrayList<>();
  private final List<byte[]> buffers = new ArrayList<>();
  private int byteCount;

  private GlbFile() {}

  /**
   * The file's bytes.
   *
   * @param name name of the piece
   */
  public static byte[] of(TriangleMesh mesh, String name) {
    GlbFile file = new GlbFile();
    MeshNormals normals = new MeshNormals(mesh);
    for (Mark mark : Mark.values()) {
      file.primitive(mesh, normals, mark);
    }
    return file.bytes(name);
  }

  private void primitive(TriangleMesh mesh, MeshNormals normals, Mark mark) {
    Map<List<Float>, Integer> names = new HashMap<>();
    List<List<Float>> vertices = new ArrayList<>();
    List<Integer> indices = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      if (mesh.mark(t) == mark) {
        for (int k = 0; k < 3; k++) {
          List<Float> vertex = vertex(mesh, normals, t, k);
          Integer known = names.putIfAbsent(vertex, vertices.size());
          indices.add(known == null ? vertices.size() : known);
          if (known == null) {
            vertices.add(vertex);
          }
        }
      }
    }
    if (!indices.isEmpty()) {
      write(mark, vertices, indices);
    }
  }

  private static List<Float> vertex(TriangleMesh mesh, MeshNormals normals, int t, int k) {
    double[] n = normals.at(t, k);
    int v = mesh.corner(t, k);
    return List.of(
        (float) mesh.at(v, 0),
        (float) mesh.at(v, 1),
        (float) mesh.at(v, 2),
        (float) n[0],
        (float) n[1],
        (float) n[2]);
  }

  private void write(Mark mark, List<List<Float>> vertices, List<Integer> indices) {
    int first = accessors.size();
    float[] low = {Float.MAX_VALUE, Float.MAX_VALUE, Float.MAX_VALUE};
    float[] high = {-Float.MAX_VALUE, -Float.MAX_VALUE, -Float.MAX_VALUE};
    ByteBuffer positions = buffer(vertices.size() * 12);
    ByteBuffer directions = buffer(vertices.size() * 12);
    for (List<Float> vertex : vertices) {
      for (int k = 0; k < FLOATS; k++) {
        (k < 3 ? positions : directions).putFloat(vertex.get(k));
        if (k < 3) {
          low[k] = Math.min(low[k], vertex.get(k));
          high[k] = Math.max(high[k], vertex.get(k));
        }
      }
    }
    ByteBuffer corners = buffer(indices.size() * 4);
    indices.forEach(corners::putInt);
    String bounds = ",\"min\":" + numbers(low) + ",\"max\":" + numbers(high);
    accessor(view(positions, ARRAY), FLOAT, vertices.size(), "VEC3", bounds);
    accessor(view(directions, ARRAY), FLOAT, vertices.size(), "VEC3", "");
    accessor(view(corners, ELEMENT_ARRAY), UNSIGNED_INT, indices.size(), "SCALAR", "");
    primitives.add(
        String.format(
            Locale.ROOT,
            "{\"attributes\":{\"POSITION\":%d,\"NORMAL\":%d},\"indices\":%d,\"material\":%d,\"mode\":4}",
            first,
            first + 1,
            first + 2,
            materials.size()));
    materials.add(material(mark));
  }

  private static String numbers(float[] values) {
    return "[" + values[0] + "," + values[1] + "," + values[2] + "]";
  }

  private static String material(Mark mark) {
    double[] colour =
        switch (mark) {
          case TURNED -> new double[] {0.62, 0.65, 0.68};
          case BORED -> new double[] {0.50, 0.54, 0.58};
          case BAR -> new double[] {0.36, 0.38, 0.40};
          case MILLED -> new double[] {0.55, 0.62, 0.70};
          case DRILLED -> new double[] {0.42, 0.48, 0.56};
          case THREAD -> new double[] {0.72, 0.58, 0.30};
          case KNURL -> new double[] {0.58, 0.50, 0.38};
        };
    return String.format(
        Locale.ROOT,
        "{\"name\":\"%s\",\"pbrMetallicRoughness\":{\"baseColorFactor\":[%.2f,%.2f,%.2f,1],"
            + "\"metallicFactor\":0.35,\"roughnessFactor\":0.45}}",
        mark.name().toLowerCase(Locale.ROOT),
        colour[0],
        colour[1],
        colour[2]);
  }

  private static byte[] bytes(ByteBuffer full) {
    byte[] bytes = new byte[full.capacity()];
    full.rewind().get(bytes);
    return bytes;
  }

  private static ByteBuffer buffer(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private int view(ByteBuffer content, int target) {
    byte[] bytes = bytes(content);
    views.add(
        String.format(
            Locale.ROOT,
            "{\"buffer\":0,\"byteOffset\":%d,\"byteLength\":%d,\"target\":%d}",
            byteCount,
            bytes.length,
            target));
    buffers.add(bytes);
    byteCount += bytes.length;
    return views.size() - 1;
  }

  private void accessor(int view, int component, int count, String type, String bounds) {
    accessors.add(
        String.format(
            Locale.ROOT,
            "{\"bufferView\":%d,\"componentType\":%d,\"count\":%d,\"type\":\"%s\"%s}",
            view,
            component,
            count,
            type,
            bounds));
  }

  private byte[] bytes(String name) {
    String json =
        "{\"asset\":{\"version\":\"2.0\",\"generator\":\"Drumline\"},\"scene\":0,"
            + "\"scenes\":[{\"nodes\":[0]}],\"nodes\":[{\"mesh\":0,\"name\":"
            + quoted(name)
            + ",\"rotation\":[0,0.70710678,0,0.70710678],\"scale\":[0.001,0.001,0.001]}],"
            + "\"meshes\":[{\"primitives\":["
            + String.join(",", primitives)
            + "]}],\"materials\":["
            + String.join(",", materials)
            + "],\"accessors\":["
            + String.join(",", accessors)
            + "],\"bufferViews\":["
            + String.join(",", views)
            + "],\"buffers\":[{\"byteLength\":"
            + byteCount
            + "}]}";
    byte[] text = json.getBytes(StandardCharsets.UTF_8);
    byte[] padded = Arrays.copyOf(text, (text.length + 3) / 4 * 4);
    Arrays.fill(padded, text.length, padded.length, (byte) ' ');
    ByteBuffer file = buffer(12 + 8 + padded.length + 8 + byteCount);
    file.putInt(MAGIC).putInt(2).putInt(file.capacity());
    file.putInt(padded.length).putInt(JSON).put(padded);
    file.putInt(byteCount).putInt(BIN);
    buffers.forEach(file::put);
    return bytes(file);
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        quoted.append('\\').append(c);
      } else if (c < ' ') {
        quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else {
        quoted.append(c);
      }
    }
    return quoted.append('"').toString();
  }
}
