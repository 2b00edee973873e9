/**
 * The state of moist air from its temperature and relative humidity: saturation
 * pressure, dew or frost point, wet bulb, water content, enthalpy. Equations of
 * Hyland and Wexler as the ASHRAE handbook gives them; ice below the triple
 * point, water above. Humidity is a fraction above 0 and at most 1; many loggers
 * state it over water even below freezing, which these functions do not.
 */
import { z } from "zod";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

export const standardPressure = 101_325;
const kelvinAtZeroC = 273.15;
const triplePointC = 0.01;
/** Ratio of the molar masses of water and dry air. */
const molarMassRatio = 0.621945;
/** J/(kg·K), of water vapour. */
const vapourGasConstant = 461.495;
/** kJ/(kg·K), of dry air. */
const dryAirGasConstant = 0.287042;

/** ln p = a/T + b + cT + dT² + eT³ + fT⁴ + g ln T; ASHRAE Fundamentals 2017, chapter 1, equations 5 and 6. */
type SaturationCurve = { a: number; b: number; c: number; d: number; e: number; f: number; g: number };
const overIce: SaturationCurve = {
  a: -5.6745359e3,
  b: 6.3925247,
  c: -9.677843e-3,
  d: 6.2215701e-7,
  e: 2.0747825e-9,
  f: -9.484024e-13,
  g: 4.1635019,
};
const overWater: SaturationCurve = {
  a: -5.8002206e3,
  b: 1.3914993,
  c: -4.8640239e-2,
  d: 4.1764768e-5,
  e: -1.4452093e-8,
  f: 0,
  g: 6.5459673,
};

function requireWithin(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) throw new RangeError(`${name} must lie between ${low} and ${high}.`);
}

function requireHumidity(humidity: number): void {
  if (!(humidity > 0 && humidity <= 1)) throw new RangeError("humidity must lie above 0 and not above 1.");
}

function curveAt(temperatureC: number): SaturationCurve {
  return temperatureC <= triplePointC ? overIce : overWater;
}

function logPressure(curve: SaturationCurve, kelvin: number): number {
  const { a, b, c, d, e, f, g } = curve;
  return a / kelvin + b + kelvin * (c + kelvin * (d + kelvin * (e + kelvin * f))) + g * Math.log(kelvin);
}

function logPressureSlope(curve: SaturationCurve, kelvin: number): number {
  const { a, c, d, e, f, g } = curve;
  return -a / kelvin ** 2 + c + kelvin * (2 * d + kelvin * (3 * e + kelvin * 4 * f)) + g / kelvin;
}

/**
 * Saturation pressure of water vapour over ice, below the triple point, or over water.
 * @param temperatureC °C @range −100 to 200 @returns Pa
 * @throws {RangeError} outside the range
 * @source ashrae-psychrometrics, equations 5 and 6 @accuracy 300 ppm of the handbook's table 3
 */
export function saturationPressurePa(temperatureC: number): number {
  requireWithin("temperatureC", temperatureC, -100, 200);
  return Math.exp(logPressure(curveAt(temperatureC), temperatureC + kelvinAtZeroC));
}

/** Partial pressure of the vapour. @returns Pa @throws {RangeError} */
export function vapourPressurePa(temperatureC: number, humidity: number): number {
  requireWithin("humidity", humidity, 0, 1);
  return humidity * saturationPressurePa(temperatureC);
}

/** What the air could still take up. @returns Pa @throws {RangeError} */
export function vapourPressureDeficitPa(temperatureC: number, humidity: number): number {
  return saturationPressurePa(temperatureC) - vapourPressurePa(temperatureC, humidity);
}

/**
 * Dew point, or frost point below the triple point: the temperature whose
 * saturation pressure is the given vapour pressure. Newton on ln p, which is
 * nearly straight, inside a bracket that bisects when a step leaves it.
 * @returns °C, never above `temperatureC` @throws {RangeError} also when it lies below −100 °C
 */
