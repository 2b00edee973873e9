/**
 * Colour as measured: CIELAB from tristimulus values, the CIE 1976 and CIEDE2000
 * differences, and the yellowness index. Lab values of an instrument are used as
 * they are, never adapted to another white; two readings may be compared only
 * when illuminant, observer and geometry are the same.
 */

export type Xyz = { x: number; y: number; z: number };
export type Lab = { lightness: number; a: number; b: number };

export const illuminantObservers = ["C/2°", "D65/2°", "C/10°", "D65/10°"] as const;
export type IlluminantObserver = (typeof illuminantObservers)[number];

/** Tristimulus values of the white, Y = 100; CIE, from memory, checked by yellowness 0 of each white. */
export const whitePoints: Readonly<Record<IlluminantObserver | "D50/2°", Xyz>> = {
  "C/2°": { x: 98.074, y: 100, z: 118.232 },
  "D65/2°": { x: 95.047, y: 100, z: 108.883 },
  "C/10°": { x: 97.285, y: 100, z: 116.145 },
  "D65/10°": { x: 94.811, y: 100, z: 107.304 },
  "D50/2°": { x: 96.422, y: 100, z: 82.521 },
};

/** ASTM E313-15e1, coefficients of X and Z. */
const yellownessCoefficients: Readonly<Record<IlluminantObserver, { x: number; z: number }>> = {
  "C/2°": { x: 1.2769, z: 1.0592 },
  "D65/2°": { x: 1.2985, z: 1.1335 },
  "C/10°": { x: 1.2871, z: 1.0781 },
  "D65/10°": { x: 1.3013, z: 1.1498 },
};

function requireFinite(...values: number[]): void {
  if (!values.every(Number.isFinite)) throw new RangeError("A colour value is not a finite number.");
}

function requireXyz({ x, y, z }: Xyz): void {
  requireFinite(x, y, z);
  if (!(x >= 0 && y >= 0 && z >= 0)) throw new RangeError("Tristimulus values must not be negative.");
}

function requireWhite(white: Xyz): void {
  requireXyz(white);
  if (!(white.x > 0 && white.y > 0 && white.z > 0)) throw new RangeError("The white must be positive.");
}

/** CIE 15: the cube root, and below (6/29)³ the straight line that meets it with the same slope. */
const epsilon = 216 / 24389;
const kappa = 24389 / 27;

function compress(ratio: number): number {
  return ratio > epsilon ? Math.cbrt(ratio) : (kappa * ratio + 16) / 116;
}

function expand(value: number): number {
  const cube = value ** 3;
  return cube > epsilon ? cube : (116 * value - 16) / kappa;
}

/**
 * CIELAB of a colour under its white; both on the same scale.
 * @throws {RangeError} @source cie-15 @accuracy 1e-7 of published rows
 */
