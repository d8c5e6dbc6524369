package org.shutoffbench.controller.conformance;

import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Loads strategies and signal blocks anew with a call to {@link OperationCounter} before every arithmetic instruction: addition,
 * subtraction, multiplication, division, remainder, negation, shift and bit operation on int, long, float and double,
 * and each call of a function of {@link Math}. Comparisons, moves, loads and stores are not counted.
 */
final class CountingLoader extends ClassLoader {

    private static final String STRATEGIES = "org.shutoffbench.controller.strategy.";
    private static final String SIGNALS = "org.shutoffbench.controller.signal.";
    private static final String COUNTER = Type.getInternalName(OperationCounter.class);

    CountingLoader() {
        super(OperationCounter.class.getClassLoader());
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (!name.startsWith(STRATEGIES) && !name.startsWith(SIGNALS)) {
            return super.loadClass(name, resolve);
        }
        Class<?> loaded = findLoadedClass(name);
        return loaded != null ? loaded : counted(name);
    }

    private Class<?> counted(String name) throws ClassNotFoundException {
        try (InputStream file = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
            if (file == null) {
                throw new ClassNotFoundException(name);
            }
            ClassReader reader = new ClassReader(file);
            ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
            reader.accept(new CountedClass(writer), 0);
            byte[] code = writer.toByteArray();
            return defineClass(name, code, 0, code.length);
        } catch (IOException unreadable) {
            throw new ClassNotFoundException(name, unreadable);
        }
    }

    private static final class CountedClass extends ClassVisitor {

        CountedClass(ClassVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public MethodVisitor visitMethod(
                int access,
                String name,
                String descriptor,
                @Nullable String signature,
                String @Nullable [] exceptions) {
            return new CountedMethod(super.visitMethod(access, name, descriptor, signature, exceptions));
        }
    }

    private static final class CountedMethod extends MethodVisitor {

        CountedMethod(MethodVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public void visitInsn(int opcode) {
            if (opcode >= Opcodes.IADD && opcode <= Opcodes.LXOR) {
                count();
            }
            super.visitInsn(opcode);
        }

        @Override
        public void visitIincInsn(int variable, int increment) {
            count();
            super.visitIincInsn(variable, increment);
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
            if (owner.equals("java/lang/Math")) {
                count();
            }
            super.visitMethodInsn(opcode, owner, name, descriptor, isInterface);
        }

        private void count() {
            super.visitMethodInsn(Opcodes.INVOKESTATIC, COUNTER, "count", "()V", false);
        }
    }
}
