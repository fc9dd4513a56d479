package org.rimefast.plan.geometry;

/**
 * The least distance between two bodies and where it is.
 *
 * @param distance the distance in millimetres; 0 if they meet, however deep one lies in the other
 * @param onElement a nearest point of the first body's surface; a common point if they meet
 * @param onOther a nearest point of the second body
 */
public record Nearest(double distance, Point onElement, Point onOther) {}
