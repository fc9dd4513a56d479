package org.rimefast.check;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.rimefast.plan.Run;
import org.rimefast.plan.RunBuild;

/**
 * Every conductor of a plan, run by run; a run of which the plan gives none stands here with one of
 * which nothing is known.
 */
final class ConductorList {
  private final List<InRun> all = new ArrayList<>();

  /**
   * One conductor.
   *
   * @param run the index of its run
   * @param name the run's id and which one of the run it is, from 1
   * @param group what the plan says of it; null if it does not say which conductors the run has
   */
  private record InRun(int run, String name, RunBuild.@Nullable Conductors group) {}

  ConductorList(List<Run> runs) {
    for (int run = 0; run < runs.size(); run++) {
      List<RunBuild.Conductors> groups = runs.get(run).build().conductors();
      if (groups == null) {
        all.add(new InRun(run, runs.get(run).id() + "/1", null));
        continue;
      }
      int number = 1;
      for (RunBuild.Conductors group : groups) {
        for (int of = 0; of < group.count(); of++) {
          all.add(new InRun(run, runs.get(run).id() + "/" + number++, group));
        }
      }
    }
  }

  int size() {
    return all.size();
  }

  int run(int conductor) {
    return all.get(conductor).run();
  }

  String name(int conductor) {
    return all.get(conductor).name();
  }

  RunBuild.@Nullable Conductors group(int conductor) {
    return all.get(conductor).group();
  }
}
