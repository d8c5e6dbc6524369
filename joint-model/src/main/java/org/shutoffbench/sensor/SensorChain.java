package org.shutoffbench.sensor;

import static org.shutoffbench.sensor.QuantityBits.ANVIL_ANGLE;
import static org.shutoffbench.sensor.QuantityBits.BLOWS;
import static org.shutoffbench.sensor.QuantityBits.CARRIER_ANGLE;
import static org.shutoffbench.sensor.QuantityBits.CARRIER_SPEED;
import static org.shutoffbench.sensor.QuantityBits.HOUSING_ACCELERATION;
import static org.shutoffbench.sensor.QuantityBits.HOUSING_RATE;
import static org.shutoffbench.sensor.QuantityBits.MOTOR_CURRENT;
import static org.shutoffbench.sensor.QuantityBits.SUPPLY_VOLTAGE;
import static org.shutoffbench.sensor.QuantityBits.TORQUE;

import org.shutoffbench.draw.NoiseStream;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.tool.ImpactTool;

/**
 * The sensors of one tool in a run, sample by sample.
 *
 * <p>The loop around plant and chain is
 *
 * <pre>{@code
 * chain.start(...);
 * for (long tick = 0; ; tick++) {
 *     while (plannedEndS < chain.timeS(tick)) {
 *         chain.beforeCommit(plant, plannedEndS);
 *         plant.commit();
 *         plannedEndS = plant.plan();
 *     }
 *     SensorReading reading = chain.sample(tick, plant);
 *     ...
 * }
 * }</pre>
 *
 * <p>Noise is a pure function of the run's noise key, the quantity and the tick: which other quantities are sampled changes
 * nothing. Only what the mask names costs anything. Everything is allocated when the chain is made; {@link #start} (but for
 * another housing than before), {@link #beforeCommit}, {@link #sample} and {@link #copyFrom} allocate nothing. After a copy,
 * original and copy go on alike, bit for bit.
 */
public final class SensorChain {

    /** Branches of the run's noise key beyond those of the channels. */
    private static final int SWAY = 1000;

    private static final int BLOW_SHARES = 1001;
    private static final int BLOW_DELAYS = 1002;

    private final SensorSuite suite;
    private final int available;
    private final double periodS;
    private final double accelerationPerTorque;
    private final boolean housingCanMove;
    /** By code of the quantity; what the suite lacks has an ideal sensor that is never read. */
    private final ChannelSignal[] signals = new ChannelSignal[Quantity.values().length];

    private final ChannelSignal carrierAngle;
    private final ChannelSignal carrierSpeed;
    private final ChannelSignal motorCurrent;
    private final ChannelSignal supplyVoltage;
    private final ChannelSignal acceleration;
    private final ChannelSignal anvilAngle;
    private final ChannelSignal housingRate;
    private final ChannelSignal torque;
    private final BlowReports blows;
    private final HousingMotion housing;
    private final ImpactTorques impacts;
    private final SensorReading reading = new SensorReading();

    private int mask;
    private double supplyRatio;
    private double amperePerNm;
    private long nextTick;

    /** Makes the chain of a suite. */
    public SensorChain(SensorSuite suite) {
        this.suite = suite;
        available = Quantity.mask(suite.quantities());
        periodS = suite.periodS();
        accelerationPerTorque = suite.accelerationPerTorque();
        housingCanMove = !suite.arm().isNone();
        for (Quantity quantity : Quantity.values()) {
            boolean filtersHere = quantity != Quantity.TORQUE && quantity != Quantity.HOUSING_ACCELERATION;
            signals[quantity.code()] = new ChannelSignal(quantity, sensor(quantity), suite, filtersHere);
        }
        carrierAngle = signals[Quantity.CARRIER_ANGLE.code()];
        carrierSpeed = signals[Quantity.CARRIER_SPEED.code()];
        motorCurrent = signals[Quantity.MOTOR_CURRENT.code()];
        supplyVoltage = signals[Quantity.SUPPLY_VOLTAGE.code()];
        acceleration = signals[Quantity.HOUSING_ACCELERATION.code()];
        anvilAngle = signals[Quantity.ANVIL_ANGLE.code()];
        housingRate = signals[Quantity.HOUSING_RATE.code()];
        torque = signals[Quantity.TORQUE.code()];
        BlowDetector detector = suite.blowDetector();
        blows = new BlowReports(detector == null ? BlowDetector.IDEAL : detector);
        housing = new HousingMotion(suite.arm(), periodS);
        impacts = new ImpactTorques(
                sensor(Quantity.HOUSING_ACCELERATION).lowPass(),
                sensor(Quantity.TORQUE).lowPass(),
                periodS);
    }

    private ChannelSensor sensor(Quantity quantity) {
        ChannelSensor sensor = suite.sensor(quantity);
        return sensor == null ? ChannelSensor.IDEAL : sensor;
    }

    /** The suite that this chain was made of. */
    public SensorSuite suite() {
        return suite;
    }

    /** Time of a sample from the start, s; the same double as {@link SensorSuite#timeS}, and quick to have. */
    public double timeS(long tick) {
        return tick * periodS;
    }

