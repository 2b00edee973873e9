/**
 * The limits of each preparation, as data. They are this program's defaults: a
 * centre may set its own, and every figure names what it rests on. Where a
 * source gives less than the figure needs (the width of a warning band, for
 * instance), the default is common practice and the ground says so. Shock follows the
 * class of a specimen and not its preparation alone: its figures stand in shock.ts.
 */
import type { Band, ColourTrait, Ground, Limits, PreparationCode } from "#lib/environment/schema.ts";
import { shockLimits } from "#lib/environment/shock.ts";
import type { FragilityClassName } from "#lib/specimens/classes.ts";
import { cite } from "#lib/workings/sources.ts";

type Pair = readonly [low: number, high: number];

const custom = cite("practice", "default of this program; a centre may set its own");
const bizot = cite("bizot-2023", "16–25 °C, 40–60 % RH, at most 10 % RH in 24 h");
const classB = cite("ashrae-museums", "class B, outer limits 30–70 % RH, up to 30 °C");
const epoxyHeat = cite("epoxy-glass-transition");
const epoxyYellowing = cite("epoxy-discolouration", "yellowing of epoxy sheets");
const polyesterLight = cite("polyester-cure", "cure goes on in ultraviolet and sunlight");
const dampEster = cite("ester-hydrolysis");
const plastics = cite("plastics-manual", "RH below 50 %; 30 lx with 1 500 µW/m², that is 50 µW/lm");
const blocks = cite(
  "resin-blocks-2021",
  "blocks of the same resin: yellowing, cracking, loss of transparency",
);
const fluidWarmth = cite("fluid-temperature", "about 18 °C, never below 15 °C");
const fluidDark = cite("fluid-storage", "protect from visible light and ultraviolet");
const boneDryness = cite("bone-humidity", "low and changing humidity cracks bone, teeth more");
const boneRoom = cite("natural-history-storage", "18–21 °C, 45–55 % RH");
const wax = cite("wax-models", "about 18 ± 2 °C, 50 ± 5 % RH, at most 50 lx");
const mould = cite("mould-pests", "little biological activity below 50 % RH");
const cieLow = cite("cie-157", "low responsivity, 200 lx, 600 000 lx·h a year; bone, horn, ivory");
const cieMedium = cite("cie-157", "medium responsivity, 50 lx, 150 000 lx·h a year; natural history");
const cieHigh = cite("cie-157", "high responsivity, 50 lx, 15 000 lx·h a year");
const uvCeiling = cite("uv-ceiling", "75 µW/lm");

function band([low, high]: Pair): Band {
  return { low, high };
}

function nested(target: Pair, warn: Pair, alarm: Pair, ...ground: Ground[]): Limits["humidity"] {
  return { target: band(target), warn: band(warn), alarm: band(alarm), ground: [...ground, custom] };
}

function rising(warn: number, alarm: number, ...ground: Ground[]): Limits["humidityChange24h"] {
  return { warn, alarm, ground: [...ground, custom] };
}

function light(maxLx: number, lxHours: number, ...ground: Ground[]) {
  return {
    illuminanceLx: { max: maxLx, ground },
    lightLxHoursPerYear: { max: lxHours, ground },
  };
}

function ultraviolet(target: number, alarm: number, ...ground: Ground[]): Limits["uvMicrowattPerLumen"] {
  return { target, alarm, ground: [...ground, custom] };
}

/** On the road the alarm band of the store holds, unless a preparation bears more. */
type Row = Omit<Limits, "preparation" | "transitTemperatureC" | "shockG"> & {
  transitTemperatureC?: Limits["transitTemperatureC"];
};

const silicone = {
  temperatureC: nested([18, 22], [15, 25], [5, 30], bizot, classB),
  humidity: nested([0.4, 0.6], [0.35, 0.65], [0.3, 0.7], bizot, classB),
  humidityChange24h: rising(0.1, 0.2, bizot),
  temperatureChange24hK: rising(4, 8),
  ...light(100, 150_000, cieMedium, custom),
  uvMicrowattPerLumen: ultraviolet(10, 75, uvCeiling),
};

const polyester: Row = {
  temperatureC: nested([16, 20], [15, 23], [5, 28], plastics),
  transitTemperatureC: { alarm: { low: 5, high: 35 }, ground: [custom] },
  humidity: nested([0.35, 0.5], [0.3, 0.55], [0.25, 0.6], plastics, dampEster),
  humidityChange24h: rising(0.1, 0.2),
  temperatureChange24hK: rising(4, 8),
  ...light(50, 150_000, cieMedium, polyesterLight),
  uvMicrowattPerLumen: ultraviolet(10, 50, plastics, polyesterLight, blocks),
};

