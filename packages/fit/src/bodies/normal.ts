import type { Share } from '../units.js';

const SQRT_2PI = Math.sqrt(2 * Math.PI);

/** Density of the standard normal distribution. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / SQRT_2PI;
}

/**
 * P(Z ≤ z) of the standard normal distribution; relative error below 1e-14 in both tails.
 * Rational approximations of W. J. Cody, "Rational Chebyshev approximations for the error function", 1969.
 */
export function normalCdf(z: number): Share {
  return 0.5 * erfc(-z / Math.SQRT2);
}

/**
 * The z with P(Z ≤ z) = p; −Infinity at 0 and Infinity at 1, NaN outside 0..1.
 * M. J. Wichura, algorithm AS 241 (PPND16), Applied Statistics 37 (1988); about 1 part in 1e16.
 */
export function normalQuantile(p: Share): number {
  if (!(p >= 0 && p <= 1)) return NaN;
  if (p === 0) return -Infinity;
  if (p === 1) return Infinity;
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * polynomial(CENTRE_TOP, r)) / polynomial(CENTRE_BOTTOM, r);
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const tail =
    r <= 5
      ? polynomial(MIDDLE_TOP, r - 1.6) / polynomial(MIDDLE_BOTTOM, r - 1.6)
      : polynomial(FAR_TOP, r - 5) / polynomial(FAR_BOTTOM, r - 5);
  return q < 0 ? -tail : tail;
}

function erfc(x: number): number {
  const y = Math.abs(x);
  if (y <= 0.46875) {
    const square = y > 1e-300 ? y * y : 0;
    return 1 - (x * polynomial(ERF_TOP, square)) / polynomial(ERF_BOTTOM, square);
  }
  if (y > LARGEST) return x < 0 ? 2 : 0;
  const upper = y <= 4 ? polynomial(ERFC_TOP, y) / polynomial(ERFC_BOTTOM, y) : erfcFar(y);
  const value = upper * expMinusSquare(y);
  return x < 0 ? 2 - value : value;
}

/** Beyond it the tail is smaller than the smallest number. */
const LARGEST = 27.3;

function erfcFar(y: number): number {
  const inverse = 1 / (y * y);
  const fraction = (inverse * polynomial(FAR_ERFC_TOP, inverse)) / polynomial(FAR_ERFC_BOTTOM, inverse);
  return (1 / Math.sqrt(Math.PI) - fraction) / y;
}

/** exp(−y²) without the rounding of y²: the square is split at 1/16. */
function expMinusSquare(y: number): number {
  const head = Math.trunc(y * 16) / 16;
  return Math.exp(-head * head) * Math.exp(-(y - head) * (y + head));
}

/** Coefficients from the constant term up. */
function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (let index = coefficients.length - 1; index >= 0; index--) value = value * x + coefficients[index]!;
  return value;
}

// prettier-ignore
const ERF_TOP = [3209.377589138469472562, 377.485237685302021, 113.8641541510501556, 3.16112374387056560, 0.185777706184603153];
// prettier-ignore
const ERF_BOTTOM = [2844.236833439170622273, 1282.616526077372276, 244.0246379344441733, 23.6012909523441209, 1];
// prettier-ignore
const ERFC_TOP = [1230.33935479799725272, 2051.07837782607146532, 1712.04761263407058314, 881.952221241769090411, 298.635138197400131132, 66.1191906371416294775, 8.88314979438837594118, 0.564188496988670089180, 2.15311535474403846343e-8];
// prettier-ignore
const ERFC_BOTTOM = [1230.33935480374942043, 3439.36767414372163696, 4362.61909014324715820, 3290.79923573345962678, 1621.38957456669018874, 537.181101862009857509, 117.693950891312499305, 15.7449261107098347253, 1];
// prettier-ignore
const FAR_ERFC_TOP = [6.58749161529837803157e-4, 1.60837851487422766278e-2, 1.25781726111229246204e-1, 3.60344899949804439429e-1, 3.05326634961232344035e-1, 1.63153871373020978498e-2];
// prettier-ignore
const FAR_ERFC_BOTTOM = [2.33520497626869185443e-3, 6.05183413124413191178e-2, 5.27905102951428412248e-1, 1.87295284992346725209, 2.56852019228982242072, 1];
// prettier-ignore
const CENTRE_TOP = [3.3871328727963666080, 1.3314166789178437745e2, 1.9715909503065514427e3, 1.3731693765509461125e4, 4.5921953931549871457e4, 6.7265770927008700853e4, 3.3430575583588128105e4, 2.5090809287301226727e3];
// prettier-ignore
const CENTRE_BOTTOM = [1, 4.2313330701600911252e1, 6.8718700749205790830e2, 5.3941960214247511077e3, 2.1213794301586595867e4, 3.9307895800092710610e4, 2.8729085735721942674e4, 5.2264952788528545610e3];
// prettier-ignore
const MIDDLE_TOP = [1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504, 1.27045825245236838258, 2.41780725177450611770e-1, 2.27238449892691845833e-2, 7.74545014278341407640e-4];
// prettier-ignore
const MIDDLE_BOTTOM = [1, 2.05319162663775882187, 1.67638483018380384940, 6.89767334985100004550e-1, 1.48103976427480074590e-1, 1.51986665636164571966e-2, 5.47593808499534494600e-4, 1.05075007164441684324e-9];
// prettier-ignore
const FAR_TOP = [6.65790464350110377720, 5.46378491116411436990, 1.78482653991729133580, 2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7];
// prettier-ignore
const FAR_BOTTOM = [1, 5.99832206555887937690e-1, 1.36929880922735805310e-1, 1.48753612908506148525e-2, 7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15];
