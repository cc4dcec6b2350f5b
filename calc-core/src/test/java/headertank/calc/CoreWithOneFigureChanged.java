package headertank.calc;

import headertank.calc.coreclass.StandardCoreClasses;
import headertank.calc.duty.StandardDuties;
import headertank.calc.verdict.StandardPolicy;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

/**
 * This library loaded a second time with one number of one class changed in its bytes: what a stated figure moves is then
 * seen from {@link Rater} without a way in that only tests would use.
 */
final class CoreWithOneFigureChanged extends ClassLoader {

    private static final String OURS = "headertank.calc.";
    private static final byte DOUBLE_CONSTANT = 6;

    private final String changedClass;
    private final byte[] before;
    private final byte[] after;
    private int changes;

    private CoreWithOneFigureChanged(String changedClass, double before, double after) {
        super(CoreWithOneFigureChanged.class.getClassLoader());
        this.changedClass = changedClass;
        this.before = constant(before);
        this.after = constant(after);
    }

    /**
     * @param changed the class that states the figure
     * @param before the figure as it is
     * @param after the figure to put in its place
     * @param question a class with a public constructor without parameters, asked inside the changed library
     * @return what it answers
     * @throws AssertionError when the class does not hold the figure exactly once
     */
    static double[] ask(Class<?> changed, double before, double after, Class<? extends Supplier<double[]>> question) {
        CoreWithOneFigureChanged loader = new CoreWithOneFigureChanged(changed.getName(), before, after);
        try {
            Object asked = loader.loadClass(question.getName())
                    .getDeclaredConstructor()
                    .newInstance();
            double[] answer = (double[]) ((Supplier<?>) asked).get();
            if (loader.changes != 1) {
                throw new AssertionError(changed + " holds " + before + " " + loader.changes + " times");
            }
            return answer;
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    /** @return a rater of the library that calls it, made without looking for plug-ins, which are those of the first one */
    static Rater rater() {
        return Rater.with(
                List.of(),
                List.of(new StandardPolicy()),
                List.of(new StandardDuties()),
                List.of(new StandardCoreClasses()));
    }

    private static byte[] constant(double value) {
        return ByteBuffer.allocate(9).put(DOUBLE_CONSTANT).putDouble(value).array();
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (!name.startsWith(OURS)) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> loaded = findLoadedClass(name);
            if (loaded == null) {
                byte[] bytes = bytes(name);
                loaded = defineClass(name, bytes, 0, bytes.length);
            }
            return loaded;
        }
    }

    private byte[] bytes(String name) throws ClassNotFoundException {
        try (InputStream in = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
            if (in == null) {
                throw new ClassNotFoundException(name);
            }
            byte[] bytes = in.readAllBytes();
            return name.equals(changedClass) ? changed(bytes) : bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] changed(byte[] bytes) {
        for (int i = 0; i + before.length <= bytes.length; i++) {
            if (Arrays.equals(bytes, i, i + before.length, before, 0, before.length)) {
                System.arraycopy(after, 0, bytes, i, after.length);
                changes++;
            }
        }
        return bytes;
    }
}
