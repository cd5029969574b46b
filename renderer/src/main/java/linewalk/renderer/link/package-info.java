/** The linked copy: the original set, in which every reference can be pressed and leads to its mate. */
package linewalk.renderer.link;
