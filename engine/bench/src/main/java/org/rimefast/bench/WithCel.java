package org.rimefast.bench;

import dev.cel.common.CelFunctionDecl;
import dev.cel.common.CelOverloadDecl;
import dev.cel.common.CelValidationException;
import dev.cel.common.types.CelType;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerBuilder;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.parser.CelStandardMacro;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelFunctionBinding;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeBuilder;
import dev.cel.runtime.CelRuntimeFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.rimefast.check.PlanFacts;
import org.rimefast.plan.Face;
import org.rimefast.plan.Mount;
import org.rimefast.plan.Part;
import org.rimefast.plan.geometry.CorrugatedSheet;
import org.rimefast.plan.geometry.ModuleGeometry;
import org.rimefast.plan.geometry.Zone;

/**
 * The five rules as expressions of a general expression engine, over the same geometry through
 * functions. It is spared what our engine does beside: missing values and tolerances (a missing
 * number is NaN, which compares as false).
 */
final class WithCel {
  /**
   * The five expressions, each true if the rule is met or not applicable; {@code e} is the element.
   */
  static final List<String> EXPRESSIONS =
      List.of(
          "sitsInOuterBay(e) && clearance(e) >= 50.0",
          "!recessed(e) || depth(e) <= 50.0",
          "onRoof(e) || clearance(e) >= 8.4",
          "!neighbours(e).exists(n, isMetalBar(n) && touches(e, n))",
          "foamCover(e) >= 50.8");

  private final List<CelRuntime.Program> programs = new ArrayList<>();
  private final Map<String, Object> variables = new HashMap<>();

  WithCel(PlanFacts facts, Neighbours neighbours) {
    CelCompilerBuilder compiler =
        CelCompilerFactory.standardCelCompilerBuilder()
            .setStandardMacros(CelStandardMacro.EXISTS)
            .addVar("e", SimpleType.INT);
    CelRuntimeBuilder runtime = CelRuntimeFactory.plannerRuntimeBuilder();
    functions(facts, neighbours, compiler, runtime);
    CelCompiler built = compiler.build();
    CelRuntime running = runtime.build();
    for (String expression : EXPRESSIONS) {
      try {
        programs.add(running.createProgram(built.compile(expression).getAst()));
      } catch (CelValidationException | CelEvaluationException e) {
        throw new IllegalStateException(expression, e);
      }
    }
  }

  /** Whether an element meets a rule or the rule does not speak of it. */
  boolean holds(int rule, int element) {
    variables.put("e", (long) element);
    try {
      return (Boolean) programs.get(rule).eval(variables);
    } catch (CelEvaluationException e) {
      throw new IllegalStateException(EXPRESSIONS.get(rule), e);
    }
  }

  // What the functions close over does not change while they run.
  @SuppressWarnings("Immutable")
  private static void functions(
      PlanFacts facts,
      Neighbours neighbours,
      CelCompilerBuilder compiler,
      CelRuntimeBuilder runtime) {
    ModuleGeometry geometry = facts.geometry();
    add(compiler, runtime, "sitsInOuterBay", SimpleType.BOOL, e -> sits(facts, e.intValue()));
    add(compiler, runtime, "clearance", SimpleType.DOUBLE, e -> geometry.clearance(e.intValue()));
    add(
        compiler,
        runtime,
        "recessed",
        SimpleType.BOOL,
        e -> ((Part.Box) facts.part(e.intValue())).mount() != Mount.SURFACE);
    add(compiler, runtime, "depth", SimpleType.DOUBLE, e -> depth(facts.part(e.intValue())));
    add(
        compiler,
        runtime,
        "onRoof",
        SimpleType.BOOL,
        e -> facts.part(e.intValue()).face() == Face.ROOF);
    add(
        compiler,
        runtime,
        "isMetalBar",
        SimpleType.BOOL,
        e -> facts.part(e.intValue()) instanceof Part.Bar bar && isMetal(bar));
    add(
        compiler,
        runtime,
        "foamCover",
        SimpleType.DOUBLE,
        e -> Math.min(geometry.clearance(e.intValue()), foam(facts, e.intValue())));
    compiler.addFunctionDeclarations(
        CelFunctionDecl.newFunctionDeclaration(
            "neighbours",
            CelOverloadDecl.newGlobalOverload(
                "neighbours_int",
                dev.cel.common.types.ListType.create(SimpleType.INT),
                SimpleType.INT)),
        CelFunctionDecl.newFunctionDeclaration(
            "touches",
            CelOverloadDecl.newGlobalOverload(
                "touches_int_int", SimpleType.BOOL, SimpleType.INT, SimpleType.INT)));
    runtime.addFunctionBindings(
        CelFunctionBinding.from(
            "neighbours_int", Long.class, e -> near(geometry, neighbours, e.intValue())),
        CelFunctionBinding.from(
            "touches_int_int",
            Long.class,
            Long.class,
            (e, n) -> geometry.gap(e.intValue(), n.intValue()) <= geometry.contactTolerance()));
  }

  @SuppressWarnings("Immutable")
  private static void add(
      CelCompilerBuilder compiler,
      CelRuntimeBuilder runtime,
      String name,
      CelType type,
      Function<Long, Object> function) {
    String id = name + "_int";
    compiler.addFunctionDeclarations(
        CelFunctionDecl.newFunctionDeclaration(
            name, CelOverloadDecl.newGlobalOverload(id, type, SimpleType.INT)));
    runtime.addFunctionBindings(CelFunctionBinding.from(id, Long.class, function::apply));
  }

  private static boolean sits(PlanFacts facts, int element) {
    ModuleGeometry geometry = facts.geometry();
    CorrugatedSheet sheet = geometry.sheet(facts.part(element).face());
    double from = geometry.facesFrom(element);
    double to = geometry.facesTo(element);
    double middle = (from + to) / 2;
    return sheet != null
        && sheet.marginInside(Zone.OUTER_BAY, middle, middle) >= 0
        && sheet.gapTo(Zone.INWARD_RIB, from, to) >= 0;
  }

  private static double depth(Part part) {
    return part.depth() == null ? Double.NaN : part.depth().millimetres();
  }

  private static boolean isMetal(Part.Bar bar) {
    return bar.material() != null && bar.material().isMetal();
  }

  private static double foam(PlanFacts facts, int element) {
    var foam = facts.plan().face(facts.part(element).face()).foam();
    return foam == null || foam.thickness() == null ? Double.NaN : foam.thickness().millimetres();
  }

  private static List<Long> near(ModuleGeometry geometry, Neighbours neighbours, int element) {
    neighbours.start();
    if (geometry.cuboid(element) != null) {
      geometry.partsWithin(element, geometry.contactTolerance(), neighbours);
    }
    List<Long> found = new ArrayList<>();
    for (int i = 0; i < neighbours.count(); i++) {
      found.add((long) neighbours.get(i));
    }
    return found;
  }
}
