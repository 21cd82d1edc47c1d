package neutralpoint.workings;

import java.util.Optional;
import neutralpoint.document.Decimals;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.expansion.ThermalExpansion;
import neutralpoint.hydronics.water.Water;
import neutralpoint.job.Job;

/**
 * What the heating's water gains from filled cold to hot: at the least and in all likelihood the water of its mean
 * temperature, at the most all of it at the flow's.
 *
 * @param content litres when cold
 */
public record Expansion(Estimate content, HotSystem hot) {
    /** What a loft tank's room is for the gain. */
    public enum TankRoom {
        /** For the most it can gain. */
        ENOUGH,
        /** For the least it gains but not for the most: too near to say. */
        TOO_NEAR,
        /** Not even for the least: it overflows when hot. */
        TOO_LITTLE
    }

    /** Empty where nothing tells how much water there is. */
    public static Optional<Expansion> of(Job job) {
        return SystemLitres.of(job).map(litres -> new Expansion(litres.litres(), HotSystem.of(job)));
    }

    public Estimate litres() {
        return new Estimate(ThermalExpansion.litres(content.low(), leastShare()), ThermalExpansion.litres(content.likely(), leastShare()),
                ThermalExpansion.litres(content.high(), mostShare()));
    }

    /** @param litres above the cold water line, 0 or more */
    public TankRoom room(double litres) {
        Estimate gained = litres();
        return litres < gained.low() ? TankRoom.TOO_LITTLE : litres >= gained.high() ? TankRoom.ENOUGH : TankRoom.TOO_NEAR;
    }

    public String sum() {
        Estimate gained = litres();
        return Decimals.sum("%s litres x %s %% gained from %s to %s degrees = %s; %s litres x %s %% to %s degrees = %s",
                Decimals.coarse(content.low()), leastShare() * 100, UsualTemperatures.FRESH_CELSIUS, hot.meanCelsius(), Decimals.coarse(gained.low()),
                Decimals.coarse(content.high()), mostShare() * 100, hot.flowCelsius(), Decimals.coarse(gained.high()));
    }

    private double leastShare() {
        return Water.expansionFraction(UsualTemperatures.FRESH_CELSIUS, hot.meanCelsius());
    }

    private double mostShare() {
        return Water.expansionFraction(UsualTemperatures.FRESH_CELSIUS, hot.flowCelsius());
    }
}
