/* Learned regression, format 1. Made by train; do not edit. */
/* by: train */
/* scenario: harbour walkway, heavy tool */
/* training seed: 3000004 */
/* validation seed: 4000004 */
/* joints: 500 per family to train on, as many to validate */
/* blows: 7627 to train on, 7697 to validate */
/* penalty: 1.0E-6 */
/* error in training: 3.191 N*m root mean square */
/* error in validation: 3.335 N*m root mean square */
/* explained in validation: 0.8993 */
/* joints in training: in window 1906 of 2000, silent misses 45 */
/* joints in validation: in window 1914 of 2000, silent misses 34 */
#ifndef LEARNED_REGRESSION_H
#define LEARNED_REGRESSION_H

#define LEARNED_FEATURES 9
#define LEARNED_TERMS 55

static const float learned_mean[9] = {
    38.183483f,
    41.61481f,
    4.0144f,
    44.143063f,
    191.19406f,
    40.469162f,
    1.0961142f,
    5.870198f,
    18.709524f,
};

static const float learned_scale[9] = {
    4.5937953f,
    4.1532974f,
    4.367082f,
    25.17209f,
    4.7157335f,
    7.409953f,
    0.5596608f,
    3.3241372f,
    6.349942f,
};

static const float learned_coefficient[55] = {
    55.05992f,
    11.766101f,
    -2.6840699f,
    8.028516f,
    -9.929071f,
    -0.5690127f,
    1.0658499f,
    6.4914484f,
    -19.304031f,
    7.60472f,
    -35.875862f,
    46.167828f,
    -3.508795f,
    14.23565f,
    -2.2048633f,
    -7.9893723f,
    31.875576f,
    106.95289f,
    -2.4421327f,
    -12.028162f,
    3.4429195f,
    -18.853909f,
    1.833268f,
    4.3771763f,
    -29.862343f,
    -100.91355f,
    2.560454f,
    0.3993179f,
    1.3463932f,
    -0.20252284f,
    -3.8046477f,
    3.0876362f,
    -5.3413463f,
    1.7874538f,
    12.32791f,
    -0.9981163f,
    -0.7965072f,
    8.900776f,
    43.663937f,
    -4.6580334f,
    -0.033504855f,
    0.5686603f,
    -0.36916503f,
    1.1063967f,
    -0.49092084f,
    1.2097534f,
    5.0177555f,
    -1.711882f,
    3.168892f,
    -8.333002f,
    9.861131f,
    -10.416524f,
    -1.0080273f,
    5.3556075f,
    -4.274297f,
};

#endif
