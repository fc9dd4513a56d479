package org.rimefast.plan;

/**
 * The section of a light steel stud, in millimetres.
 *
 * @param name its designation: {@code 162S125-33}
 * @param depth depth of the web, from the warm face toward the shell
 * @param flange width of the flange, along the wall
 * @param thickness design thickness of the steel
 */
public record StudSection(String name, double depth, double flange, double thickness) {}
