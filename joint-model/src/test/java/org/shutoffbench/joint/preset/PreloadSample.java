package org.shutoffbench.joint.preset;

import org.shutoffbench.draw.DrawKey;
import org.shutoffbench.draw.Lognormal;
import org.shutoffbench.draw.Stream;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.friction.FrictionScatter;
import org.shutoffbench.joint.friction.Scatter;
import org.shutoffbench.joint.thread.ScrewThread;

/** Joints drawn from a friction preset, each its own lot; what a perfect torque stop leaves in them. */
final class PreloadSample {

    private final DrawKey key;
    private final FrictionScatter friction;

    PreloadSample(long seed, FrictionScatter friction) {
        this.key = DrawKey.of(seed, "preload sample", "friction");
        this.friction = friction;
    }

    double threadFriction(int joint) {
        return drawn(friction.thread(), joint, 0);
    }

    double bearingFriction(int joint) {
        return threadFriction(joint) * drawn(friction.bearingOverThread(), joint, 1);
    }

    /** Clamp force in N of one joint at a torque that counts in full. */
    double forceN(int joint, ScrewThread thread, double bearingDiameterM, double torqueNm) {
        return torqueNm
                / TorqueTension.of(
                                thread.pitchM(),
                                thread.pitchDiameterM(),
                                bearingDiameterM,
                                threadFriction(joint),
                                bearingFriction(joint))
                        .kappaOnM();
    }

    private double drawn(Scatter scatter, int joint, int draw) {
        return scatter.median()
                * key.draw(Lognormal.ofCv(1, scatter.lotCv()), Stream.LOT, joint, draw)
                * key.draw(Lognormal.ofCv(1, scatter.pieceCv()), Stream.PIECE, joint, draw)
                * key.draw(Lognormal.ofCv(1, scatter.repeatCv()), Stream.REPEAT, joint, draw);
    }
}
