/**
 * Mean kinetic temperature: the one steady temperature that would have aged a
 * thing by as much as a record of changing temperatures did. Warm hours weigh
 * more, so it lies between the mean and the highest reading. The sum of
 * exponentials is taken relative to its largest term, so that nothing underflows.
 */
import { z } from "zod";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

const kelvinAtZeroC = 273.15;
/** kJ/(mol·K), as printed in USP 1160. */
const gasConstant = 8.3144e-3;
/** kJ/mol, the customary activation energy of USP 1160. */
export const customaryActivationKjPerMol = 83.144;

export type TemperatureSpan = { temperatureC: number; hours: number };

/**
 * @param spans readings with the time that each stands for
 * @returns °C @throws {RangeError} for no time at all, or a temperature not above absolute zero
 * @source usp-1160; unequal times enter as weights
 */
export function meanKineticTemperatureC(
  spans: readonly TemperatureSpan[],
  activationKjPerMol = customaryActivationKjPerMol,
): number {
  if (!(activationKjPerMol > 0)) throw new RangeError("The activation energy must be positive.");
  const activationK = activationKjPerMol / gasConstant;
  let hoursInAll = 0;
  let largest = Number.NEGATIVE_INFINITY;
  for (const { temperatureC, hours } of spans) {
    if (!(temperatureC > -kelvinAtZeroC)) throw new RangeError("A temperature is not above absolute zero.");
    if (!(hours >= 0)) throw new RangeError("A time is negative.");
    hoursInAll += hours;
    if (hours > 0) largest = Math.max(largest, -activationK / (temperatureC + kelvinAtZeroC));
  }
  if (!(hoursInAll > 0 && Number.isFinite(hoursInAll))) throw new RangeError("The record covers no time.");
  let sum = 0;
  for (const { temperatureC, hours } of spans) {
    sum += hours * Math.exp(-activationK / (temperatureC + kelvinAtZeroC) - largest);
  }
  return activationK / -(largest + Math.log(sum / hoursInAll)) - kelvinAtZeroC;
}

export const kineticTemperature = working({
  id: "kinetic-temperature",
  title: "Mean kinetic temperature",
  about: "The steady temperature that would have had the same thermal effect as the record.",
  input: z.object({
    spans: z
      .array(
        z.object({
          temperatureC: z.number().min(-80).max(100).meta({ title: "Temperature", unit: "°C" }),
          hours: z.number().positive().max(100_000).meta({ title: "Time at it", unit: "h" }),
        }),
      )
      .min(1)
      .max(10_000),
    activationKjPerMol: z
      .number()
      .min(20)
      .max(250)
      .default(customaryActivationKjPerMol)
      .meta({ title: "Activation energy", unit: "kJ/mol" }),
  }),
  output: z.object({
    kineticTemperatureC: z.number().meta({ title: "Mean kinetic temperature", unit: "°C" }),
    meanTemperatureC: z.number().meta({ title: "Mean temperature", unit: "°C" }),
    highestTemperatureC: z.number().meta({ title: "Highest temperature", unit: "°C" }),
    hours: z.number().meta({ title: "Time covered", unit: "h" }),
  }),
  sources: [cite("usp-1160", "equation; ΔH 83.144 kJ/mol")],
  cautions: [
    "It says nothing of melting, softening or freezing: a short time above a softening point harms though the figure is low.",
    "Not meaningful for frozen goods.",
  ],
  compute({ spans, activationKjPerMol }, note) {
    const hours = note(
      "Time covered",
      spans.reduce((sum, span) => sum + span.hours, 0),
      "h",
      "Σ h",
    );
    const meanTemperatureC = note(
      "Mean temperature",
      spans.reduce((sum, span) => sum + span.hours * span.temperatureC, 0) / hours,
      "°C",
      "Σ h·t / Σ h",
    );
    const highestTemperatureC = note(
      "Highest temperature",
      spans.reduce((highest, span) => Math.max(highest, span.temperatureC), Number.NEGATIVE_INFINITY),
      "°C",
    );
    note("Activation temperature", activationKjPerMol / gasConstant, "K", "ΔH / R");
    const kineticTemperatureC = note(
      "Mean kinetic temperature",
      meanKineticTemperatureC(spans, activationKjPerMol),
      "°C",
      "(ΔH/R) / −ln(Σ h·e^(−ΔH/(R·T)) / Σ h)",
    );
    return { kineticTemperatureC, meanTemperatureC, highestTemperatureC, hours };
  },
});