    /**
     * Starts a run, from a plant that has just been started.
     *
     * @param tool housing and motor of the tool
     * @param errors gain and offset of its sensors
     * @param batteryRatio supply voltage over nominal
     * @param noiseKey the run's own key from {@link org.shutoffbench.draw.DrawKey#noiseKey}
     * @param quantities mask of the quantities to sample ({@link Quantity#mask})
     * @throws IllegalArgumentException for a quantity that the suite lacks
     */
    public void start(ImpactTool tool, SensorErrors errors, double batteryRatio, long noiseKey, int quantities) {
        requireAvailable(quantities);
        mask = quantities;
        supplyRatio = batteryRatio;
        amperePerNm = tool.motor().noLoadSpeedRadPerS() / suite.nominalVoltageV();
        nextTick = 0;
        reading.clear();
        for (ChannelSignal signal : signals) {
            signal.start(errors, noiseKey);
        }
        blows.start(NoiseStream.branch(noiseKey, BLOW_SHARES), NoiseStream.branch(noiseKey, BLOW_DELAYS));
        housing.start(tool.housing(), NoiseStream.branch(noiseKey, SWAY));
        impacts.start(samples(HOUSING_ACCELERATION), samples(TORQUE));
    }

    private void requireAvailable(int quantities) {
        if ((quantities & ~available) == 0) {
            return;
        }
        for (Quantity quantity : Quantity.values()) {
            if ((quantities & ~available & quantity.bit()) != 0) {
                throw new IllegalArgumentException(
                        "sensors \"" + suite.name() + "\" have no channel \"" + quantity.title() + "\"");
            }
        }
        throw new IllegalArgumentException("the mask has bits of no quantity");
    }

    /**
     * Follows the fast torques to the end of the planned step and takes note of a blow. To be called right before every
     * commit.
     */
    public void beforeCommit(Plant plant, double plannedEndS) {
        impacts.followTo(plant, plannedEndS);
        if (samples(BLOWS)) {
            blows.notice(plant);
        }
    }

    /**
     * Takes the sample of a tick; its time must lie inside the plant's planned step. Ticks come one after the other from 0.
     *
     * @return this chain's reading, overwritten by the next sample
     */
    public SensorReading sample(long tick, Plant plant) {
        if (tick != nextTick) {
            throw new IllegalStateException("samples must be taken one after the other");
        }
        nextTick++;
        double timeS = timeS(tick);
        sampleMotor(tick, plant, timeS);
        if (samples(ANVIL_ANGLE | HOUSING_RATE)) {
            sampleAgainstHousing(tick, plant, timeS);
        }
        if (samples(HOUSING_ACCELERATION | TORQUE)) {
            sampleImpacts(tick, plant, timeS);
        }
        if (samples(BLOWS)) {
            blows.notice(plant);
            reading.blows = blows.due(timeS);
        }
        return reading;
    }

    private void sampleMotor(long tick, Plant plant, double timeS) {
        if (samples(CARRIER_ANGLE)) {
            reading.carrierAngleRad = carrierAngle.read(tick, plant.carrierAngleRad(timeS));
        }
        if (samples(CARRIER_SPEED)) {
            reading.carrierSpeedRadPerS = carrierSpeed.read(tick, plant.carrierSpeedRadPerS(timeS));
        }
        if (samples(MOTOR_CURRENT)) {
            reading.motorCurrentA = motorCurrent.read(tick, plant.motorTorqueNm(timeS) * amperePerNm);
        }
        if (samples(SUPPLY_VOLTAGE)) {
            reading.supplyRatio = supplyVoltage.read(tick, supplyRatio);
        }
    }

    private void sampleAgainstHousing(long tick, Plant plant, double timeS) {
        if (housingCanMove) {
            housing.advance(tick, plant.motorTorqueNm(timeS));
        }
        if (samples(ANVIL_ANGLE)) {
            reading.anvilAngleRad = anvilAngle.read(tick, plant.anvilAngleRad(timeS) - housing.angleRad());
        }
        if (samples(HOUSING_RATE)) {
            reading.housingRateRadPerS = housingRate.read(tick, housing.rateRadPerS());
        }
    }

    private void sampleImpacts(long tick, Plant plant, double timeS) {
        impacts.followTo(plant, timeS);
        if (samples(HOUSING_ACCELERATION)) {
            double lugTorqueNm = impacts.lugTorqueNm(plant, timeS);
            reading.housingAccelerationMPerS2 = acceleration.read(tick, lugTorqueNm * accelerationPerTorque);
        }
        if (samples(TORQUE)) {
            reading.torqueNm = torque.read(tick, impacts.socketTorqueNm(plant, timeS));
        }
    }

    private boolean samples(int quantities) {
        return (mask & quantities) != 0;
    }

    /**
     * Makes this chain an exact copy of another one of the same suite, in mid-run.
     *
     * @throws IllegalArgumentException if the suites differ
     */
    @SuppressWarnings("ReferenceEquality") // chains of one run share their suite; a deep comparison would allocate
    public void copyFrom(SensorChain other) {
        if (suite != other.suite && !suite.equals(other.suite)) {
            throw new IllegalArgumentException("only a chain of the same suite can be copied");
        }
        mask = other.mask;
        supplyRatio = other.supplyRatio;
        amperePerNm = other.amperePerNm;
        nextTick = other.nextTick;
        reading.copyFrom(other.reading);
        for (int i = 0; i < signals.length; i++) {
            signals[i].copyFrom(other.signals[i]);
        }
        blows.copyFrom(other.blows);
        housing.copyFrom(other.housing);
        impacts.copyFrom(other.impacts);
    }
}