export function dewPointC(temperatureC: number, humidity: number): number {
  requireHumidity(humidity);
  const wanted = Math.log(vapourPressurePa(temperatureC, humidity));
  let low = -100;
  let high = temperatureC;
  if (!(wanted >= logPressure(overIce, low + kelvinAtZeroC))) {
    throw new RangeError("The dew point lies below −100 °C.");
  }
  let guess = high;
  for (let round = 0; round < 100; round++) {
    const curve = curveAt(guess);
    const miss = logPressure(curve, guess + kelvinAtZeroC) - wanted;
    if (miss > 0) high = guess;
    else low = guess;
    let next = guess - miss / logPressureSlope(curve, guess + kelvinAtZeroC);
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    if (Math.abs(next - guess) < 1e-10) return Math.min(next, temperatureC);
    guess = next;
  }
  return Math.min(guess, temperatureC);
}

/** Relative humidity of air at `temperatureC` whose dew point is known. @returns fraction @throws {RangeError} */
export function humidityFromDewPoint(temperatureC: number, dewPoint: number): number {
  if (!(dewPoint <= temperatureC)) throw new RangeError("The dew point lies above the temperature.");
  return saturationPressurePa(dewPoint) / saturationPressurePa(temperatureC);
}

function ratioFromPressure(vapourPa: number, pressurePa: number): number {
  requireWithin("pressurePa", pressurePa, 20_000, 200_000);
  if (!(vapourPa < pressurePa)) throw new RangeError("The vapour pressure reaches the pressure of the air.");
  return (molarMassRatio * vapourPa) / (pressurePa - vapourPa);
}

/** Mass of water for each mass of dry air. @returns kg/kg @throws {RangeError} */
export function humidityRatio(temperatureC: number, humidity: number, pressurePa = standardPressure): number {
  return ratioFromPressure(vapourPressurePa(temperatureC, humidity), pressurePa);
}

/** Humidity ratio from dry and wet bulb; the constants change at the freezing wet bulb. */
function ratioFromWetBulb(temperatureC: number, wetBulb: number, pressurePa: number): number {
  const saturated = ratioFromPressure(saturationPressurePa(wetBulb), pressurePa);
  const depression = temperatureC - wetBulb;
  if (wetBulb >= 0) {
    return (
      ((2501 - 2.326 * wetBulb) * saturated - 1.006 * depression) /
      (2501 + 1.86 * temperatureC - 4.186 * wetBulb)
    );
  }
  return (
    ((2830 - 0.24 * wetBulb) * saturated - 1.006 * depression) / (2830 + 1.86 * temperatureC - 2.1 * wetBulb)
  );
}

/** Relative humidity from dry and wet bulb. @returns fraction @throws {RangeError} also when no air has this pair */
export function humidityFromWetBulb(
  temperatureC: number,
  wetBulb: number,
  pressurePa = standardPressure,
): number {
  if (!(wetBulb <= temperatureC)) throw new RangeError("The wet bulb lies above the temperature.");
  const ratio = ratioFromWetBulb(temperatureC, wetBulb, pressurePa);
  const vapourPa = (pressurePa * ratio) / (molarMassRatio + ratio);
  const humidity = vapourPa / saturationPressurePa(temperatureC);
  if (!(humidity >= 0)) throw new RangeError("The wet bulb is too low for this temperature.");
  return Math.min(humidity, 1);
}

/**
 * Thermodynamic wet bulb, by bisection between the dew point and the temperature.
 * @returns °C @throws {RangeError} @source ashrae-psychrometrics, equations 33 and 35
 */
