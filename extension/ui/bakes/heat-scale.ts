/** Heat of ovens and crumbs in the scale the user's oven has; it is kept in degrees Celsius. */
import type { Preferences } from '../../store/prefs.ts';
import { short } from '../figures/format.ts';

export type Heat = Preferences['heat'];

export const HEAT_UNITS: Record<Heat, string> = { C: '°C', F: '°F' };

/** Degrees Celsius as the scale shows them. */
export const shownHeat = (celsius: number, heat: Heat): number =>
  heat === 'C' ? celsius : (celsius * 9) / 5 + 32;

/** Degrees Celsius of what the scale shows. */
export const celsiusOf = (shown: number, heat: Heat): number =>
  heat === 'C' ? shown : ((shown - 32) * 5) / 9;

/** '220 °C' or '430 °F'. */
export const heatText = (celsius: number, heat: Heat): string =>
  `${short(shownHeat(celsius, heat))} ${HEAT_UNITS[heat]}`;
