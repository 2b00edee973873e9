/**
 * How a foam answers a fall: the stress-energy method. The peak stress is an
 * exponential of the dynamic energy density, so that one pair of numbers (a, b)
 * gives every cushion curve of a foam:
 *
 *     E = s · h / t          energy density, kPa, of static stress s, drop h, thickness t
 *     G = (a / s) · exp(b E)  peak shock
 *
 *     lowest point:  s* = t / (b h),   G* = a b e h / t
 *
 * Drop and thickness enter only as h / t. Modelled, not tested: made for closed
 * cells, pessimistic at very low stress, and off by tens of per cent far from the
 * points it was fitted to.
 */
import { type CushionPoint, type FoamId, foamIds, type OwnFoam } from "#lib/transport/schema.ts";
import type { Standing } from "#lib/workings/standing.ts";

/** Standard gravity, m/s². */
export const STANDARD_GRAVITY = 9.80665;
const KPA_PER_PSI = 6.894757;
const KPA_PER_KGF_PER_CM2 = 98.0665;

export type CushionCurve = { aKpa: number; bPerKpa: number };

export type Foam = CushionCurve & {
  id: FoamId | "own";
  densityKgM3: number;
  /** Above this static stress the foam loses more than a tenth of its thickness in 1000 h at 20 °C. */
  creepLimitKpa: number;
  standing: Standing;
  remark: string;
};

/** The exponential is cut here, far beyond anything that a cushion is for. */
export const MOST_PEAK_G = 10_000;

/** @returns G, the peak shock of a fall on a cushion of that curve; at most {@link MOST_PEAK_G} */
export function cushionPeakG(
  curve: CushionCurve,
  staticStressKpa: number,
  fallMm: number,
  thicknessMm: number,
): number {
  if (!(staticStressKpa > 0 && thicknessMm > 0 && fallMm >= 0)) {
    throw new RangeError("static stress and thickness must be above 0, the fall at least 0");
  }
  const energyDensityKpa = (staticStressKpa * fallMm) / thicknessMm;
  return Math.min(MOST_PEAK_G, (curve.aKpa / staticStressKpa) * Math.exp(curve.bPerKpa * energyDensityKpa));
}

/** @returns the lowest point of the curve: static stress in kPa and peak shock in G */
export function cushionOptimum(curve: CushionCurve, fallMm: number, thicknessMm: number) {
  if (!(fallMm > 0 && thicknessMm > 0)) throw new RangeError("fall and thickness must be above 0");
  return {
    staticStressKpa: thicknessMm / (curve.bPerKpa * fallMm),
    peakG: (curve.aKpa * curve.bPerKpa * Math.E * fallMm) / thicknessMm,
  };
}

/** @returns the curve whose lowest point, at that drop and thickness, is the given one */
export function curveThroughOptimum(optimum: CushionPoint): CushionCurve {
  const { thicknessMm, dropHeightMm, staticStressKpa, peakG } = optimum;
  const bPerKpa = thicknessMm / (staticStressKpa * dropHeightMm);
  return { bPerKpa, aKpa: (peakG * thicknessMm) / (bPerKpa * Math.E * dropHeightMm) };
}

/**
 * The straight line ln(G s) = ln a + b E through a maker's points, by least squares.
 * @throws {RangeError} when the points have one energy only, or fall instead of rise
 */
export function curveThroughPoints(points: readonly CushionPoint[]): CushionCurve {
  const line = points.map((point) => ({
    energy: (point.staticStressKpa * point.dropHeightMm) / point.thicknessMm,
    logStress: Math.log(point.peakG * point.staticStressKpa),
  }));
  const mean = (of: (at: (typeof line)[number]) => number) =>
    line.reduce((sum, at) => sum + of(at), 0) / line.length;
  const energy = mean((at) => at.energy);
  const logStress = mean((at) => at.logStress);
  const spread = mean((at) => (at.energy - energy) ** 2);
  const bPerKpa = mean((at) => (at.energy - energy) * (at.logStress - logStress)) / spread;
  const aKpa = Math.exp(logStress - bPerKpa * energy);
  if (!(bPerKpa > 0 && Number.isFinite(bPerKpa) && aKpa > 0)) {
    throw new RangeError("a cushion curve needs points of different energy whose stress rises with it");
  }
  return { aKpa, bPerKpa };
}

/** In order of preference: polyethylene is inert, ester polyurethane hydrolyses within years. */
export const foams: Record<FoamId, Foam> = {
  "polyethylene-35": {
    id: "polyethylene-35",
    aKpa: 12.9 * KPA_PER_PSI,
    bPerKpa: 0.119 / KPA_PER_PSI,
    densityKgM3: 35,
    creepLimitKpa: 7,
    standing: "from memory",
    remark: "closed cells, inert; may stay in the crate",
  },
  "ester-polyurethane-32": {
    id: "ester-polyurethane-32",
    // The published optimum of 50 mm: 0.016 kgf/cm², 45 G; its drop of 750 mm is from memory.
    ...curveThroughOptimum({
      thicknessMm: 50,
      dropHeightMm: 750,
      staticStressKpa: 0.016 * KPA_PER_KGF_PER_CM2,
      peakG: 45,
    }),
    densityKgM3: 32,
    creepLimitKpa: 2.8,
    standing: "derived here",
    remark: "open cells, soft; stiffens in the cold, hydrolyses: not for storage of months",
  },
};

/** @returns the house's own foam alone, or the named one alone, or the list in order of preference */
export function foamsToTry(own: OwnFoam | undefined, only: FoamId | undefined): Foam[] {
  if (own === undefined) return only === undefined ? foamIds.map((id) => foams[id]) : [foams[only]];
  return [
    {
      id: "own",
      ...curveThroughPoints(own.points),
      densityKgM3: own.densityKgM3,
      creepLimitKpa: own.creepLimitKpa,
      standing: "derived here",
      remark: "fitted to the points given",
    },
  ];
}