export function labFromXyz(colour: Xyz, white: Xyz): Lab {
  requireXyz(colour);
  requireWhite(white);
  const x = compress(colour.x / white.x);
  const y = compress(colour.y / white.y);
  const z = compress(colour.z / white.z);
  return { lightness: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}

/** The inverse of `labFromXyz`. @throws {RangeError} */
export function xyzFromLab({ lightness, a, b }: Lab, white: Xyz): Xyz {
  requireFinite(lightness, a, b);
  requireWhite(white);
  const y = (lightness + 16) / 116;
  return { x: white.x * expand(y + a / 500), y: white.y * expand(y), z: white.z * expand(y - b / 200) };
}

/** ΔE*ab, the distance in CIELAB. @throws {RangeError} @source cie-15 */
export function deltaE76(first: Lab, second: Lab): number {
  requireFinite(first.lightness, first.a, first.b, second.lightness, second.a, second.b);
  return Math.hypot(first.lightness - second.lightness, first.a - second.a, first.b - second.b);
}

const radians = Math.PI / 180;
const twentyFiveTo7 = 25 ** 7;

function hueDegrees(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const degrees = Math.atan2(b, a) / radians;
  return degrees < 0 ? degrees + 360 : degrees;
}

/** Difference and mean of two hues on the circle, equations 10 and 14; a grey has no hue of its own. */
function hueDifferenceAndMean(
  first: number,
  second: number,
  grey: boolean,
): { difference: number; mean: number } {
  if (grey) return { difference: 0, mean: first + second };
  const plain = second - first;
  const sum = first + second;
  if (Math.abs(plain) <= 180) return { difference: plain, mean: sum / 2 };
  return {
    difference: plain > 180 ? plain - 360 : plain + 360,
    mean: sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2,
  };
}

/**
 * ΔE00 with all weights 1, in the order of the paper. The mean hue jumps where
 * two hues lie opposite each other; that is the formula, not an error.
 * @throws {RangeError} @source sharma-2005, equations 2 to 22 @accuracy 1e-4 on the 34 published pairs
 */
export function deltaE2000(first: Lab, second: Lab): number {
  requireFinite(first.lightness, first.a, first.b, second.lightness, second.a, second.b);
  // Step 1: chroma and hue, with a* stretched near grey.
  const meanChromaTo7 = ((Math.hypot(first.a, first.b) + Math.hypot(second.a, second.b)) / 2) ** 7;
  const stretch = 1.5 - 0.5 * Math.sqrt(meanChromaTo7 / (meanChromaTo7 + twentyFiveTo7));
  const chroma1 = Math.hypot(stretch * first.a, first.b);
  const chroma2 = Math.hypot(stretch * second.a, second.b);
  const hue1 = hueDegrees(stretch * first.a, first.b);
  const hue2 = hueDegrees(stretch * second.a, second.b);
  const hue = hueDifferenceAndMean(hue1, hue2, chroma1 * chroma2 === 0);
  // Step 2: the three differences.
  const lightnessStep = second.lightness - first.lightness;
  const chromaStep = chroma2 - chroma1;
  const hueStep = 2 * Math.sqrt(chroma1 * chroma2) * Math.sin((hue.difference / 2) * radians);
  // Step 3: their weights at the mean colour.
  const meanLightness = (first.lightness + second.lightness) / 2;
  const meanChroma = (chroma1 + chroma2) / 2;
  const cosine = (factor: number, offset: number) => Math.cos((factor * hue.mean + offset) * radians);
  const t = 1 - 0.17 * cosine(1, -30) + 0.24 * cosine(2, 0) + 0.32 * cosine(3, 6) - 0.2 * cosine(4, -63);
  const fromMiddle = (meanLightness - 50) ** 2;
  const lightnessWeight = 1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle);
  const chromaWeight = 1 + 0.045 * meanChroma;
  const hueWeight = 1 + 0.015 * meanChroma * t;
  // Blues: chroma and hue differences pull on each other near 275°.
  const turnDegrees = 30 * Math.exp(-(((hue.mean - 275) / 25) ** 2));
  const meanPrimeTo7 = meanChroma ** 7;
  const rotation =
    -Math.sin(2 * turnDegrees * radians) * 2 * Math.sqrt(meanPrimeTo7 / (meanPrimeTo7 + twentyFiveTo7));
  const dl = lightnessStep / lightnessWeight;
  const dc = chromaStep / chromaWeight;
  const dh = hueStep / hueWeight;
  return Math.sqrt(Math.max(0, dl * dl + dc * dc + dh * dh + rotation * dc * dh));
}

/**
 * Yellowness index; 0 for the perfect white of the illuminant, negative for bluish.
 * @param colour tristimulus values on the scale where the white has Y = 100
 * @throws {RangeError} for a black without Y @source astm-e313
 */
export function yellownessIndex(colour: Xyz, illuminantObserver: IlluminantObserver): number {
  requireXyz(colour);
  if (!(colour.y > 0)) throw new RangeError("Yellowness needs a colour with a positive Y.");
  const { x, z } = yellownessCoefficients[illuminantObserver];
  return (100 * (x * colour.x - z * colour.z)) / colour.y;
}

/** ISO 105-A02: grey scale grades with their ΔE*ab and half-width. */
const greyScale = [
  { grade: "5", difference: 0, tolerance: 0.2 },
  { grade: "4–5", difference: 0.8, tolerance: 0.2 },
  { grade: "4", difference: 1.7, tolerance: 0.3 },
  { grade: "3–4", difference: 2.5, tolerance: 0.35 },
  { grade: "3", difference: 3.4, tolerance: 0.4 },
  { grade: "2–3", difference: 4.8, tolerance: 0.5 },
  { grade: "2", difference: 6.8, tolerance: 0.6 },
  { grade: "1–2", difference: 9.6, tolerance: 0.7 },
  { grade: "1", difference: 13.6, tolerance: 1 },
] as const;
export type GreyScaleGrade = (typeof greyScale)[number]["grade"];

/** The grade whose contrast is nearest; on the midpoint the poorer one. @throws {RangeError} @source iso-105-a02 */
export function greyScaleGrade(differenceE76: number): GreyScaleGrade {
  if (!(differenceE76 >= 0)) throw new RangeError("A colour difference must not be negative.");
  let nearest: (typeof greyScale)[number] = greyScale[0];
  for (const step of greyScale) {
    if (Math.abs(step.difference - differenceE76) <= Math.abs(nearest.difference - differenceE76))
      nearest = step;
  }
  return nearest.grade;
}

export const colourChanges = ["noise", "watch", "noticeable", "significant", "severe"] as const;
export type ColourChange = (typeof colourChanges)[number];

/** How much a ΔE00 between means of readings says; common practice around the published 0.8 and 1.8. */
export function colourChange(differenceE2000: number): ColourChange {
  if (!(differenceE2000 >= 0)) throw new RangeError("A colour difference must not be negative.");
  if (differenceE2000 < 0.5) return "noise";
  if (differenceE2000 < 1) return "watch";
  if (differenceE2000 <= 1.8) return "noticeable";
  if (differenceE2000 <= 5) return "significant";
  return "severe";
}
