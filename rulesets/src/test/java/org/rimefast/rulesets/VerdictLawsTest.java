package org.rimefast.rulesets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.rimefast.check.Checker;
import org.rimefast.check.Dictionary;
import org.rimefast.check.PlanFacts;
import org.rimefast.check.StandardLibrary;
import org.rimefast.check.SteelModules;
import org.rimefast.check.Verdict;
import org.rimefast.lang.RuleCompiler;
import org.rimefast.lang.rule.Change;
import org.rimefast.lang.rule.Rule;
import org.rimefast.lang.rule.Standard;
import org.rimefast.plan.Face;
import org.rimefast.plan.Plan;
import org.rimefast.testkit.RandomModules;
import org.rimefast.units.Rational;

/**
 * What must hold of every rule that speaks of steel modules, whatever it asks, on random modules
 * (invented): a verdict does not hang on which way the module is drawn, in what unit or in what
 * order, and a rule that asks for more is not kept more easily.
 */
class VerdictLawsTest {
  private static final int MODULES = 300;
  private static final int AMENDED = 6;
  private static final Dictionary DICTIONARY = SteelModules.dictionary();

  /** Sentences that speak of how large the whole face is, or of ways along its whole floor. */
  private static final List<String> OF_THE_WHOLE_FACE =
      List.of("foam area", "foam volume", "steel area", "bare steel", "floor line");

  /** Sentences that speak of a stud and the one to its right: mirrored, that one speaks. */
  private static final List<String> OF_THE_NEXT =
      List.of("next stud", "last on its face", "followed by an opening");

  private enum Law {
    HALF_TURN,
    LONGER,
    MIRROR,
    UNITS,
    ORDER,
    LIMITS
  }

  private static final Map<Law, List<String>> BROKEN = new EnumMap<>(Law.class);
  private static final Map<Law, Integer> COMPARED = new EnumMap<>(Law.class);
  private static final Map<String, Set<Verdict>> SEEN = new TreeMap<>();
  private static final Set<String> TURNED_BY_LIMITS = new HashSet<>();
  private static final List<Checker> CHECKERS = new ArrayList<>();
  private static final List<List<AmendedStandards.Amended>> HOUSES = new ArrayList<>();

  @BeforeAll
  static void checkEveryModule() {
    for (String name : StandardLibrary.names()) {
      Standard standard =
          new RuleCompiler(DICTIONARY.vocabulary())
              .compile(StandardLibrary.find(name).orElseThrow())
              .standard()
              .orElseThrow();
      CHECKERS.add(new Checker(DICTIONARY, standard));
      AmendedStandards amended =
          new AmendedStandards(DICTIONARY, standard, new Random(name.length()));
      HOUSES.add(Stream.generate(amended::next).limit(AMENDED).toList());
    }
    LongStream.rangeClosed(1, MODULES).parallel().forEach(VerdictLawsTest::checkModule);
  }

  private static void checkModule(long seed) {
    RandomModules any = RandomModules.of(seed);
    RandomModules module = seed % 3 == 0 ? any : any.feet(20);
    Plan plan = module.plan();
    Random random = new Random(seed);
    List<ElementVerdicts> base = verdicts(plan, face -> face);
    for (ElementVerdicts verdicts : base) {
      verdicts.all().forEach((rule, found) -> see(rule, found.values()));
    }
    moved(seed, Law.HALF_TURN, ModuleMove.halfTurn(), plan, base, rule -> true);
    moved(seed, Law.MIRROR, ModuleMove.mirror(), plan, base, rule -> !speaks(rule, OF_THE_NEXT));
    Plan clear = ClearOfTheRear.of(plan, 1500);
    Rational longer = Rational.of(127L * (1 + random.nextInt(40_000)), 1000);
    moved(
        seed,
        Law.LONGER,
        ModuleMove.longerAtTheRear(longer),
        clear,
        verdicts(clear, face -> face),
        rule -> !speaks(rule, OF_THE_WHOLE_FACE));
    String unit = List.of("cm", "m", "in", "ft").get(random.nextInt(4));
    same(seed, Law.UNITS, base, verdicts(module.units(unit).plan(), face -> face), rule -> true);
    same(seed, Law.ORDER, base, verdicts(shuffled(plan, random), face -> face), rule -> true);
    PlanFacts facts = new PlanFacts(plan, DICTIONARY);
    for (int i = 0; i < CHECKERS.size(); i++) {
      AmendedStandards.Amended house = HOUSES.get(i).get((int) (seed % AMENDED));
      limits(seed, base.get(i), house, new ElementVerdicts(house.checker(), facts, face -> face));
    }
  }

