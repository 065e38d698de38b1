/**
 * The reasons behind a setting as a picture: {@link org.setwright.picture.Derivation#of} gathers what rests on what,
 * {@link org.setwright.picture.Picture#of} arranges it from left to right, and {@link org.setwright.picture.SvgText} writes
 * it down; the window draws the same picture.
 */
package org.setwright.picture;
