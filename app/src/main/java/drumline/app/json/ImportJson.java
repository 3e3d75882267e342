package drumline.app.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import drumline.step.contour.Bore;
import drumline.step.contour.Recess;
import drumline.step.contour.Rim;
import drumline.step.contour.Step;
import drumline.step.feature.Found;
import drumline.step.piece.StepImport;
import drumline.step.piece.TurnedPiece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The report of an import as JSON; lengths in mm, angles in degrees. */
public final class ImportJson {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private ImportJson() {}

  /** The text. */
  public static String text(String fileName, StepImport imported) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("file", fileName);
    root.put("schemas", imported.schemas());
    root.put("name", imported.name());
    root.put("number", imported.number());
    root.put("faces", imported.faceCount());
    root.put("problems", imported.problems().stream().map(p -> p.toLine()).toList());
    imported.piece().ifPresent(piece -> piece(piece, root));
    try {
      return MAPPER.writeValueAsString(root);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void piece(TurnedPiece piece, Map<String, Object> root) {
    root.put("lengthMm", round(piece.lengthMm()));
    root.put("outside", piece.outside().stream().map(ImportJson::step).toList());
    root.put("frontBore", piece.bores().front().stream().map(ImportJson::bore).toList());
    root.put("backBore", piece.bores().back().stream().map(ImportJson::bore).toList());
    root.put("grooves", piece.grooves().stream().map(ImportJson::groove).toList());
    List<Object> features = new ArrayList<>();
    piece.features().forEach(feature -> features.add(feature(feature)));
    root.put("features", features);
    piece
        .bar()
        .ifPresent(
            bar -> {
              root.put("barSideCount", bar.sides());
              root.put("barAcrossMm", round(bar.across()));
            });
    root.put("notes", piece.notes());
  }

  private static double round(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }

  private static Map<String, Object> step(Step step) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("fromMm", round(step.z0()));
    map.put("toMm", round(step.z1()));
    map.put("startDiameterMm", round(2 * step.r0()));
    map.put("endDiameterMm", round(2 * step.r1()));
    map.put("turned", step.isTurned());
    rim(map, "frontEdge", step.front());
    rim(map, "backEdge", step.back());
    return map;
  }

  private static void rim(Map<String, Object> map, String key, Rim rim) {
    if (rim.isMeasured()) {
      Map<String, Object> edge = new LinkedHashMap<>();
      edge.put("kind", rim.kind().name().toLowerCase(Locale.ROOT));
      edge.put("sizeMm", round(rim.sizeMm()));
      if (rim.kind() == Rim.Kind.CHAMFER) {
        edge.put("angleDeg", round(rim.angleDeg()));
      }
      map.put(key, edge);
    }
  }

  private static Map<String, Object> bore(Bore bore) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("fromDepthMm", round(bore.from()));
    map.put("toDepthMm", round(bore.to()));
    map.put("startDiameterMm", round(2 * bore.startR()));
    map.put("endDiameterMm", round(2 * bore.endR()));
    map.put("bottom", bore.bottom().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    rim(map, "mouthEdge", bore.mouth());
    return map;
  }

  private static Map<String, Object> groove(Recess groove) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("place", groove.place().name().toLowerCase(Locale.ROOT));
    map.put("fromMm", round(groove.z0()));
    map.put("toMm", round(groove.z1()));
    map.put("diameterMm", round(2 * groove.r()));
    if (groove.place() == Recess.Place.FACE) {
      map.put("outerDiameterMm", round(2 * groove.outerR()));
    }
    return map;
  }

  private static Map<String, Object> feature(Found feature) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("kind", feature.kind());
    for (Map.Entry<String, Object> entry : feature.values().entrySet()) {
      if (entry.getValue() instanceof Found.Mm length) {
        map.put(entry.getKey() + "Mm", round(length.mm()));
      } else if (entry.getValue() instanceof Found.Deg angle) {
        map.put(entry.getKey() + "Deg", round(angle.deg()));
      } else {
        map.put(entry.getKey(), entry.getValue());
      }
    }
    return map;
  }
}
