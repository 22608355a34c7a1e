/** Temperatures in both scales. */

const OVEN_FROM_C = 100;

const toF = (celsius: number): number => {
  const f = celsius * 1.8 + 32;
  return celsius >= OVEN_FROM_C ? Math.round(f / 5) * 5 : Math.round(f);
};

const toC = (fahrenheit: number): number => {
  const c = (fahrenheit - 32) / 1.8;
  return c >= 95 ? Math.round(c / 5) * 5 : Math.round(c);
};

/** '35-38 °C (95-100 °F)'. Ovens to the nearest 5 degrees, the rest to whole degrees. */
export function celsius(low: number, high: number = low): string {
  return low === high
    ? `${low} °C (${toF(low)} °F)`
    : `${low}-${high} °C (${toF(low)}-${toF(high)} °F)`;
}

const TEMPERATURE =
  /(\d{2,3})(?:\s*(?:-|–|to)\s*(\d{2,3}))?\s*(?:°|º|˚|deg\.?|degrees?)?\s*(celsius|centigrade|fahrenheit|C|F)\b(?!\w)/gi;
/** Ovens in degrees without a scale: from 300 up it can only be Fahrenheit. */
const BARE = /(\d{3})(?:\s*°|\s+degrees?)(?!\s*(?:[CF]\b|celsius|centigrade|fahrenheit))/gi;
/** How far to look for the same temperature in the other scale. */
const NEAR = 28;

const isCelsius = (scale: string): boolean => /^c/i.test(scale);

function hasPartner(text: string, start: number, end: number, celsiusGiven: boolean): boolean {
  const around = `${text.slice(Math.max(0, start - NEAR), start)} ${text.slice(end, end + NEAR)}`;
  const other = celsiusGiven
    ? /\d{2,3}\s*(?:°|º|˚|deg\.?|degrees?)?\s*(?:F\b|fahrenheit)/i
    : /\d{2,3}\s*(?:°|º|˚|deg\.?|degrees?)?\s*(?:C\b|celsius|centigrade)/i;
  return other.test(around);
}

function converted(low: string, high: string | undefined, celsiusGiven: boolean): string {
  const turn = celsiusGiven ? toF : toC;
  const unit = celsiusGiven ? '°F' : '°C';
  const first = turn(Number(low));
  return high === undefined ? `${first} ${unit}` : `${first}-${turn(Number(high))} ${unit}`;
}

/** The text with the other scale put in brackets behind each temperature that has one scale only. */
export function withBothScales(text: string): string {
  const named = text.replace(TEMPERATURE, (...found) => {
    const [whole, low, high, scale, at] = found as [
      string,
      string,
      string | undefined,
      string,
      number,
    ];
    // A lower-case 'c' or 'f' is a unit only right behind the number or a degree sign.
    if (/^[cf]$/.test(scale) && !/[\d°º˚]\s?[cf]$/.test(whole)) return whole;
    if (hasPartner(text, at, at + whole.length, isCelsius(scale))) return whole;
    return `${whole} (${converted(low, high, isCelsius(scale))})`;
  });
  return named.replace(BARE, (...found) => {
    const [whole, degrees, at] = found as [string, string, number];
    if (Number(degrees) < 300 || Number(degrees) > 550) return whole;
    if (hasPartner(named, at, at + whole.length, false)) return whole;
    return `${whole} F (${toC(Number(degrees))} °C)`;
  });
}
