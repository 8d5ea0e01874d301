package org.sawfly.flight;

import java.util.Map;

/**
 * Camber settings for gliding, by name in the order of the file; one is the cruise setting, in which the glider is
 * trimmed and to which the pilot goes after the push-over.
 *
 * @param camberDown by name: trailing edge of the flaperon at the root, down positive [m]
 * @param cruise name of the cruise setting
 */
public record GlideSettings(Map<String, Double> camberDown, String cruise) {
    /** Camber of the cruise setting, down positive [m]. */
    public double cruiseCamber() {
        return camberDown.get(cruise);
    }
}
