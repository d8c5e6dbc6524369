/* Learned regression, format 1. Made by train; do not edit. */
/* by: train */
/* scenario: harbour walkway */
/* training seed: 3000004 */
/* validation seed: 4000004 */
/* joints: 500 per family to train on, as many to validate */
/* blows: 58593 to train on, 58419 to validate */
/* penalty: 1.0E-6 */
/* error in training: 2.618 N*m root mean square */
/* error in validation: 2.562 N*m root mean square */
/* explained in validation: 0.9871 */
/* joints in training: in window 1999 of 2000, silent misses 1 */
/* joints in validation: in window 1996 of 2000, silent misses 0 */
#ifndef LEARNED_REGRESSION_H
#define LEARNED_REGRESSION_H

#define LEARNED_FEATURES 9
#define LEARNED_TERMS 55

static const float learned_mean[9] = {
    78.5513f,
    81.180916f,
    5.739718f,
    77.36344f,
    147.83777f,
    85.953255f,
    1.1433513f,
    21.072962f,
    47.029816f,
};

static const float learned_scale[9] = {
    20.950392f,
    20.141575f,
    7.332546f,
    43.46015f,
    3.131716f,
    27.609585f,
    0.6692636f,
    15.451376f,
    13.672902f,
};

static const float learned_coefficient[55] = {
    -0.676927f,
    7.577252f,
    -8.855559f,
    3.7443645f,
    -6.7889547f,
    -0.20802191f,
    1.303685f,
    -9.980573f,
    7.802795f,
    1.7748857f,
    -23.049984f,
    0.60558325f,
    -59.80992f,
    -40.690704f,
    0.43213022f,
    10.668875f,
    -3.315078f,
    32.123913f,
    29.440214f,
    23.403028f,
    60.770332f,
    39.958637f,
    -1.1774741f,
    -11.7890005f,
    21.140467f,
    -50.292904f,
    -29.256073f,
    -0.1592154f,
    -3.9972813f,
    -0.3835618f,
    -0.24373995f,
    14.934766f,
    -16.166557f,
    1.6689422f,
    -3.6197171f,
    -0.09882791f,
    0.7512983f,
    -7.0391846f,
    4.2114735f,
    1.5650698f,
    -0.0053380528f,
    0.110799834f,
    0.048126485f,
    0.04930161f,
    0.5261426f,
    0.29474723f,
    -0.46384558f,
    0.7180917f,
    -0.5433796f,
    -7.2344637f,
    15.258069f,
    -17.106812f,
    -8.757836f,
    18.37644f,
    -0.23311599f,
};

#endif