export function wetBulbC(temperatureC: number, humidity: number, pressurePa = standardPressure): number {
  requireHumidity(humidity);
  const wanted = humidityRatio(temperatureC, humidity, pressurePa);
  let low = dewPointC(temperatureC, humidity);
  let high = temperatureC;
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (ratioFromWetBulb(temperatureC, middle, pressurePa) > wanted) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Mass of water in a volume of air. @returns g/m³ @throws {RangeError} */
export function absoluteHumidityGPerM3(temperatureC: number, humidity: number): number {
  return (
    (1000 * vapourPressurePa(temperatureC, humidity)) / (vapourGasConstant * (temperatureC + kelvinAtZeroC))
  );
}

/** Enthalpy of moist air, zero for dry air at 0 °C. @returns kJ for each kg of dry air @throws {RangeError} */
export function enthalpyKjPerKg(
  temperatureC: number,
  humidity: number,
  pressurePa = standardPressure,
): number {
  return (
    1.006 * temperatureC + humidityRatio(temperatureC, humidity, pressurePa) * (2501 + 1.86 * temperatureC)
  );
}

/** Volume of moist air for each mass of dry air. @returns m³/kg @throws {RangeError} */
export function specificVolumeM3PerKg(
  temperatureC: number,
  humidity: number,
  pressurePa = standardPressure,
): number {
  const ratio = humidityRatio(temperatureC, humidity, pressurePa);
  return (dryAirGasConstant * (temperatureC + kelvinAtZeroC) * (1 + 1.607858 * ratio)) / (pressurePa / 1000);
}

/** Pressure of the standard atmosphere. @param altitudeM m @range −500 to 11 000 @returns Pa @throws {RangeError} */
export function standardPressurePa(altitudeM: number): number {
  requireWithin("altitudeM", altitudeM, -500, 11_000);
  return standardPressure * (1 - 2.25577e-5 * altitudeM) ** 5.2559;
}

export const air = working({
  id: "air",
  title: "Moist air",
  about: "What a temperature and a relative humidity mean: dew point, water content, wet bulb, heat content.",
  input: z.object({
    temperatureC: z.number().min(-60).max(60).meta({ title: "Temperature", unit: "°C" }),
    humidity: z
      .number()
      .min(0.01)
      .max(1)
      .meta({ title: "Relative humidity", unit: "fraction of saturation" }),
    pressurePa: z
      .number()
      .min(60_000)
      .max(110_000)
      .default(standardPressure)
      .meta({ title: "Pressure of the air", unit: "Pa" }),
  }),
  output: z.object({
    saturationPressurePa: z.number().meta({ title: "Saturation pressure", unit: "Pa" }),
    vapourPressurePa: z.number().meta({ title: "Vapour pressure", unit: "Pa" }),
    dewPointC: z.number().meta({ title: "Dew or frost point", unit: "°C" }),
    deposit: z.enum(["dew", "frost"]).meta({ title: "What settles at that point" }),
    wetBulbC: z.number().meta({ title: "Wet bulb", unit: "°C" }),
    humidityRatio: z.number().meta({ title: "Humidity ratio", unit: "kg/kg" }),
    absoluteHumidityGPerM3: z.number().meta({ title: "Absolute humidity", unit: "g/m³" }),
    enthalpyKjPerKg: z.number().meta({ title: "Enthalpy", unit: "kJ/kg" }),
  }),
  sources: [cite("ashrae-psychrometrics", "equations 5, 6, 20, 30, 33, 35")],
  cautions: [
    "Below 0 °C saturation is taken over ice; many loggers state humidity over water there.",
    "Figures hold for still, well-mixed air; at an outer wall or a window the surface is colder.",
  ],
  compute({ temperatureC, humidity, pressurePa }, note) {
    const dewPoint = dewPointC(temperatureC, humidity);
    return {
      saturationPressurePa: note(
        "Saturation pressure",
        saturationPressurePa(temperatureC),
        "Pa",
        temperatureC <= triplePointC ? "ln p over ice" : "ln p over water",
      ),
      vapourPressurePa: note(
        "Vapour pressure",
        vapourPressurePa(temperatureC, humidity),
        "Pa",
        "φ · p_ws(t)",
      ),
      dewPointC: note("Dew or frost point", dewPoint, "°C", "p_ws(t_d) = p_w"),
      deposit: dewPoint <= triplePointC ? ("frost" as const) : ("dew" as const),
      wetBulbC: note(
        "Wet bulb",
        wetBulbC(temperatureC, humidity, pressurePa),
        "°C",
        "W(t, t*) = W, by bisection between dew point and temperature",
      ),
      humidityRatio: note(
        "Humidity ratio",
        humidityRatio(temperatureC, humidity, pressurePa),
        "kg/kg",
        "0.621945 · p_w / (p − p_w)",
      ),
      absoluteHumidityGPerM3: note(
        "Absolute humidity",
        absoluteHumidityGPerM3(temperatureC, humidity),
        "g/m³",
        "1000 · p_w / (461.495 · T)",
      ),
      enthalpyKjPerKg: note(
        "Enthalpy",
        enthalpyKjPerKg(temperatureC, humidity, pressurePa),
        "kJ/kg",
        "1.006 t + W (2501 + 1.86 t)",
      ),
    };
  },
});
