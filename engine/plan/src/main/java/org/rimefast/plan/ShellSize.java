package org.rimefast.plan;

/**
 * The inside of the shell, between the crests of the inward ribs, in millimetres.
 *
 * <p>A plan may give a size code, whose inside is a typical one, or the inside as measured, or
 * both; what was measured then counts.
 *
 * @param name the size code of ISO 6346 that the plan gave, such as {@code 45G1}; {@code as given}
 *     if it gave none
 * @param length inside length, rear to front
 * @param width inside width, left to right
 * @param height inside height, floor to roof
 */
public record ShellSize(String name, double length, double width, double height) {}
