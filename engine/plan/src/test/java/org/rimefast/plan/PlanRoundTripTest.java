package org.rimefast.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.rimefast.units.Unit;
import org.rimefast.units.Units;

/** Random plans come back from their files as they were built. */
class PlanRoundTripTest {
  private static final List<Unit> UNITS =
      List.of(Units.MILLIMETRE, Units.CENTIMETRE, Units.METRE, Units.INCH, Units.FOOT);

  @Property(tries = 400, seed = "20261125")
  void whatIsBuiltIsWhatIsReadFromItsFile(@ForAll Random random) {
    Making making = new Making(random);
    PlanReading reading = making.plan().build();
    assertThat(reading.faults()).isEmpty();
    Plan built = reading.plan().orElseThrow();
    byte[] file = PlanWriter.write(built);
    PlanReading back = new PlanReader().read("t", file);
    assertThat(back.faults()).isEmpty();
    Plan read = back.plan().orElseThrow();
    assertThat(read.withSource(built.source())).isEqualTo(built);
    assertThat(read.sameContent(built)).isTrue();
    assertThat(read.source().hash()).isEqualTo(built.source().hash());
    assertThat(PlanWriter.write(read)).isEqualTo(file);
    assertThat(PlanSchemaTest.complaints(new String(file, StandardCharsets.UTF_8))).isEmpty();
    for (Part part : read.parts()) {
      assertThat(read.source().places()).containsKey(part.pointer());
    }
  }

  /** Makes plans whose parts all lie on their faces. */
  private static final class Making {
    private final Random random;
    private final Unit unit;
    private int ids;

    Making(Random random) {
      this.random = random;
      this.unit = UNITS.get(random.nextInt(UNITS.size()));
    }

    PlanBuilder plan() {
      PlanBuilder plan =
          Plan.builder("p-" + random.nextInt(100), "A \u00b1 \"plan\" \\ \ud83d\ude00", unit);
      if (random.nextBoolean()) {
        plan.shell(pick(Products.shellNames()));
      }
      if (random.nextBoolean() || plan.build().plan().isEmpty()) {
        plan.shellInside(
            "5." + random.nextInt(100) + " m", "2.25 m", "95-1/" + (2 + random.nextInt(9)) + " in");
      }
      if (random.nextBoolean()) {
        plan.framingTolerance("1/8 in").roomTemperature("21.5 degC +- 0.5 K").siteName("Far north");
      }
      if (random.nextBoolean()) {
        plan.everyFace(this::face);
      }
      for (Face face : Face.values()) {
        if (random.nextInt(3) == 0) {
          plan.face(face, this::face);
        }
      }
      if (random.nextBoolean()) {
        plan.foamNozzle(length());
      }
      if (random.nextBoolean()) {
        plan.foamReach("400 mm +- 10 mm");
      }
      if (random.nextBoolean()) {
        plan.opening(
            id(),
            Face.RIGHT,
            "4000 mm",
            "0 mm",
            "900 mm",
            "2000 mm",
            new Door(pick(List.of(Door.Hinge.values())), pick(List.of(Door.Swing.values()))));
      }
      for (int i = random.nextInt(4); i > 0; i--) {
        String circuit = id();
        plan.stud(id(), face(), part(b -> stud(b)));
        plan.track(id(), face(), part(this::track));
        plan.box(id(), pick(List.of(Part.Box.Kind.values())), face(), part(this::box));
        plan.bar(id(), face(), part(b -> b.front(-0.25)));
        plan.luminaire(id(), face(), part(b -> b.mount(pick(List.of(Mount.values())))));
        String held = id();
        plan.panel(held, face(), b -> b.mount(Mount.SURFACE));
        plan.bracket(id(), face(), part(b -> b.holds(held)));
        plan.run(id(), Run.Kind.METAL_CLAD_CABLE, r -> cable(r, held, circuit));
        plan.run(id(), pick(List.of(Run.Kind.values())), r -> run(r, held));
        plan.run(id(), Run.Kind.EMT, r -> tubing(r, held));
        plan.circuit(circuit, c -> circuit(c, held));
      }
      return plan;
    }

    private void face(FaceBuilder face) {
      if (random.nextBoolean()) {
        face.profile(pick(Products.profileNames()));
      } else if (random.nextBoolean()) {
        face.profile(0.1 + random.nextInt(90) / 8.0, 0.3, random.nextInt(1000) / 1000.0, 0.7);
      }
      if (random.nextBoolean()) {
        face.ribs(pick(List.of(FaceBuild.Ribs.values()))).phase(length());
      }
      if (random.nextBoolean()) {
        face.stud(pick(Products.studNames())).lining("12.7 mm").sheet(0.0625);
      } else if (random.nextBoolean()) {
        face.stud(1.7, 0.3, 0.01).foam(pick(List.of(FaceBuild.Foam.Kind.values())));
      }
      if (random.nextInt(4) == 0) {
        face.standoff("1-3/8 in +- 1 mm");
      } else if (random.nextBoolean()) {
        face.standoff(0);
      }
    }

    private Consumer<PartBuilder> part(Consumer<PartBuilder> more) {
      return part -> {
        boolean along = random.nextBoolean();
        boolean up = random.nextBoolean();
        if (along) {
          part.along(length());
        }
        if (up) {
          part.up(length());
        }
        if (random.nextBoolean()) {
          part.material(pick(List.of(Material.values())));
        }
        more.accept(part);
        if (random.nextBoolean() && (along || up)) {
          String spacing =
              pick(List.of("16 in", "1/3 ft", "7/9 in", "100 mm", "0.05 m", "4.44 cm"));
          int count = 1 + random.nextInt(4);
          if (along) {
            part.repeat(count, spacing);
          } else {
            part.repeatUp(count, spacing);
          }
        }
      };
    }

