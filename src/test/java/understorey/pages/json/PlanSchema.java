package understorey.pages.json;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.util.List;

/** {@code plan.json} held to its schema by an independent validator. */
public final class PlanSchema {

    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(PlanJson.schema());

    private PlanSchema() {
    }

    /** Where a document differs from the schema; empty for none. */
    public static List<String> faults(String json) {
        return SCHEMA.validate(json, InputFormat.JSON).stream().map(ValidationMessage::toString).toList();
    }
}
