package drumline.cutting.identity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.ParameterizedType;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every formula refuses NaN and infinity in each of its numbers. Valid arguments are found by a
 * seeded search, then spoilt one at a time.
 */
class RefusalTest {
  private static final long SEED = 20260101;
  private static final double[] CHOICES = {0, 0.2, 0.5, 1, 1.5, 2, 5, 20, 45, 60, 100, 2000};

  /** Results, notes and table rows: they carry what formulas computed and check nothing. */
  private static final Set<String> CARRIERS =
      Set.of("CuttingLoad", "ValidityNote", "Validity", "Point", "Row", "Lettering");

  @TestFactory
  Stream<DynamicTest> everyFormulaRefusesNanAndInfinity() throws IOException {
    List<Executable> formulas = new ArrayList<>();
    for (Class<?> type : classes()) {
      if (type.getPackageName().endsWith("validity") || CARRIERS.contains(type.getSimpleName())) {
        continue;
      }
      if (type.isRecord()) {
        formulas.add(type.getDeclaredConstructors()[0]);
      }
      for (Method method : type.getDeclaredMethods()) {
        if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic()) {
          formulas.add(method);
        }
      }
    }
    return formulas.stream()
        .filter(f -> Stream.of(f.getParameterTypes()).anyMatch(double.class::equals))
        .filter(f -> !f.getName().equals("withRakeRatio"))
        .map(f -> DynamicTest.dynamicTest(name(f), () -> refuses(f)));
  }

  private static void refuses(Executable formula) throws ReflectiveOperationException {
    Random random = new Random(SEED);
    for (int attempt = 0; attempt < 20_000; attempt++) {
      Optional<Object> target = target(formula, random);
      Optional<Object[]> arguments = arguments(formula, random);
      if (target.isEmpty() || arguments.isEmpty()) {
        continue;
      }
      if (!isRefused(formula, target.get(), arguments.get())) {
        spoilEach(formula, target.get(), arguments.get());
        return;
      }
    }
    throw new AssertionError("no valid arguments found for " + name(formula) + ", seed " + SEED);
  }

  private static void spoilEach(Executable formula, Object target, Object[] arguments)
      throws ReflectiveOperationException {
    for (int i = 0; i < arguments.length; i++) {
      if (formula.getParameterTypes()[i] != double.class) {
        continue;
      }
      for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
        Object[] spoilt = arguments.clone();
        spoilt[i] = bad;
        assertThat(isRefused(formula, target, spoilt))
            .as("%s, argument %d = %s", name(formula), i + 1, bad)
            .isTrue();
      }
    }
  }

  private static boolean isRefused(Executable formula, Object target, Object[] arguments)
      throws ReflectiveOperationException {
    try {
      if (formula instanceof Method method) {
        method.invoke(target, arguments);
      } else {
        ((java.lang.reflect.Constructor<?>) formula).newInstance(arguments);
      }
      return false;
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException) {
        return true;
      }
      throw e;
    }
  }

  /** Something to call the method on; any object where none is needed. */
  private static Optional<Object> target(Executable formula, Random random)
      throws ReflectiveOperationException {
    boolean free = !(formula instanceof Method) || Modifier.isStatic(formula.getModifiers());
    return free ? Optional.of(formula) : value(formula.getDeclaringClass(), null, random);
  }

  private static Optional<Object[]> arguments(Executable formula, Random random)
      throws ReflectiveOperationException {
    Parameter[] parameters = formula.getParameters();
    Object[] arguments = new Object[parameters.length];
    for (int i = 0; i < parameters.length; i++) {
      Optional<Object> value = value(parameters[i].getType(), parameters[i], random);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      arguments[i] = value.get();
    }
    return Optional.of(arguments);
  }

  private static Optional<Object> value(Class<?> type, Parameter parameter, Random random)
      throws ReflectiveOperationException {
    if (type == double.class) {
      return Optional.of(CHOICES[random.nextInt(CHOICES.length)]);
    }
    if (type == int.class) {
      return Optional.of(1 + random.nextInt(6));
    }
    if (type == String.class) {
      return Optional.of("A 7");
    }
    if (type == BigDecimal.class) {
      return Optional.of(BigDecimal.valueOf(1 + random.nextInt(5)));
    }
    if (type.isEnum()) {
      return Optional.of(type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)]);
    }
    if (type == List.class) {
      return listOf(parameter, random);
    }
    if (type.isSealed()) {
      return value(type.getPermittedSubclasses()[0], null, random);
    }
    if (!type.isRecord()) {
      return Optional.of(type.getMethod("plain").invoke(null));
    }
    Executable constructor = type.getDeclaredConstructors()[0];
    for (int attempt = 0; attempt < 200; attempt++) {
      Optional<Object[]> arguments = arguments(constructor, random);
      if (arguments.isPresent() && !isRefused(constructor, type, arguments.get())) {
        return Optional.of(type.getDeclaredConstructors()[0].newInstance(arguments.get()));
      }
    }
    return Optional.empty();
  }

  private static Optional<Object> listOf(Parameter parameter, Random random)
      throws ReflectiveOperationException {
    Class<?> element =
        (Class<?>)
            ((ParameterizedType) parameter.getParameterizedType()).getActualTypeArguments()[0];
    if (element == Double.class) {
      return Optional.of(List.of(3.0, 5.0));
    }
    return value(element, null, random).map(List::of);
  }

  private static String name(Executable formula) {
    String own = formula instanceof Method ? "." + formula.getName() : "";
    return formula.getDeclaringClass().getSimpleName() + own;
  }

  private static List<Class<?>> classes() throws IOException {
    Path root = Path.of("target/classes");
    try (Stream<Path> paths = Files.walk(root.resolve("drumline/cutting"))) {
      List<Class<?>> found = new ArrayList<>();
      for (Path path : paths.filter(p -> p.toString().endsWith(".class")).sorted().toList()) {
        String name = root.relativize(path).toString().replace('/', '.').replace(".class", "");
        Class<?> type = load(name);
        if (Modifier.isPublic(type.getModifiers())) {
          found.add(type);
        }
      }
      return found;
    }
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }
}
