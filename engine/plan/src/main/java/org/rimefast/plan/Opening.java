package org.rimefast.plan;

/**
 * A hole cut in the shell.
 *
 * @param id its id
 * @param pointer its JSON pointer
 * @param face the face it is in
 * @param from its left-hand edge, along the face
 * @param sill its lower edge, up the face
 * @param width its width, along the face
 * @param height its height, up the face
 */
public record Opening(
    String id, String pointer, Face face, Amount from, Amount sill, Amount width, Amount height)
    implements Element {}
