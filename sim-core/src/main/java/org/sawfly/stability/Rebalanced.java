package org.sawfly.stability;

import org.sawfly.glider.Glider;

/**
 * A glider after rebalancing.
 *
 * @param glider with battery and lead where they are now
 * @param leadMass nose lead in it [kg]
 * @param leadPutIn against before the change, put in positive [kg]
 * @param batteryForward how far the battery was moved, forward positive [m]
 */
public record Rebalanced(Glider glider, double leadMass, double leadPutIn, double batteryForward) {}
