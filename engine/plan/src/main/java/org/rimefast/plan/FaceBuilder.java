package org.rimefast.plan;

import org.rimefast.plan.internal.json.Node.Structure;
import org.rimefast.plan.internal.json.TreeMaker;

/** How a face is built up, while a plan is built. What is not given stays unknown. */
public final class FaceBuilder {
  private final Structure item;

  FaceBuilder(Structure item) {
    this.item = item;
  }

  /** The sheet's cross-section by name; see {@link Products#profileNames}. */
  public FaceBuilder profile(String name) {
    TreeMaker.text(item, "profile", name);
    return this;
  }

  /** The sheet's cross-section as measured; see {@link CorrugationProfile}. */
  public FaceBuilder profile(double outer, double web, double inner, double depth) {
    Structure profile = TreeMaker.structure(item, "profile");
    BuilderValues.length(profile, "outer", outer);
    BuilderValues.length(profile, "web", web);
    BuilderValues.length(profile, "inner", inner);
    BuilderValues.length(profile, "depth", depth);
    return this;
  }

  /** Which way the ribs run. */
  public FaceBuilder ribs(FaceBuild.Ribs ribs) {
    TreeMaker.text(item, "ribs", ribs.word());
    return this;
  }

  /** The studs' section by designation: {@code 162S125-33}. */
  public FaceBuilder stud(String designation) {
    TreeMaker.text(item, "stud", designation);
    return this;
  }

  /** The studs' section as measured. */
  public FaceBuilder stud(double depth, double flange, double thickness) {
    Structure stud = TreeMaker.structure(item, "stud");
    BuilderValues.length(stud, "depth", depth);
    BuilderValues.length(stud, "flange", flange);
    BuilderValues.length(stud, "thickness", thickness);
    return this;
  }

  /** Where the first inward rib's flat starts. */
  public FaceBuilder phase(double length) {
    BuilderValues.length(item, "phase", length);
    return this;
  }

  /** Where the first inward rib's flat starts. */
  public FaceBuilder phase(String length) {
    TreeMaker.text(item, "phase", length);
    return this;
  }

  /** Thickness of the sheet. */
  public FaceBuilder sheet(double length) {
    BuilderValues.length(item, "sheet", length);
    return this;
  }

  /** Thickness of the sheet. */
  public FaceBuilder sheet(String length) {
    TreeMaker.text(item, "sheet", length);
    return this;
  }

  /** Gap between the inward ribs and the studs. */
  public FaceBuilder standoff(double length) {
    BuilderValues.length(item, "standoff", length);
    return this;
  }

  /** Gap between the inward ribs and the studs. */
  public FaceBuilder standoff(String length) {
    TreeMaker.text(item, "standoff", length);
    return this;
  }

  /** Thickness of the lining. */
  public FaceBuilder lining(double length) {
    BuilderValues.length(item, "lining", length);
    return this;
  }

  /** Thickness of the lining. */
  public FaceBuilder lining(String length) {
    TreeMaker.text(item, "lining", length);
    return this;
  }

  /**
   * What insulates the face.
   *
   * @param thickness over the inward ribs: {@code 3 in}
   * @param conductivity for design: {@code 0.025 W/(m K)}
   */
  public FaceBuilder foam(FaceBuild.Foam.Kind kind, String thickness, String conductivity) {
    Structure foam = TreeMaker.structure(item, "foam");
    TreeMaker.text(foam, "kind", kind.word());
    TreeMaker.text(foam, "thickness", thickness);
    TreeMaker.text(foam, "conductivity", conductivity);
    return this;
  }

  /** What insulates the face, its thickness and conductivity not yet known. */
  public FaceBuilder foam(FaceBuild.Foam.Kind kind) {
    TreeMaker.text(TreeMaker.structure(item, "foam"), "kind", kind.word());
    return this;
  }
}
