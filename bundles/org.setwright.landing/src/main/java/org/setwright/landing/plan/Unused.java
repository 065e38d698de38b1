package org.setwright.landing.plan;

import java.util.Optional;
import org.setwright.landing.need.Check;
import org.setwright.landing.wall.Conductor;

/**
 * A conductor that nothing is landed on.
 *
 * @param doThis what to do with it, a sentence
 * @param because why it is not used, a sentence
 * @param source where that comes from
 * @param check what would have to be made sure of to use it after all
 */
public record Unused(Conductor conductor, String doThis, String because, String source, Optional<Check> check) {
}
