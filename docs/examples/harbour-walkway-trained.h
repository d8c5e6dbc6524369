/* Learned regression, format 1. Made by train; do not edit. */
/* by: train */
/* scenario: harbour walkway */
/* training seed: 3000004 */
/* validation seed: 4000004 */
/* joints: 300 per family to train on, as many to validate */
/* blows: 35269 to train on, 34917 to validate */
/* penalty: 1.0E-6 */
/* error in training: 2.508 N*m root mean square */
/* error in validation: 2.562 N*m root mean square */
/* explained in validation: 0.9871 */
/* joints in training: in window 1199 of 1200, silent misses 1 */
/* joints in validation: in window 1197 of 1200, silent misses 0 */
#ifndef LEARNED_REGRESSION_H
#define LEARNED_REGRESSION_H

#define LEARNED_FEATURES 9
#define LEARNED_TERMS 55

static const float learned_mean[9] = {
    78.572296f,
    81.18884f,
    5.7745767f,
    77.00725f,
    147.8748f,
    86.037796f,
    1.1472578f,
    21.163742f,
    47.063637f,
};

static const float learned_scale[9] = {
    20.914717f,
    20.114002f,
    7.390563f,
    43.320435f,
    3.1390464f,
    27.645824f,
    0.6709928f,
    15.51664f,
    13.663953f,
};

static const float learned_coefficient[55] = {
    -0.5810116f,
    7.2362003f,
    -8.6152115f,
    3.4829037f,
    -7.079587f,
    -0.08266998f,
    1.3068211f,
    -12.993051f,
    11.532319f,
    0.43523556f,
    -16.729153f,
    -3.3552976f,
    -59.061817f,
    -34.075462f,
    -0.1601432f,
    3.206417f,
    5.308925f,
    3.0454297f,
    30.760706f,
    22.534029f,
    60.78921f,
    32.580685f,
    -0.75796884f,
    -4.5477896f,
    10.913094f,
    -20.996962f,
    -31.992037f,
    -0.029759994f,
    -4.425333f,
    -0.37889865f,
    -0.19344279f,
    15.52998f,
    -17.39205f,
    1.5484843f,
    -2.9120178f,
    -0.17806104f,
    0.2827812f,
    -6.4852285f,
    3.1341605f,
    1.6186395f,
    -0.008643949f,
    0.10138682f,
    -0.03732382f,
    0.14784393f,
    0.6876797f,
    0.3084272f,
    -0.11216861f,
    0.3993619f,
    -0.3737412f,
    -5.8544126f,
    13.159776f,
    -16.897524f,
    -7.694329f,
    17.127552f,
    0.6029844f,
};

#endif
