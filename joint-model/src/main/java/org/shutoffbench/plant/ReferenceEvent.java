package org.shutoffbench.plant;

import static org.shutoffbench.plant.ReferenceMode.ANGLE;
import static org.shutoffbench.plant.ReferenceMode.CARRIER;
import static org.shutoffbench.plant.ReferenceMode.DELTA;
import static org.shutoffbench.plant.ReferenceMode.NUT;
import static org.shutoffbench.plant.ReferenceMode.PLASTIC;
import static org.shutoffbench.plant.ReferenceMode.PSI;

import org.shutoffbench.plant.ReferenceMode.Lug;
import org.shutoffbench.plant.ReferenceMode.Seat;

/** What ends a frozen branch: one margin each, positive before the event, and one change of the mode. */
enum ReferenceEvent {
    MOTOR_LIMIT_REACHED {
        @Override
        double margin(ReferenceMode m, double[] y) {
            if (m.drive == Drive.COAST || m.motor != 0) {
                return Double.POSITIVE_INFINITY;
            }
            return m.tool.motor().torqueLimitNm() - Math.abs(m.linearMotorTorque(y[CARRIER]));
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.motor = m.linearMotorTorque(y[CARRIER]) > 0 ? 1 : -1;
        }
    },
    MOTOR_LIMIT_LEFT {
        @Override
        double margin(ReferenceMode m, double[] y) {
            if (m.drive == Drive.COAST || m.motor == 0) {
                return Double.POSITIVE_INFINITY;
            }
            return m.motor * m.linearMotorTorque(y[CARRIER]) - m.tool.motor().torqueLimitNm();
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.motor = 0;
        }
    },
    COASTING_CARRIER_STOPS {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.drive == Drive.COAST && m.motor != 0 ? m.motor * y[CARRIER] : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            y[CARRIER] = 0;
            double cam = m.camTorque(y);
            double drag = m.tool.motor().dragTorqueNm();
            m.motor = cam > drag ? -1 : cam < -drag ? 1 : 0;
        }
    },
    COASTING_CARRIER_STARTS {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.isCarrierHeld()
                    ? m.tool.motor().dragTorqueNm() - Math.abs(m.camTorque(y))
                    : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.motor = m.camTorque(y) > 0 ? -1 : 1;
        }
    },
    CAM_SEAT_LEFT {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.camSide == 0 ? m.tool.cam().seatAngleRad() - Math.abs(y[DELTA]) : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.camSide = y[DELTA] > 0 ? 1 : -1;
        }
    },
    CAM_SEAT_ENTERED {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.camSide == 0
                    ? Double.POSITIVE_INFINITY
                    : m.camSide * y[DELTA] - m.tool.cam().seatAngleRad();
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.camSide = 0;
        }
    },
    GROOVE_END_MET {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.groove == 0 ? m.tool.cam().grooveEndRad() - Math.abs(y[DELTA]) : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.groove = y[DELTA] > 0 ? 1 : -1;
        }
    },
    GROOVE_END_LEFT {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.groove == 0
                    ? Double.POSITIVE_INFINITY
                    : m.groove * y[DELTA] - m.tool.cam().grooveEndRad();
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.groove = 0;
        }
    },
    LIFT_OFF {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.lifted == 0 ? m.tool.cam().liftOffAngleRad() - Math.abs(y[DELTA]) : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.lifted = y[DELTA] > 0 ? 1 : -1;
        }
    },
    DROP_IN {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.lifted == 0
                    ? Double.POSITIVE_INFINITY
                    : m.lifted * y[DELTA] - m.tool.cam().liftOffAngleRad();
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.lifted = 0;
        }
    },
    LUGS_MEET {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.lug == Lug.FREE ? -y[PSI] : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            y[PSI] = 0;
            if (m.lifted == 0) {
                m.lug = Lug.PRESSING;
            }
        }
    },
    LUG_FORCE_GONE {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.lug == Lug.PRESSING ? m.pressedLugTorque(y) : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.lug = y[PSI] > 0 ? Lug.OPEN : Lug.FREE;
        }
    },
    LUG_FORCE_RESUMES {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.lug == Lug.OPEN ? -m.pressedLugTorque(y) : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.lug = Lug.PRESSING;
        }
    },
    LUGS_CLEAR {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.lug == Lug.OPEN ? y[PSI] : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            y[PSI] = 0;
            m.lug = Lug.FREE;
        }
    },
    NUT_BREAKS_AWAY_ON {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.nut == 0 ? m.joint.staticRatio() * m.torqueOn(y) - m.socketTorque(y) : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.nut = 1;
        }
    },
    NUT_BREAKS_AWAY_BACK {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.nut == 0 ? m.joint.staticRatio() * m.torqueOff(y) + m.socketTorque(y) : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.nut = -1;
        }
    },
    NUT_STOPS {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.nut == 0 ? Double.POSITIVE_INFINITY : m.nut * y[NUT];
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            y[NUT] = 0;
            m.nut = 0;
            if (m.seat == Seat.YIELDING) {
                m.seat = Seat.ELASTIC;
            }
        }
    },
    FREE_TORQUE_ZONE_ENDS {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.nut > 0
                    ? m.joint.freeTorque().endRad(m.freeZone) - y[ANGLE]
                    : m.nut < 0 ? y[ANGLE] - m.joint.freeTorque().startRad(m.freeZone) : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.freeZone += m.nut;
        }
    },
    CLAMP_ZONE_ENDS {
        @Override
        double margin(ReferenceMode m, double[] y) {
            if (m.nut == 0) {
                return Double.POSITIVE_INFINITY;
            }
            double e = m.elasticAngle(y);
            double width = m.joint.clamp().seatingWidthRad();
            if (m.nut > 0) {
                return switch (m.seat) {
                    case LOOSE -> -e;
                    case SEATING -> width - e;
                    case ELASTIC -> m.yieldAngle(y[PLASTIC]) - e;
                    case YIELDING ->
                        m.fractured
                                ? Double.POSITIVE_INFINITY
                                : m.joint.yielding().fractureAngleRad() - y[PLASTIC];
                };
            }
            return switch (m.seat) {
                case LOOSE -> Double.POSITIVE_INFINITY;
                case SEATING -> e;
                case ELASTIC, YIELDING -> e - width;
            };
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            boolean seats = m.joint.clamp().seatingWidthRad() > 0;
            if (m.nut > 0) {
                switch (m.seat) {
                    case LOOSE -> m.seat = seats ? Seat.SEATING : Seat.ELASTIC;
                    case SEATING -> m.seat = Seat.ELASTIC;
                    case ELASTIC -> m.seat = Seat.YIELDING;
                    case YIELDING -> m.fractured = true;
                }
            } else {
                m.seat = m.seat == Seat.ELASTIC && seats ? Seat.SEATING : Seat.LOOSE;
            }
        }
    },
    GALLING_STARTS {
        @Override
        double margin(ReferenceMode m, double[] y) {
            return m.nut > 0 && !m.galled ? m.joint.galling().fromAngleRad() - y[ANGLE] : Double.POSITIVE_INFINITY;
        }

        @Override
        void apply(ReferenceMode m, double[] y) {
            m.galled = true;
        }
    };

    /** Distance to the event, positive before it; infinite where it cannot happen. */
    abstract double margin(ReferenceMode mode, double[] y);

    /** Changes the mode and, where a variable is exactly known at the event, sets it. */
    abstract void apply(ReferenceMode mode, double[] y);
}