const jar = {
  humidity: nested([0.4, 0.6], [0.35, 0.65], [0.3, 0.7]),
  humidityChange24h: rising(0.15, 0.25),
  temperatureChange24hK: rising(3, 6),
  ...light(50, 150_000, cieMedium, fluidDark),
  uvMicrowattPerLumen: ultraviolet(10, 75, uvCeiling, fluidDark),
};

const table: Readonly<Record<PreparationCode, Row>> = {
  "silicone-body": silicone,
  "silicone-organ": silicone,
  "epoxy-sheet": {
    temperatureC: nested([16, 20], [15, 23], [5, 28], epoxyHeat, epoxyYellowing),
    transitTemperatureC: { alarm: { low: 5, high: 35 }, ground: [epoxyHeat, custom] },
    humidity: nested([0.35, 0.55], [0.3, 0.6], [0.25, 0.65]),
    humidityChange24h: rising(0.1, 0.2),
    temperatureChange24hK: rising(4, 8),
    ...light(100, 150_000, cieMedium, custom),
    uvMicrowattPerLumen: ultraviolet(10, 50, plastics, epoxyYellowing),
  },
  "polyester-sheet": polyester,
  "alcohol-jar": { ...jar, temperatureC: nested([17, 18], [16, 20], [15, 23], fluidWarmth) },
  "aqueous-jar": { ...jar, temperatureC: nested([17, 20], [16, 22], [15, 25], fluidWarmth) },
  "corrosion-cast": {
    temperatureC: nested([16, 22], [15, 25], [5, 30]),
    humidity: nested([0.35, 0.6], [0.3, 0.65], [0.25, 0.7]),
    humidityChange24h: rising(0.15, 0.25),
    temperatureChange24hK: rising(5, 10),
    ...light(150, 600_000, custom),
    uvMicrowattPerLumen: ultraviolet(10, 75, uvCeiling),
  },
  bone: {
    temperatureC: nested([16, 20], [15, 22], [10, 25], boneRoom),
    humidity: nested([0.45, 0.55], [0.4, 0.6], [0.35, 0.65], boneDryness, boneRoom),
    humidityChange24h: rising(0.08, 0.15, boneDryness),
    temperatureChange24hK: rising(4, 8),
    ...light(200, 600_000, cieLow),
    uvMicrowattPerLumen: ultraviolet(75, 75, uvCeiling),
  },
  teeth: {
    temperatureC: nested([16, 20], [15, 22], [10, 25], boneRoom),
    humidity: nested([0.45, 0.55], [0.42, 0.58], [0.38, 0.62], boneDryness, boneRoom),
    humidityChange24h: rising(0.05, 0.1, boneDryness),
    temperatureChange24hK: rising(3, 6),
    ...light(200, 600_000, cieLow),
    uvMicrowattPerLumen: ultraviolet(75, 75, uvCeiling),
  },
  slide: {
    temperatureC: nested([15, 20], [12, 22], [5, 25]),
    humidity: nested([0.3, 0.5], [0.25, 0.55], [0.2, 0.6]),
    humidityChange24h: rising(0.1, 0.2),
    temperatureChange24hK: rising(4, 8),
    ...light(50, 15_000, cieHigh, custom),
    uvMicrowattPerLumen: ultraviolet(10, 50),
  },
  wax: {
    temperatureC: nested([16, 20], [15, 22], [12, 25], wax),
    humidity: nested([0.45, 0.55], [0.42, 0.58], [0.35, 0.65], wax),
    humidityChange24h: rising(0.1, 0.15),
    temperatureChange24hK: rising(2, 4),
    ...light(50, 150_000, wax, cieMedium),
    uvMicrowattPerLumen: ultraviolet(10, 75, uvCeiling),
  },
  dry: {
    temperatureC: nested([16, 20], [14, 22], [5, 25]),
    humidity: nested([0.4, 0.5], [0.35, 0.55], [0.3, 0.6], mould),
    humidityChange24h: rising(0.08, 0.15),
    temperatureChange24hK: rising(4, 8),
    ...light(50, 50_000, custom),
    uvMicrowattPerLumen: ultraviolet(10, 75, uvCeiling),
  },
};

const narrowerLight: Readonly<Record<ColourTrait, { maxLx: number; lxHours: number; ground: Ground[] }>> = {
  "dyed-resin": { maxLx: 50, lxHours: 150_000, ground: [cieMedium, custom] },
  "colour-preserved": { maxLx: 50, lxHours: 15_000, ground: [cieHigh, custom] },
};

