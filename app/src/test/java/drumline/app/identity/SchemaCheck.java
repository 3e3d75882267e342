package drumline.app.identity;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** Holds a JSON text against a schema with com.networknt:json-schema-validator 2.0.8. */
final class SchemaCheck {
  private SchemaCheck() {}

  static List<String> faults(String schema, String json) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(schema)
        .validate(json, InputFormat.JSON)
        .stream()
        .map(Error::toString)
        .toList();
  }
}
