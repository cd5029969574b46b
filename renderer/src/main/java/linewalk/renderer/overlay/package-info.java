/** The original sheets with what was read drawn over them, so that people see at a glance what a program made of them. */
package linewalk.renderer.overlay;