/** What a specimen of a preparation usually is, where nothing else is known of it. */
const usualClass: Readonly<Record<PreparationCode, FragilityClassName>> = {
  "silicone-body": "whole-body",
  "silicone-organ": "compact-organ",
  "epoxy-sheet": "sheet",
  "polyester-sheet": "sheet",
  "alcohol-jar": "jar",
  "aqueous-jar": "jar",
  "corrosion-cast": "corrosion-cast",
  bone: "articulated-skeleton",
  teeth: "teeth-or-thin-bone",
  slide: "slide",
  wax: "corrosion-cast",
  dry: "dry-tissue",
};

/**
 * The default limits of a preparation. A trait of colour only ever narrows the light.
 * The result is a new object each time; changing it changes nothing else.
 */
export function limitsFor(
  code: PreparationCode,
  traits: readonly ColourTrait[] = [],
  fragilityClass: FragilityClassName = usualClass[code],
): Limits {
  const row = structuredClone(table[code]);
  const limits: Limits = {
    preparation: code,
    ...row,
    shockG: shockLimits(fragilityClass),
    transitTemperatureC: row.transitTemperatureC ?? {
      alarm: { ...row.temperatureC.alarm },
      ground: [...row.temperatureC.ground],
    },
  };
  for (const trait of traits) {
    const { maxLx, lxHours, ground } = structuredClone(narrowerLight[trait]);
    if (maxLx < limits.illuminanceLx.max) limits.illuminanceLx = { max: maxLx, ground };
    if (lxHours < limits.lightLxHoursPerYear.max)
      limits.lightLxHoursPerYear = { max: lxHours, ground: [...ground] };
  }
  return limits;
}

const dryAirCracksBone = "Dry air and quick change of humidity crack bone.";
const fatMovesInWarmth = "Warmth moves fat to the surface.";

const cautions: Readonly<Record<PreparationCode, readonly string[]>> = {
  "silicone-body": [
    "No published limit of temperature or humidity for silicone-impregnated tissue is known; tissue, fat, pigment and armature set these figures.",
    "50 lx is preferred; up to 100 lx fits within the yearly light only when hours are short.",
    "The surface holds dust: keep under a cover.",
    "Warmth brings uncured polymer and fat to the surface.",
  ],
  "silicone-organ": [
    "No published limit of temperature or humidity for silicone-impregnated tissue is known; tissue, fat and pigment set these figures.",
    "50 lx is preferred; up to 100 lx fits within the yearly light only when hours are short.",
    "The surface holds dust: keep under a cover.",
  ],
  "epoxy-sheet": [
    "On a lit panel, measure the light of the panel at the sheet.",
    "Heat softens and warps the sheet: keep out of closed vehicles in the sun.",
    "Heat and ultraviolet yellow the resin.",
  ],
  "polyester-sheet": [
    "On a lit panel, measure the light of the panel at the sheet.",
    "Daylight and ultraviolet continue the cure and yellow the resin.",
    "Sudden warmth or cold cracks the resin.",
    "Keep from damp.",
  ],
  "alcohol-jar": [
    "Below 15 °C the fluid may separate and gaskets may leak; warmth draws out fat and raises the loss of fluid.",
    "Keep dark in store.",
    "Keep upright, in a shelf or case that holds the jar.",
    "Alcohol vapour catches fire: ask for the ventilation and ignition control of the room.",
  ],
  "aqueous-jar": [
    "Below about 15 °C formaldehyde begins to settle out as a white cloud.",
    "Keep upright, in a shelf or case that holds the jar.",
    "Formaldehyde harms health: ask for the ventilation of the room.",
  ],
  "corrosion-cast": [
    "Fine branches break at a touch: impact and dust matter more than climate.",
    "A dyed resin needs the stricter light limit.",
  ],
  bone: [dryAirCracksBone, fatMovesInWarmth],
  teeth: [
    "Teeth crack sooner than bone when the air is dry or changes quickly: these limits are theirs.",
    dryAirCracksBone,
    fatMovesInWarmth,
  ],
  slide: ["Stains fade: keep dark, cool and flat.", "Mounting media yellow and shrink with age."],
  wax: [
    "Wax softens from about 35 °C: never above 25 °C on show.",
    "Warm lamps and sun at a window are enough to move it.",
  ],
  dry: ["Mould and insects become likely above 60 % relative humidity.", "Varnish darkens in light."],
};

/** Short neutral sentences that stand beside the limits. */
export function cautionsFor(code: PreparationCode): readonly string[] {
  return cautions[code];
}
