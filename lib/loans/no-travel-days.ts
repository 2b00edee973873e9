/**
 * Days on which nothing leaves and nothing is delivered: weekends, and public
 * holidays of the country at that end of the way. The list of holidays is short,
 * from memory and national only: regional days and days that governments add are
 * not in it, and a country that is not listed has weekends alone. Easter is
 * computed by the Gregorian rule.
 */
import { addDays, type DateText } from "#lib/platform/dates.ts";

/** Days from Easter Sunday; these and the fixed ones are from memory. */
const easterDays = {
  "Maundy Thursday": -3,
  "Good Friday": -2,
  "Easter Monday": 1,
  "Ascension Day": 39,
  "Whit Monday": 50,
} as const;

type Holidays = { fixed: readonly string[]; aroundEaster: readonly (keyof typeof easterDays)[] };

/** National holidays as month and day; from memory, to be checked with the place. */
export const holidaysByCountry: Readonly<Record<string, Holidays>> = {
  AT: {
    fixed: ["01-01", "01-06", "05-01", "08-15", "10-26", "11-01", "12-08", "12-25", "12-26"],
    aroundEaster: ["Easter Monday", "Ascension Day", "Whit Monday"],
  },
  BE: {
    fixed: ["01-01", "05-01", "07-21", "08-15", "11-01", "11-11", "12-25"],
    aroundEaster: ["Easter Monday", "Ascension Day", "Whit Monday"],
  },
  CH: { fixed: ["01-01", "08-01", "12-25"], aroundEaster: ["Ascension Day"] },
  DE: {
    fixed: ["01-01", "05-01", "10-03", "12-25", "12-26"],
    aroundEaster: ["Good Friday", "Easter Monday", "Ascension Day", "Whit Monday"],
  },
  DK: {
    fixed: ["01-01", "12-25", "12-26"],
    aroundEaster: ["Maundy Thursday", "Good Friday", "Easter Monday", "Ascension Day", "Whit Monday"],
  },
  EE: {
    fixed: ["01-01", "02-24", "05-01", "06-23", "06-24", "08-20", "12-24", "12-25", "12-26"],
    aroundEaster: ["Good Friday"],
  },
  FI: {
    fixed: ["01-01", "01-06", "05-01", "12-06", "12-24", "12-25", "12-26"],
    aroundEaster: ["Good Friday", "Easter Monday", "Ascension Day"],
  },
  FR: {
    fixed: ["01-01", "05-01", "05-08", "07-14", "08-15", "11-01", "11-11", "12-25"],
    aroundEaster: ["Easter Monday", "Ascension Day", "Whit Monday"],
  },
  GB: { fixed: ["01-01", "12-25", "12-26"], aroundEaster: ["Good Friday"] },
  IE: { fixed: ["01-01", "03-17", "12-25", "12-26"], aroundEaster: ["Easter Monday"] },
  NL: {
    fixed: ["01-01", "04-27", "12-25", "12-26"],
    aroundEaster: ["Easter Monday", "Ascension Day", "Whit Monday"],
  },
  NO: {
    fixed: ["01-01", "05-01", "05-17", "12-25", "12-26"],
    aroundEaster: ["Maundy Thursday", "Good Friday", "Easter Monday", "Ascension Day", "Whit Monday"],
  },
  SE: {
    fixed: ["01-01", "01-06", "05-01", "06-06", "12-24", "12-25", "12-26"],
    aroundEaster: ["Good Friday", "Easter Monday", "Ascension Day"],
  },
};

/** Easter Sunday of a year in the Gregorian calendar. @source the anonymous Gregorian rule, from memory */
export function easterSunday(year: number): DateText {
  if (!(Number.isInteger(year) && year >= 1583 && year < 2500))
    throw new RangeError("the rule holds from 1583 on");
  const golden = year % 19;
  const century = Math.floor(year / 100);
  const yearOfCentury = year % 100;
  const moonShift = Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3);
  const epact = (19 * golden + century - Math.floor(century / 4) - moonShift + 15) % 30;
  const weekday =
    (32 + 2 * (century % 4) + 2 * Math.floor(yearOfCentury / 4) - epact - (yearOfCentury % 4)) % 7;
  const late = Math.floor((golden + 11 * epact + 22 * weekday) / 451);
  const count = epact + weekday - 7 * late + 114;
  const two = (figure: number) => String(figure).padStart(2, "0");
  return `${year}-${two(Math.floor(count / 31))}-${two((count % 31) + 1)}`;
}

const weekdayOf = (day: DateText) => new Date(`${day}T00:00:00Z`).getUTCDay();

export function isHoliday(day: DateText, country: string): boolean {
  const holidays = holidaysByCountry[country];
  if (holidays === undefined) return false;
  if (holidays.fixed.includes(day.slice(5))) return true;
  const easter = easterSunday(Number(day.slice(0, 4)));
  return holidays.aroundEaster.some((name) => addDays(easter, easterDays[name]) === day);
}

/** Whether nothing travels there on that day: a Saturday, a Sunday, a holiday. */
export function isNoTravelDay(day: DateText, country: string): boolean {
  const weekday = weekdayOf(day);
  return weekday === 0 || weekday === 6 || isHoliday(day, country);
}

/** The day itself, or the last one before it on which something travels there. */
export function travelDayUntil(day: DateText, country: string): DateText {
  let found = day;
  while (isNoTravelDay(found, country)) found = addDays(found, -1);
  return found;
}

/** The day itself, or the first one after it on which something travels there. */
export function travelDayFrom(day: DateText, country: string): DateText {
  let found = day;
  while (isNoTravelDay(found, country)) found = addDays(found, 1);
  return found;
}
