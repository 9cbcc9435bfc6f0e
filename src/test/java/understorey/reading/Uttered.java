package understorey.reading;

import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassReader;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.ClassWriter;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Handle;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.MethodVisitor;
import com.tngtech.archunit.thirdparty.org.objectweb.asm.Opcodes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Loads the readers a second time, with a note at each text that they use: a constant, or what is put together from constants and
 * values. A text of several words is taken for something that a person reads.
 */
public final class Uttered extends ClassLoader {

    private static final Set<String> TEXTS = new TreeSet<>();

    private final Path classes;

    Uttered(Path classes) {
        super(Uttered.class.getClassLoader());
        this.classes = classes;
        TEXTS.clear();
    }

    /** Called by the classes that are loaded here. */
    public static void note(String text) {
        TEXTS.add(text);
    }

    /** The texts noted so far. */
    static Set<String> texts() {
        return new TreeSet<>(TEXTS);
    }

    /** All texts of a class file, each after the name of its class. */
    static Set<String> all(Path file) throws IOException {
        Set<String> texts = new TreeSet<>();
        new ClassReader(Files.readAllBytes(file)).accept(new Texts(null, texts::add), 0);
        return texts;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        Path file = classes.resolve(name.replace('.', '/') + ".class");
        Class<?> loaded = findLoadedClass(name);
        if (loaded != null || !Files.exists(file)) {
            return loaded != null ? loaded : super.loadClass(name, resolve);
        }
        try {
            byte[] bytes = Files.readAllBytes(file);
            if (name.matches("understorey\\.(yaml|reading)\\..*")) {
                ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);
                new ClassReader(bytes).accept(new Texts(out, text -> { }), 0);
                bytes = out.toByteArray();
            }
            return defineClass(name, bytes, 0, bytes.length);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Finds the texts of a class, and writes it anew with a note at each where there is a writer. */
    private static final class Texts extends ClassVisitor {

        private final ClassWriter out;
        private final Consumer<String> found;
        private String of = "";

        Texts(ClassWriter out, Consumer<String> found) {
            super(Opcodes.ASM9, out);
            this.out = out;
            this.found = found;
        }

        @Override
        public void visit(int version, int access, String name, String signature, String above, String[] interfaces) {
            of = name.substring(name.lastIndexOf('/') + 1).replaceFirst("\\$.*", "");
            super.visit(version, access, name, signature, above, interfaces);
        }

        @Override
        public MethodVisitor visitMethod(int access, String name, String descriptor, String signature, String[] exceptions) {
            return new MethodVisitor(Opcodes.ASM9, super.visitMethod(access, name, descriptor, signature, exceptions)) {

                @Override
                public void visitLdcInsn(Object value) {
                    if (value instanceof String text) {
                        noted(text);
                    }
                    super.visitLdcInsn(value);
                }

                @Override
                public void visitInvokeDynamicInsn(String called, String types, Handle handle, Object... arguments) {
                    if (called.equals("makeConcatWithConstants")) {
                        noted((String) arguments[0]);
                    }
                    super.visitInvokeDynamicInsn(called, types, handle, arguments);
                }

                private void noted(String constant) {
                    String text = of + ": " + constant.replace("\u0001", "…");
                    if (constant.matches(".*(\\p{L}{2}|')[ ,:;].*|.*[ ]\\p{L}{2}.*")) {
                        found.accept(text);
                        if (out != null) {
                            super.visitLdcInsn(text);
                            super.visitMethodInsn(Opcodes.INVOKESTATIC, Uttered.class.getName().replace('.', '/'), "note", "(Ljava/lang/String;)V", false);
                        }
                    }
                }
            };
        }
    }
}