  private static synchronized void see(String rule, Iterable<Verdict> verdicts) {
    Set<Verdict> seen = SEEN.computeIfAbsent(rule, id -> EnumSet.noneOf(Verdict.class));
    verdicts.forEach(seen::add);
  }

  private static List<ElementVerdicts> verdicts(Plan plan, UnaryOperator<Face> faceWas) {
    PlanFacts facts = new PlanFacts(plan, DICTIONARY);
    return CHECKERS.stream().map(checker -> new ElementVerdicts(checker, facts, faceWas)).toList();
  }

  private static void moved(
      long seed,
      Law law,
      ModuleMove move,
      Plan plan,
      List<ElementVerdicts> base,
      Predicate<Rule> byElement) {
    UnaryOperator<Face> faceWas =
        now -> {
          for (Face face : Face.values()) {
            if (move.face(face) == now) {
              return face;
            }
          }
          throw new IllegalStateException("nothing became " + now);
        };
    same(seed, law, base, verdicts(move.of(plan), faceWas), byElement);
  }

  /** Each rule says the same of each element; where {@code byElement} is false, of as many. */
  private static void same(
      long seed,
      Law law,
      List<ElementVerdicts> before,
      List<ElementVerdicts> after,
      Predicate<Rule> byElement) {
    for (int i = 0; i < CHECKERS.size(); i++) {
      for (Rule rule : CHECKERS.get(i).standard().rules()) {
        Map<String, Verdict> was = before.get(i).of(rule);
        Map<String, Verdict> is = after.get(i).of(rule);
        count(law, was.size());
        if (was.equals(is)) {
          continue;
        }
        if (!byElement.test(rule)) {
          if (law == Law.MIRROR && !counts(was).equals(counts(is))) {
            fail(law, "seed " + seed + ", " + rule.id() + ": " + counts(was) + ", " + counts(is));
          }
          continue;
        }
        for (String element : was.keySet()) {
          if (was.get(element) != is.get(element)) {
            fail(law, told(seed, rule, element, before.get(i), after.get(i)));
          }
        }
      }
    }
  }

  private static Map<Verdict, Integer> counts(Map<String, Verdict> verdicts) {
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    verdicts.values().forEach(verdict -> counts.merge(verdict, 1, Integer::sum));
    return counts;
  }

  private static void limits(
      long seed, ElementVerdicts before, AmendedStandards.Amended house, ElementVerdicts after) {
    house
        .amendments()
        .forEach(
            (id, amendment) -> {
              Rule rule = house.checker().standard().rule(id).orElseThrow();
              List<Change> changes = rule.changes();
              Change.Effect effect = changes.get(changes.size() - 1).effect();
              before
                  .of(rule)
                  .forEach(
                      (element, was) -> {
                        Verdict is = after.of(rule).get(element);
                        count(Law.LIMITS, 1);
                        if (was != is) {
                          turned(id);
                        }
                        if (!allows(effect, was, is) || !allows(amendment, was, is)) {
                          fail(
                              Law.LIMITS,
                              effect
                                  + " by "
                                  + changes.get(changes.size() - 1).text()
                                  + "\n  "
                                  + told(seed, rule, element, before, after));
                        }
                      });
            });
  }

  /** What the engine itself says of an amendment, whatever the plan, holds on this plan. */
  private static boolean allows(Change.Effect effect, Verdict was, Verdict is) {
    return switch (effect) {
      case STRICTER -> was != Verdict.BROKEN || is == Verdict.BROKEN;
      case LOOSER -> was == Verdict.BROKEN || is != Verdict.BROKEN;
      case UNCHANGED -> was == is;
      case NEITHER, UNPROVED -> true;
    };
  }

  /** Who asks for more of something is not content more easily, and the other way round. */
  private static boolean allows(AmendedStandards.Amendment amendment, Verdict was, Verdict is) {
    if (!amendment.plainLimit()) {
      return true;
    }
    if (!asked(was) || !asked(is)) {
      return was == is;
    }
    return amendment.grown() ? content(is) <= content(was) : content(is) >= content(was);
  }

