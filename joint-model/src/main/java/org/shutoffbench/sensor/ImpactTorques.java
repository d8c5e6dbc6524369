package org.shutoffbench.sensor;

import org.shutoffbench.plant.Plant;

/**
 * Lug torque and socket torque through the low pass of their sensors. Both come in pulses shorter than a sample, so they are
 * looked up within the plant's steps, cell by cell.
 */
final class ImpactTorques {

    /** Longest cell, s; the last digit keeps 0.1 ms at five cells. */
    private static final double LONGEST_CELL_S = 20.000001e-6;

    private static final double GAUSS_POINT = 1 / Math.sqrt(3);

    private final CellFilter lug;
    private final CellFilter socket;
    private final boolean lugIsFiltered;
    private final boolean socketIsFiltered;
    private final double periodS;
    private final double cellS;
    private final int cellsPerPeriod;

    private boolean followsLug;
    private boolean followsSocket;
    private long tick;
    private int cell;
    private double cellMiddleS;
    private double cellEndS;
    private double doneToS;

    ImpactTorques(LowPass lugLowPass, LowPass socketLowPass, double periodS) {
        this.periodS = periodS;
        cellsPerPeriod = (int) Math.ceil(periodS / LONGEST_CELL_S);
        cellS = periodS / cellsPerPeriod;
        lug = new CellFilter(lugLowPass, cellS);
        socket = new CellFilter(socketLowPass, cellS);
        lugIsFiltered = !lugLowPass.isNone();
        socketIsFiltered = !socketLowPass.isNone();
    }

    void start(boolean sampleLug, boolean sampleSocket) {
        followsLug = sampleLug && lugIsFiltered;
        followsSocket = sampleSocket && socketIsFiltered;
        lug.start();
        socket.start();
        tick = 0;
        cell = 0;
        placeCell();
        doneToS = 0;
    }

    /** Follows the torques up to a time inside the planned step. */
    void followTo(Plant plant, double timeS) {
        if (!followsLug && !followsSocket) {
            return;
        }
        while (cellEndS <= timeS) {
            addPiece(plant, cellEndS);
            lug.close();
            socket.close();
            nextCell();
        }
        addPiece(plant, timeS);
    }

    /** Torque at the lugs as its sensor feels it, N m. */
    double lugTorqueNm(Plant plant, double timeS) {
        return lugIsFiltered ? lug.value() : plant.lugTorqueNm(timeS);
    }

    /** Torque through the socket as its sensor feels it, N m. */
    double socketTorqueNm(Plant plant, double timeS) {
        return socketIsFiltered ? socket.value() : plant.socketTorqueNm(timeS);
    }

    private void addPiece(Plant plant, double toS) {
        double widthS = toS - doneToS;
        if (widthS <= 0) {
            return;
        }
        double middleS = doneToS + 0.5 * widthS;
        double apartS = 0.5 * widthS * GAUSS_POINT;
        double fromCentreS = middleS - cellMiddleS;
        if (followsLug) {
            lug.add(
                    widthS,
                    fromCentreS,
                    apartS,
                    plant.lugTorqueNm(middleS - apartS),
                    plant.lugTorqueNm(middleS + apartS));
        }
        if (followsSocket) {
            socket.add(
                    widthS,
                    fromCentreS,
                    apartS,
                    plant.socketTorqueNm(middleS - apartS),
                    plant.socketTorqueNm(middleS + apartS));
        }
        doneToS = toS;
    }

    private void nextCell() {
        cell++;
        if (cell == cellsPerPeriod) {
            cell = 0;
            tick++;
        }
        placeCell();
    }

    /** Cells end at the very doubles of the sample times. */
    private void placeCell() {
        cellEndS = cell + 1 == cellsPerPeriod ? (tick + 1) * periodS : tick * periodS + (cell + 1) * cellS;
        cellMiddleS = tick * periodS + (cell + 0.5) * cellS;
    }

    void copyFrom(ImpactTorques other) {
        followsLug = other.followsLug;
        followsSocket = other.followsSocket;
        tick = other.tick;
        cell = other.cell;
        cellMiddleS = other.cellMiddleS;
        cellEndS = other.cellEndS;
        doneToS = other.doneToS;
        lug.copyFrom(other.lug);
        socket.copyFrom(other.socket);
    }
}
