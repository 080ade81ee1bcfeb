/** @module The normal distribution: probability below a value, and the value below which a probability lies. */

/** c₀ + c₁x + c₂x² … */
const polynomial = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i -= 1) sum = sum * x + (coefficients[i] ?? 0);
  return sum;
};

// source: W. J. Cody, Rational Chebyshev approximations for the error function, Math. Comp. 23 (1969)
// (coefficients from memory; the whole is held against another library in the tests)
const innerTop = [
  3209.3775891384694, 377.485237685302, 113.86415415105016, 3.1611237438705655, 0.18577770618460315,
];
const innerBottom = [2844.236833439171, 1282.6165260773723, 244.02463793444417, 23.601290952344122, 1];
const middleTop = [
  1230.3393547979972, 2051.0783778260716, 1712.0476126340707, 881.952221241769, 298.6351381974001,
  66.11919063714163, 8.883149794388377, 0.5641884969886701, 2.1531153547440383e-8,
];
const middleBottom = [
  1230.3393548037495, 3439.3676741437216, 4362.619090143247, 3290.7992357334597, 1621.3895745666903,
  537.1811018620099, 117.6939508913125, 15.744926110709835, 1,
];
const outerTop = [
  0.0006587491615298378, 0.016083785148742275, 0.12578172611122926, 0.36034489994980445, 0.30532663496123236,
  0.016315387137302097,
];
const outerBottom = [
  0.0023352049762686918, 0.06051834131244132, 0.5279051029514285, 1.8729528499234673, 2.568520192289822, 1,
];
const rootOfPi = Math.sqrt(Math.PI);

/** Complementary error function for x ≥ 0. */
const complement = (x: number): number => {
  if (x > 40) return 0; // nothing is left in a double, and larger squares overflow
  const square = x * x;
  if (x <= 0.46875) return 1 - (x * polynomial(innerTop, square)) / polynomial(innerBottom, square);
  // exp(-x²) with x² split in two, since the rounding of x² itself would be magnified
  const coarse = Math.trunc(x * 16) / 16;
  const bell = Math.exp(-coarse * coarse) * Math.exp(-(x - coarse) * (x + coarse));
  if (x <= 4) return (bell * polynomial(middleTop, x)) / polynomial(middleBottom, x);
  const inverse = 1 / square;
  const rest = (inverse * polynomial(outerTop, inverse)) / polynomial(outerBottom, inverse);
  return (bell * (1 / rootOfPi - rest)) / x;
};

/**
 * Probability that a standard normal value lies below z.
 *
 * @param z  any number, in standard deviations
 * @returns 0 to 1, to full double precision also far out on the low side
 * @source  Cody (1969), by way of the complementary error function
 * @example normalCumulative(1.96) // 0.975
 */
export const normalCumulative = (z: number): number => {
  const x = Math.abs(z) / Math.SQRT2;
  const tail = 0.5 * complement(x);
  return z > 0 ? 1 - tail : tail;
};

// source: M. J. Wichura, Algorithm AS 241: the percentage points of the normal distribution,
// Applied Statistics 37 (1988), PPND16 (coefficients from memory; held against another library in the tests)
const centreTop = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
];
const centreBottom = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852854,
];
const shoulderTop = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
];
const shoulderBottom = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995345, 1.0507500716444169e-9,
];
const tailTop = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
  0.0012426609473880784, 0.000027115555687434876, 2.0103343992922881e-7,
];
const tailBottom = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
  0.000018463183175100548, 1.421511758316446e-7, 2.0442631033899397e-15,
];

/**
 * The value below which a standard normal value lies with a given probability.
 *
 * @param probability  0 to 1; the ends give minus and plus infinity
 * @returns standard deviations from the mean
 * @source  Wichura, Algorithm AS 241 (1988)
 * @example normalQuantile(0.95) // 1.645
 */
export const normalQuantile = (probability: number): number => {
  if (!(probability >= 0 && probability <= 1)) throw new RangeError(`${probability} is no probability`);
  const fromHalf = probability - 0.5;
  if (Math.abs(fromHalf) <= 0.425) {
    const r = 0.180625 - fromHalf * fromHalf;
    return (fromHalf * polynomial(centreTop, r)) / polynomial(centreBottom, r);
  }
  const tail = fromHalf < 0 ? probability : 1 - probability;
  if (tail === 0) return fromHalf < 0 ? -Infinity : Infinity;
  const r = Math.sqrt(-Math.log(tail));
  const size =
    r <= 5
      ? polynomial(shoulderTop, r - 1.6) / polynomial(shoulderBottom, r - 1.6)
      : polynomial(tailTop, r - 5) / polynomial(tailBottom, r - 5);
  return fromHalf < 0 ? -size : size;
};