  private static boolean asked(Verdict verdict) {
    return verdict != Verdict.NOT_APPLICABLE && verdict != Verdict.ERROR;
  }

  private static int content(Verdict verdict) {
    return switch (verdict) {
      case BROKEN -> 0;
      case UNDECIDED -> 1;
      case MET -> 2;
      case ERROR, NOT_APPLICABLE -> throw new IllegalStateException("no limit was asked");
    };
  }

  private static String told(
      long seed, Rule rule, String element, ElementVerdicts before, ElementVerdicts after) {
    return "seed %d, rule %s, %s\n    %s\n    %s"
        .formatted(
            seed, rule.id(), element, before.explain(rule, element), after.explain(rule, element));
  }

  private static synchronized void turned(String rule) {
    TURNED_BY_LIMITS.add(rule);
  }

  private static synchronized void count(Law law, int compared) {
    COMPARED.merge(law, compared, Integer::sum);
  }

  private static synchronized void fail(Law law, String what) {
    BROKEN.computeIfAbsent(law, key -> new ArrayList<>()).add(what);
  }

  private static Plan shuffled(Plan plan, Random random) {
    return new Plan(
        plan.id(),
        plan.title(),
        plan.units(),
        plan.tolerances(),
        plan.room(),
        plan.site(),
        plan.shell(),
        new LinkedHashMap<>(plan.faces()),
        shuffled(plan.openings(), random),
        shuffled(plan.parts(), random),
        shuffled(plan.runs(), random),
        shuffled(plan.circuits(), random),
        plan.foaming(),
        plan.readings(),
        plan.source());
  }

  private static <T> List<T> shuffled(List<T> list, Random random) {
    List<T> other = new ArrayList<>(list);
    Collections.shuffle(other, random);
    return other;
  }

  private static void holds(Law law) {
    assertThat(COMPARED.getOrDefault(law, 0)).isGreaterThan(100 * MODULES);
    List<String> broken = BROKEN.getOrDefault(law, List.of());
    assertThat(broken)
        .as("%d broken, the first of them:\n%s", broken.size(), first(broken))
        .isEmpty();
  }

  private static String first(List<String> broken) {
    return String.join("\n", broken.subList(0, Math.min(10, broken.size())));
  }

  private static boolean speaks(Rule rule, List<String> phrases) {
    return phrases.stream().anyMatch(rule.sentence()::contains);
  }

  @Test
  void aModuleTurnedHalfRoundGetsTheSameVerdicts() {
    holds(Law.HALF_TURN);
  }

  @Test
  void aShellLongerAtItsEmptyEndGetsTheSameVerdicts() {
    holds(Law.LONGER);
  }

  @Test
  void aMirroredModuleGetsTheSameVerdicts() {
    holds(Law.MIRROR);
  }

  @Test
  void aPlanInAnotherUnitGetsTheSameVerdicts() {
    holds(Law.UNITS);
  }

  @Test
  void aPlanWhoseListsStandInAnotherOrderGetsTheSameVerdicts() {
    holds(Law.ORDER);
  }

  @Test
  void aRuleThatAsksForMoreIsNotKeptMoreEasilyAndOneThatAsksForLessNotLess() {
    holds(Law.LIMITS);
    assertThat(TURNED_BY_LIMITS).hasSizeGreaterThan(5);
  }

  @Test
  void theModulesKeepBreakAndLeaveOpenMostRulesOnSteelAndFoam() {
    List<String> rules =
        CHECKERS.stream()
            .map(Checker::standard)
            .filter(standard -> standard.name().equals("cold-steel-modules"))
            .flatMap(standard -> standard.rules().stream())
            .map(Rule::id)
            .toList();
    List<String> oneSided =
        rules.stream()
            .filter(
                rule ->
                    !SEEN.getOrDefault(rule, Set.of())
                        .containsAll(List.of(Verdict.MET, Verdict.BROKEN, Verdict.UNDECIDED)))
            .toList();
    assertThat(rules).isNotEmpty();
    assertThat(oneSided).hasSizeLessThanOrEqualTo(rules.size() / 4);
  }
}
