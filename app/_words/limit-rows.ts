/** Limits as rows to read: quantity, aim, where to attend, where it bars; and the sources, each once with what rests on it. */
import { formatNumber } from "#app/_words/format.ts";
import { type Band, type CommonLimits, type Limits, limitQuantities } from "#lib/environment/schema.ts";

export type LimitRow = {
  key: keyof CommonLimits;
  quantity: string;
  target: string;
  attend: string;
  bar: string;
};

const degrees = (band: Band | null) =>
  band ? `${formatNumber(band.low)} to ${formatNumber(band.high)} °C` : "no common range";
const percents = (band: Band | null) =>
  band ? `${formatNumber(band.low * 100)} to ${formatNumber(band.high * 100)} %` : "no common range";

export function limitRows(limits: CommonLimits | Limits): LimitRow[] {
  const { temperatureC, transitTemperatureC, humidity, temperatureChange24hK, humidityChange24h } = limits;
  const { illuminanceLx, lightLxHoursPerYear, uvMicrowattPerLumen, shockG } = limits;
  const row = (
    quantity: keyof CommonLimits,
    name: string,
    target: string,
    attend: string,
    bar: string,
  ): LimitRow => ({
    key: quantity,
    quantity: name,
    target,
    attend,
    bar,
  });
  return [
    row(
      "temperatureC",
      "Temperature",
      degrees(temperatureC.target),
      degrees(temperatureC.warn),
      degrees(temperatureC.alarm),
    ),
    row("transitTemperatureC", "Temperature on the way", "", "", degrees(transitTemperatureC.alarm)),
    row(
      "humidity",
      "Relative humidity",
      percents(humidity.target),
      percents(humidity.warn),
      percents(humidity.alarm),
    ),
    row(
      "temperatureChange24hK",
      "Change of temperature in 24 h",
      "",
      `${formatNumber(temperatureChange24hK.warn)} K`,
      `${formatNumber(temperatureChange24hK.alarm)} K`,
    ),
    row(
      "humidityChange24h",
      "Change of humidity in 24 h",
      "",
      `${formatNumber(humidityChange24h.warn * 100)} %`,
      `${formatNumber(humidityChange24h.alarm * 100)} %`,
    ),
    row("illuminanceLx", "Light", "", "", `${formatNumber(illuminanceLx.max)} lx`),
    row("lightLxHoursPerYear", "Light in a year", "", "", `${formatNumber(lightLxHoursPerYear.max)} lx·h`),
    row(
      "uvMicrowattPerLumen",
      "Ultraviolet",
      `${formatNumber(uvMicrowattPerLumen.target)} µW/lm`,
      "",
      `${formatNumber(uvMicrowattPerLumen.alarm)} µW/lm`,
    ),
    row(
      "shockG",
      "Shock on the mount",
      "",
      `${formatNumber(shockG.warn)} g`,
      `${formatNumber(shockG.alarm)} g`,
    ),
  ];
}

export type LimitGround = { key: string; source: string; standing: string; quantities: string };

/** Every source of the limits of one specimen, once, with the quantities that rest on it. */
export function limitGrounds(limits: Limits): LimitGround[] {
  const nameOf = new Map(limitRows(limits).map(({ key, quantity }) => [key, quantity]));
  const grounds = new Map<string, LimitGround>();
  for (const quantity of limitQuantities) {
    const name = nameOf.get(quantity) ?? quantity;
    for (const { id, title, where, standing } of limits[quantity].ground) {
      const key = `${id} ${where}`;
      const known = grounds.get(key);
      const quantities = known ? `${known.quantities}; ${name.toLowerCase()}` : name;
      grounds.set(key, { key, source: where === "" ? title : `${title}, ${where}`, standing, quantities });
    }
  }
  return [...grounds.values()];
}
