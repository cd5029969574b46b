/** Plain symbols after ISO 1219-1 for parts, standing so that oil enters at the top and leaves at the bottom. */
package linewalk.renderer.symbol;
