package understorey.pages.templates;

import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * Shows templates the components of records, and of no other object anything: no method can be called, no class
 * reached. Written out because the engine's own way to records asks the desktop module's bean introspection,
 * which costs a cold start a tenth of a second, and shows methods unless told not to.
 */
final class RecordWrapper extends DefaultObjectWrapper {

    private final Map<Class<?>, Map<String, Method>> accessors = new ConcurrentHashMap<>();

    RecordWrapper() {
        super(Configuration.VERSION_2_3_34);
    }

    @Override
    protected TemplateModel handleUnknownType(Object object) throws TemplateModelException {
        if (object instanceof Record) {
            return new RecordModel(object, accessors.computeIfAbsent(object.getClass(), RecordWrapper::accessors));
        }
        throw new TemplateModelException("a template may not see a " + object.getClass().getSimpleName());
    }

    private static Map<String, Method> accessors(Class<?> type) {
        Map<String, Method> accessors = new HashMap<>();
        for (RecordComponent component : type.getRecordComponents()) {
            accessors.put(component.getName(), component.getAccessor());
        }
        return accessors;
    }

    /** One record, read by the names of its components. */
    private final class RecordModel implements TemplateHashModel {

        private final Object record;
        private final Map<String, Method> shown;

        RecordModel(Object record, Map<String, Method> shown) {
            this.record = record;
            this.shown = shown;
        }

        @Override
        public @Nullable TemplateModel get(String name) throws TemplateModelException {
            Method accessor = shown.get(name);
            if (accessor == null) {
                return null;
            }
            try {
                return wrap(accessor.invoke(record));
            } catch (ReflectiveOperationException fault) {
                throw new TemplateModelException("cannot read '" + name + "'", fault);
            }
        }

        @Override
        public boolean isEmpty() {
            return shown.isEmpty();
        }
    }
}
