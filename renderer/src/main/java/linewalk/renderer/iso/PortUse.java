package linewalk.renderer.iso;

import linewalk.drawing.LineKind;

/**
 * A port that a picture shows.
 *
 * @param id of the port in its component
 * @param name its letter, or null
 * @param kind of the line that meets it
 * @param up the line leads on towards the actuators (drawn above), else towards pump and tank (drawn below)
 */
public record PortUse(String id, String name, LineKind kind, boolean up) {}