    private void stud(PartBuilder stud) {
      if (random.nextBoolean()) {
        stud.section(pick(Products.studNames())).hole("24 in", "3/4 in", "4 in");
      }
      if (random.nextBoolean()) {
        boolean bushing = random.nextBoolean();
        stud.hole("30 in", "3/4 in", "4 in", h -> h.bushing(bushing).plate(length()));
      }
    }

    private void track(PartBuilder track) {
      if (random.nextBoolean()) {
        track.width("3-1/8 in").height("31.8 mm +- 1 mm");
      }
      if (random.nextBoolean()) {
        track.depth(length()).front("-0.9 mm");
      }
    }

    private void box(PartBuilder box) {
      if (random.nextBoolean()) {
        box.size(pick(Products.boxNames()));
      }
      if (random.nextBoolean()) {
        box.depth(pick(List.of("2 in", "1-7/8 in", "60 mm +- 1 mm")));
      }
      if (random.nextBoolean()) {
        box.width("54 mm");
      }
      if (random.nextBoolean()) {
        box.volume(pick(List.of("18 in3", "300 cm3 +- 1 cm3", "0.3 L", "10.3 in3")));
      }
      if (random.nextInt(3) == 0) {
        box.noDevices();
      }
      for (int i = random.nextInt(3); i > 0; i--) {
        BoxFittings.Device.Kind kind = pick(List.of(BoxFittings.Device.Kind.values()));
        if (random.nextBoolean()) {
          box.devices(kind, 1 + random.nextInt(3));
        } else {
          box.devices(kind, 1 + random.nextInt(3), length());
        }
      }
      if (random.nextBoolean()) {
        box.clamps(random.nextBoolean()).wireConnectors(random.nextInt(5));
      }
      if (random.nextBoolean()) {
        box.fixtureStuds(random.nextInt(2));
      }
    }

    private void circuit(CircuitBuilder circuit, String panel) {
      if (random.nextBoolean()) {
        circuit.panel(panel).breaker(pick(List.of("15 A", "20 A +- 1 A"))).terminals("75 degC");
      }
      if (random.nextBoolean()) {
        circuit.voltage("0.12 kV").load(pick(List.of("0 A", "900 mA", "16 A")));
      }
    }

    private void cable(RunBuilder run, String held, String circuit) {
      if (random.nextBoolean()) {
        run.armour(pick(List.of(RunBuild.Armour.values()))).circuit(circuit).bendRadius(length());
      }
      if (random.nextBoolean()) {
        run.from(held).fromSlack("0 mm").fromSide(pick(List.of(RunBuild.Side.values())));
      }
      if (random.nextBoolean()) {
        run.toSide(pick(List.of(RunBuild.Side.values())))
            .toConnector(pick(List.of(RunBuild.Connector.values())))
            .toSlack(length());
      }
      if (random.nextBoolean()) {
        run.fromConnector(pick(List.of(RunBuild.Connector.values()))).cornerSlack("2 in");
      }
      if (random.nextInt(3) == 0) {
        run.noConductors();
      }
      for (int i = random.nextInt(3); i > 0; i--) {
        String size = (1 + random.nextInt(18)) + " AWG";
        RunBuild.Conductors.Use use = pick(List.of(RunBuild.Conductors.Use.values()));
        if (random.nextBoolean()) {
          run.conductors(size, 1 + random.nextInt(100), use, "90 degC +- 1 K");
        } else {
          run.conductors(size, 1 + random.nextInt(2), use);
        }
      }
      if (random.nextInt(3) == 0) {
        run.supports(List.of("0 mm", "1 in", "1-1/3 ft", "0.5 m +- 3 mm"));
      } else if (random.nextBoolean()) {
        run.supports();
      }
      Face face = face();
      run.point(face, "300 mm", length(), "-1/2 in")
          .point(face, "400 mm", length(), "20 mm", length())
          .point(face, "500 mm", length(), "20 mm");
    }

    private void tubing(RunBuilder run, String held) {
      if (random.nextBoolean()) {
        run.size(pick(Products.emtNames()));
      }
      boolean bore = random.nextBoolean();
      if (bore) {
        run.bore(pick(List.of("15.8 mm", "0.622 in", "1.380 in")));
      }
      if (bore || random.nextBoolean()) {
        run.diameter(pick(List.of("36 mm", "1.4 in")));
      }
      Face face = face();
      run.to(held).point(face, "300 mm", length(), "0 mm").point(face, "350 mm", length(), "0 mm");
    }

    private void run(RunBuilder run, String held) {
      run.to(held).diameter("12.5 mm");
      Face face = face();
      for (int i = 0; i < 2 + random.nextInt(3); i++) {
        run.point(face, (200 + 50 * i) + " mm", length(), "-1/2 in");
      }
    }

    /** At least 6 in from the end of every face, even after a repeat. */
    private String length() {
      return switch (random.nextInt(5)) {
        case 0 -> (200 + random.nextInt(300)) + " mm";
        case 1 -> (200 + random.nextInt(300)) / 10.0 + " cm";
        case 2 -> (8 + random.nextInt(8)) + "-" + (1 + random.nextInt(7)) + "/8 in";
        case 3 -> "1 ft " + random.nextInt(12) + " in";
        default -> "0." + (200 + random.nextInt(300)) + " m +- 3 mm";
      };
    }

    private Face face() {
      return pick(List.of(Face.values()));
    }

    private String id() {
      return "E" + ids++;
    }

    private <T> T pick(List<T> of) {
      return of.get(random.nextInt(of.size()));
    }
  }
}
